"""Can someone with the passphrase work with a locked site as with an open one, and nobody else?

A small studio's locked site lies in a folder of a host that shows the site's page for what isn't
there. It is opened on a phone, used, cut off from its host, locked again; then the host has it with
another passphrase, and two of its files in each other's place.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from corymb.site.locked.places import DOOR
from tests.browser.locked_phone import NARROW, OPENING, Phone
from tests.browser.shelf import KEEP_NOTHING
from tests.browser.sizes import DESK
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_seen import SEEN
from tests.serving import served
from tests.site.locked.locked_studio import (
    CUT,
    FIRST,
    ORDER_PAGE,
    SECOND,
    SECRET,
    SWAPPED,
    locked_builds,
)

ELSEWHERE = ("//elsewhere.example/", "javascript:alert(1)", "../", "http://[", DOOR)

KEPT_IN_CLEAR = """async (secret) => {
  const found = [];
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const request of await cache.keys()) {
      const text = await (await cache.match(request)).text();
      if (request.url.includes("ottoline") || text.includes(secret)) found.push(request.url);
    }
  }
  return found;
}"""
KEY = """() => new Promise((done) => {
  const opening = indexedDB.open("corymb lock /staff/");
  opening.onsuccess = () => {
    const asked = opening.result.transaction("keys").objectStore("keys").get("open");
    asked.onsuccess = async () => {
      if (!asked.result) return done(null);
      const key = asked.result.files;
      const why = await crypto.subtle.exportKey("raw", key).catch((error) => error.name);
      return done([key.extractable, asked.result.names.extractable, why]);
    };
  };
})"""


@pytest.fixture(scope="module")
def builds(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    return locked_builds(tmp_path_factory)


@pytest.fixture
def phone(browser: Browser, builds: dict[str, Path]) -> Iterator[Phone]:
    one = Phone(browser, builds)
    yield one
    one.context.close()
    one.host.close()


def test_a_locked_site_opens_with_its_passphrase_and_is_then_as_ever(phone: Phone) -> None:
    phone.serve("first")
    opens_where_a_link_leads(phone)
    is_as_ever(phone)
    works_without_signal_and_keeps_nothing_in_clear(phone)
    locks_again(phone)
    locks_itself_when_it_is_closed(phone)
    takes_another_passphrase(phone)
    notices_what_a_host_has_changed(phone)
    assert [fault for watch in phone.watches for fault in watch.faults] == []


def opens_where_a_link_leads(phone: Phone) -> None:
    """The host has no such file, and shows the site's page for what isn't there."""
    phone.open(ORDER_PAGE)
    phone.shows("Locked")
    assert SECRET not in phone.page.content()
    looks_right(phone.page)
    phone.type("plum lamp oar velvet kites")
    expect(phone.said).to_have_text(
        "That isn’t the passphrase. Look at capitals, hyphens and spaces, and try again.",
        timeout=OPENING,
    )
    field = phone.page.get_by_label("Passphrase")
    expect(field).to_have_attribute("aria-invalid", "true")
    phone.page.get_by_role("button", name="Show").click()
    expect(field).to_have_attribute("type", "text")
    phone.type(f"{FIRST} ")
    phone.shows(SECRET)
    assert phone.page.url == phone.address + ORDER_PAGE
    assert phone.page.evaluate("sessionStorage.getItem('left in the field')") == ""


def looks_right(page: Page) -> None:
    """On a narrow phone and on a desk, in light and in dark."""
    SEEN.mkdir(exist_ok=True)
    page.evaluate(AXE)
    for size, scheme in ((NARROW, "light"), (NARROW, "dark"), (DESK, "light")):
        page.set_viewport_size(size)
        page.emulate_media(color_scheme=scheme)
        assert page.evaluate(RUN) == []
        assert page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
        name = f"locked-{size['width']}-{scheme}.jpg"
        page.screenshot(path=SEEN / name, type="jpeg", quality=80)
    page.set_viewport_size(NARROW)
    page.emulate_media(color_scheme="light")


def is_as_ever(phone: Phone) -> None:
    page = phone.page
    phone.open("")
    for elsewhere in ELSEWHERE:
        page.goto(f"{phone.address}{DOOR}#{elsewhere}")
        page.wait_for_url(phone.address)
    page.goto(f"{phone.address}{DOOR}#arrangements/kitchen-jug.html")  # as from a label's code
    phone.shows("Kitchen jug")
    drawn = page.locator("main img.drawn").first
    assert drawn.evaluate("image => image.decode().then(() => image.naturalWidth)") > 100
    phone.open("arrangements.html")  # its small pictures are in pixels
    small = page.locator("main img").first
    assert small.evaluate("image => image.decode().then(() => image.currentSrc)").endswith(".avif")
    page.locator("main a[href$='kitchen-jug.html']").first.click()
    phone.shows("Kitchen jug")
    assert page.evaluate("document.referrer") == ""  # nor is a host told where one came from
    phone.open("search.html?q=ottoline")
    expect(page.locator("[data-search-found] a").first).to_contain_text(SECRET)
    page.goto(f"{phone.address}orders/nobody.html")
    phone.shows("There is nothing here")
    phone.open(CUT)
    with page.expect_download() as fetched:
        page.get_by_role("link", name="For a spreadsheet").first.click()
    assert fetched.value.suggested_filename == "2026-07-09.csv"
    assert "stem,botanical" in fetched.value.path().read_text("utf-8-sig")


def works_without_signal_and_keeps_nothing_in_clear(phone: Phone) -> None:
    expect(phone.page.locator(".ticks-bar [data-kept]")).to_have_text(
        re.compile("^Kept for no signal: ")
    )
    phone.cut_off()
    phone.open("flowers.html")  # never visited
    phone.shows("Flowers")
    phone.open(ORDER_PAGE)
    phone.shows(SECRET)
    assert phone.page.evaluate(KEPT_IN_CLEAR, SECRET) == []


def locks_again(phone: Phone) -> None:
    """In all its pages, without signal too; and going back shows nothing."""
    other = phone.context.new_page()
    other.goto(f"{phone.address}flowers.html")
    phone.page.get_by_role("button", name="Lock again").click()
    for page in (phone.page, other):
        page.wait_for_url(f"**/{DOOR}")
    phone.page.go_back()
    phone.shows("Locked")
    other.close()
    phone.open(ORDER_PAGE)
    phone.shows("Locked")
    assert phone.page.url == f"{phone.address}{DOOR}#{ORDER_PAGE}"
    phone.type(FIRST)
    phone.shows(SECRET)


def locks_itself_when_it_is_closed(phone: Phone) -> None:
    """Unless it was told to stay open; a browser that ends the worker meanwhile is no matter."""
    end_worker(phone.page)
    phone.page.reload()
    phone.shows(SECRET)
    assert phone.page.evaluate(KEY) is None
    phone.close_and_open(ORDER_PAGE)
    phone.shows("Locked")
    end_worker(phone.page)
    phone.open(ORDER_PAGE)
    phone.shows("Locked")
    phone.page.get_by_label("Keep it open on this device until I lock it again").check()
    phone.page.get_by_label("Passphrase").focus()
    phone.type(FIRST)
    phone.shows(SECRET)
    assert phone.page.evaluate(KEY) == [False, False, "InvalidAccessError"]
    phone.close_and_open(ORDER_PAGE)
    phone.shows(SECRET)
    phone.page.get_by_role("button", name="Lock again").click()
    phone.shows("Locked")
    assert phone.page.evaluate(KEY) is None


def end_worker(page: Page) -> None:
    """As browsers do after half a minute."""
    session = page.context.new_cdp_session(page)
    session.send("ServiceWorker.enable")
    session.send("ServiceWorker.stopAllWorkers")
    session.detach()


def takes_another_passphrase(phone: Phone) -> None:
    """The phone still has the old build, with its lock, until the new one is tried on it."""
    phone.serve("second")
    phone.open(ORDER_PAGE)
    phone.type(SECOND)
    phone.shows(SECRET)
    phone.page.get_by_role("button", name="Lock again").click()
    phone.shows("Locked")
    phone.type(FIRST)
    expect(phone.said).to_have_text(re.compile("^That isn’t the passphrase."), timeout=OPENING)
    phone.type(SECOND)
    phone.page.wait_for_url(f"{phone.address}", timeout=OPENING)


def notices_what_a_host_has_changed(phone: Phone) -> None:
    """One page in place of another is not shown, though it was sealed with the same key."""
    phone.open(SWAPPED[0])
    phone.shows("Locked")
    expect(phone.said).to_have_text(
        "A page is not as it was locked, so it isn’t shown. Tell whoever looks after this site."
    )


WITHOUT = {
    "scripts": ("", "To open it, a browser has to run this page’s scripts"),
    "https": (
        "Object.defineProperty(self, 'isSecureContext', {value: false})",
        "Browsers open a locked site only at an address that begins with https.",
    ),
    "a worker": (KEEP_NOTHING, "If this is a private window, try an ordinary one."),
    "unpacking": ("delete self.DecompressionStream", "This browser is too old"),
}


@pytest.mark.parametrize("what", WITHOUT)
def test_where_a_locked_site_can_t_be_opened_it_says_why(
    what: str, browser: Browser, builds: dict[str, Path]
) -> None:
    script, says = WITHOUT[what]
    context = browser.new_context(viewport=NARROW, java_script_enabled=bool(script))
    page = context.new_page()
    if script:
        page.add_init_script(script)
    with served(builds["first"]) as root:
        page.goto(f"{root}staff/")
        expect(page.get_by_text(says)).to_be_visible()
        expect(page.get_by_label("Passphrase")).to_be_hidden()
    context.close()
