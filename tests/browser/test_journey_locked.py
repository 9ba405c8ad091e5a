"""Can someone with the passphrase work with a locked site as with an open one, and nobody else?

A small studio's locked site lies in a folder of a host that shows the site's page for what isn't
there. It is opened on a phone, used, cut off from its host, locked again; then the host has it with
another passphrase, and two of its files in each other's place.
"""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Iterator
from contextlib import ExitStack
from dataclasses import replace
from datetime import date
from pathlib import Path
from urllib.parse import unquote

import pytest
from lxml.html import document_fromstring
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect

import corymb
from corymb.site.build import build_sites
from corymb.site.locked.keys import Passphrase
from corymb.site.locked.lock import standing_lock
from corymb.site.locked.made import Sealer
from corymb.site.locked.places import DOOR, SEALED
from corymb.site.locked.sealing import unseal
from corymb.site.offline import LIST, MANIFEST, WORKER
from corymb.site.settings import read_settings
from tests.browser.shelf import KEEP_NOTHING, PATIENCE
from tests.browser.sizes import DESK
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_seen import SEEN
from tests.browser.watching import Watch
from tests.once import made_once
from tests.serving import served

STARTER = Path(corymb.__file__).parent / "starter"
DAY = date(2026, 7, 7)
ROUNDS = 1000  # so that a test need not wait
FIRST, SECOND = "plum lamp oar velvet kite", "mauve ladder, 7 otters"
SECRET = "Ottoline Marsh"
ORDER = f"""\
name: Supper of {SECRET}
client: {{name: {SECRET}}}
date: 2026-07-11
where: {{place: the market hall, setting: indoors, light: daylight}}
handover: collection
lines:
  - 8 kitchen-jug
"""
ORDER_PAGE, CUT = "orders/ottoline-marsh.html", "cut/2026-07-09.html"
SWAPPED = ("cards/posy.html", "weeks/2026-W27.html")  # kept by no phone
ELSEWHERE = ("//elsewhere.example/", "javascript:alert(1)", "../", "http://[", DOOR)
NARROW = {"width": 360, "height": 640}
SHORT = 12  # letters; a shorter path is said by chance, or stands for a page that is open

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
LEAVES = """addEventListener("pagehide", () => {
  const field = document.getElementById("passphrase");
  if (field) sessionStorage.setItem("left in the field", field.value);
});"""
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


def build(folder: Path, passphrase: str) -> None:
    """The staff's site of the starter's studio with one order, locked."""
    shutil.copytree(STARTER, folder)
    order = folder / "content" / "orders" / "2026" / "ottoline-marsh.yml"
    order.parent.mkdir(parents=True)
    order.write_text(ORDER, encoding="utf-8")
    settings = replace(
        read_settings(folder / "mkdocs.yml"),
        cache_folder=folder.parent / "cache",
        staff_url="https://bench.example/staff/",
        lock_staff=True,
    )
    locked_with = Passphrase(passphrase, ROUNDS)
    report = build_sites(settings, ["staff"], DAY, passphrase=locked_with)
    assert not report.errors, report.errors
    shutil.copy(folder / "staff" / "404.html", folder / "404.html")


def swap(staff: Path) -> None:
    """What a host could do: one page in place of another."""
    sealer = sealer_of(staff, SECOND)
    one, other = (staff / sealer.address(path) for path in SWAPPED)
    before = one.read_bytes()
    one.write_bytes(other.read_bytes())
    other.write_bytes(before)


def sealer_of(staff: Path, passphrase: str) -> Sealer:
    lock = standing_lock(Passphrase(passphrase, ROUNDS), staff)
    assert lock is not None
    return Sealer(lock, staff)


@pytest.fixture(scope="module")
def builds(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """Two builds, each with a passphrase of its own."""

    def make(folder: Path) -> None:
        build(folder / "first", FIRST)
        build(folder / "second", SECOND)
        swap(folder / "second" / "staff")

    folder = made_once(tmp_path_factory, "locked", make)
    return {name: folder / name for name in ("first", "second")}


class Locked:
    """A phone, and a host that can be lost and found again."""

    def __init__(self, browser: Browser, builds: dict[str, Path]) -> None:
        self.builds = builds
        self.context: BrowserContext = browser.new_context(viewport=NARROW, has_touch=True)
        self.context.set_default_timeout(PATIENCE)
        self.context.add_init_script(LEAVES)
        self.watches: list[Watch] = []
        self.host = ExitStack()
        self.port = 0
        self.new_page()

    def new_page(self) -> None:
        self.page: Page = self.context.new_page()
        self.watches.append(Watch(self.page))

    def serve(self, name: str) -> None:
        root = self.host.enter_context(served(self.builds[name], self.port))
        self.port = int(root.rstrip("/").rpartition(":")[2])
        self.address = f"{root}staff/"
        for watch in self.watches:
            watch.address = root
        self.context.set_offline(False)

    def cut_off(self) -> None:
        self.context.set_offline(True)
        self.host.close()

    def close_and_open(self, path: str) -> None:
        """All pages are closed; later one is opened."""
        self.page.close()
        self.new_page()
        self.watches[-1].address = self.watches[0].address
        self.open(path)

    def open(self, path: str) -> None:
        self.page.goto(self.address + path)

    def type(self, passphrase: str) -> None:
        field = self.page.get_by_label("Passphrase")
        expect(field).to_be_focused()
        field.fill(passphrase)
        self.page.keyboard.press("Enter")

    def shows(self, heading: str) -> None:
        expect(self.page.get_by_role("heading", level=1)).to_have_text(re.compile(heading))

    @property
    def said(self) -> Locator:
        return self.page.get_by_role("status")


@pytest.fixture
def phone(browser: Browser, builds: dict[str, Path]) -> Iterator[Locked]:
    one = Locked(browser, builds)
    yield one
    one.context.close()
    one.host.close()


def test_a_locked_site_opens_with_its_passphrase_and_is_then_as_ever(phone: Locked) -> None:
    phone.serve("first")
    opens_where_a_link_leads(phone)
    is_as_ever(phone)
    works_without_signal_and_keeps_nothing_in_clear(phone)
    locks_again(phone)
    locks_itself_when_it_is_closed(phone)
    takes_another_passphrase(phone)
    notices_what_a_host_has_changed(phone)
    assert [fault for watch in phone.watches for fault in watch.faults] == []


def opens_where_a_link_leads(phone: Locked) -> None:
    """The host has no such file, and shows the site's page for what isn't there."""
    phone.open(ORDER_PAGE)
    phone.shows("Locked")
    assert SECRET not in phone.page.content()
    looks_right(phone.page)
    phone.type("plum lamp oar velvet kites")
    expect(phone.said).to_have_text(
        "That isn’t the passphrase. Look at capitals, hyphens and spaces, and try again."
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


def is_as_ever(phone: Locked) -> None:
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


def works_without_signal_and_keeps_nothing_in_clear(phone: Locked) -> None:
    expect(phone.page.locator(".ticks-bar [data-kept]")).to_have_text(
        re.compile("^Kept for no signal: ")
    )
    phone.cut_off()
    phone.open("flowers.html")  # never visited
    phone.shows("Flowers")
    phone.open(ORDER_PAGE)
    phone.shows(SECRET)
    assert phone.page.evaluate(KEPT_IN_CLEAR, SECRET) == []


def locks_again(phone: Locked) -> None:
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


def locks_itself_when_it_is_closed(phone: Locked) -> None:
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
    phone.page.get_by_label("Keep it open on this phone until I lock it again").check()
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


def takes_another_passphrase(phone: Locked) -> None:
    """The phone still has the old build, with its lock, until the new one is tried on it."""
    phone.serve("second")
    phone.open(ORDER_PAGE)
    phone.type(SECOND)
    phone.shows(SECRET)
    phone.page.get_by_role("button", name="Lock again").click()
    phone.shows("Locked")
    phone.type(FIRST)
    expect(phone.said).to_have_text(re.compile("^That isn’t the passphrase."))
    phone.type(SECOND)
    phone.page.wait_for_url(f"{phone.address}")


def notices_what_a_host_has_changed(phone: Locked) -> None:
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


def test_nothing_that_is_published_tells_a_name_a_title_or_an_address(
    builds: dict[str, Path],
) -> None:
    staff = builds["first"] / "staff"
    sealer = sealer_of(staff, FIRST)
    listed = json.loads(opened(sealer, LIST))
    paths = [unquote(path) for part in ("first", "later") for path, _ in listed[part]]
    secret = [path for path in paths if (staff / sealer.address(path)).exists()]
    pages = [path for path in secret if path.endswith(".html")]
    assert len(pages) > 30 and ORDER_PAGE in pages
    told = {SECRET, "ottoline", "Kitchen jug", "kitchen-jug", "scabious", "cut-2026"}
    told |= {path for path in secret if "/" in path}
    of_any_site = {path for path in secret if "/" not in path and len(path) > SHORT}
    of_any_site |= {title_of(opened(sealer, path)) for path in pages} - {""}
    there = [file for file in staff.rglob("*") if file.is_file()]
    for file in there:
        path = file.relative_to(staff).as_posix()
        content = path.encode() + file.read_bytes()
        programs_own = path in (MANIFEST, WORKER) or path.startswith("assets/theme/")
        told_here = told if programs_own else told | of_any_site
        assert [words for words in told_here if words.encode() in content] == [], file
    assert sum(file.parent.name == SEALED.rstrip("/") for file in there) > len(secret)


def opened(sealer: Sealer, path: str) -> bytes:
    return unseal(
        sealer.lock.keys.files, path, (sealer.standing / sealer.address(path)).read_bytes()
    )


def title_of(page: bytes) -> str:
    """Without the studio's name, which the door says too."""
    title = str(document_fromstring(page.decode()).findtext(".//title"))
    return title.rpartition(" · ")[0]
