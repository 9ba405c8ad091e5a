"""Does anything run that a text holds? Every kind of page, opened and used in a browser."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Dialog, Page

from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer
from corymb.site.style_link_file import link_file
from corymb.studio.load import read_studio
from corymb.studio.problems import Problem
from corymb.views.pieces import Audience
from tests.browser.conftest import scroll_through
from tests.browser.shelf import new_page
from tests.browser.watching import Watch
from tests.hostile.studio import ATTACK, DAY, PHOTOS, settings_in
from tests.hostile.test_written import flat

SCRIPT = "%3Cscript%3Ewindow.broken=1%3C/script%3E"
OPENED: dict[Audience, tuple[str, ...]] = {
    "clients": (
        "index.html",
        f"arrangements.html?style={SCRIPT}",
        f"arrangements/hedgerow-jar.html?light={SCRIPT}#{SCRIPT}",
        f"your-date.html?date={SCRIPT}",
        "care.html",
        f"kept.html#hedgerow-jar,{SCRIPT},hall-urn",
        "links/sr3nxk325gys6fmcgxevs7uvxve7.html",
        f"a/b/{SCRIPT}.html",
        "assets/pictures/hedgerow-jar.svg",
    ),
    "staff": (
        "arrangements/hedgerow-jar--later.html",
        "weeks/2026-W38.html",
        "orders/barn-supper.html",
        *(f"orders/barn-supper-{paper}.html" for paper in ("bench", "labels")),
        "cut/2026-09-17.html",
        "no-signal.html?page=javascript:window.broken=1",
        f"practice/hedgerow-jar.html#{SCRIPT}",
        f"questions.html?recipe={SCRIPT}",
        "record.html",
    ),
}
SLIPPED_IN = """() => {
  document.body.insertAdjacentHTML("beforeend", "<img src=x onerror='window.broken = 1'>");
  const script = document.createElement("script");
  script.text = "window.broken = 1";
  document.head.append(script);
}"""
MADE = "made/long-table.html"
SEEN = """() => new Set([...document.images]
  .filter((image) => image.complete && image.naturalWidth).map((image) => image.currentSrc)).size"""
PAGES = [(audience, path) for audience, paths in OPENED.items() for path in paths]


@pytest.fixture(scope="module")
def heard(browser: Browser) -> Iterator[tuple[Page, Watch]]:
    """A page that goes from address to address, and what is heard of it."""
    page = new_page(browser, {})
    watch = Watch(page)
    page.on("dialog", lambda dialog: dismissed(dialog, watch))
    yield page, watch
    page.context.close()


def dismissed(dialog: Dialog, watch: Watch) -> None:
    """What an alert would be, if one came."""
    watch.faults.append(f"dialog: {dialog.message}")
    dialog.dismiss()


def look(heard: tuple[Page, Watch], site: str, path: str = "") -> Page:
    page, watch = heard
    page.goto("about:blank")
    watch.begin(site)
    page.goto(site + path, wait_until="load")
    return page


def assert_nothing_ran(heard: tuple[Page, Watch]) -> None:
    page, watch = heard
    assert page.evaluate("window.broken") is None
    assert not watch.faults, "\n".join([page.url, *watch.faults])


@pytest.mark.parametrize(("audience", "path"), PAGES, ids=lambda part: str(part).split("?")[0][:40])
def test_nothing_that_a_text_or_an_address_holds_runs(
    heard: tuple[Page, Watch],
    hostile_addresses: dict[Audience, str],
    audience: Audience,
    path: str,
) -> None:
    page = look(heard, hostile_addresses[audience], path)
    words = flat(str(page.evaluate("document.documentElement.textContent")))
    assert flat(ATTACK) in words
    assert_nothing_ran(heard)


def test_a_search_for_an_attack_finds_what_is_called_so_and_shows_it_as_words(
    heard: tuple[Page, Watch], hostile_addresses: dict[Audience, str]
) -> None:
    page = look(heard, hostile_addresses["clients"], "search.html")
    page.get_by_role("searchbox").last.fill('"><script>window.broken=1</script>')
    page.wait_for_function("document.querySelectorAll('main a').length > 3")
    assert flat(ATTACK) in flat(page.locator("main").inner_text())
    assert_nothing_ran(heard)


@pytest.mark.parametrize("where", ["served", "from the disk"])
def test_photos_are_seen_whatever_their_files_were_called(
    heard: tuple[Page, Watch], hostile: Path, hostile_addresses: dict[Audience, str], where: str
) -> None:
    disk = (hostile / "clients").as_uri() + "/"
    page = look(heard, disk if where == "from the disk" else hostile_addresses["clients"], MADE)
    scroll_through(page)
    assert page.evaluate(SEEN) >= len(PHOTOS)
    assert page.evaluate("window.broken") is None
    assert not [fault for fault in heard[1].faults if "forbidden" in fault or "dialog" in fault]


def test_the_one_file_share_runs_its_own_script_alone(
    heard: tuple[Page, Watch], hostile: Path, tmp_path: Path
) -> None:
    studio, _ = read_studio(hostile / "content")
    assert studio
    (link,) = studio.links.values()
    file = tmp_path / "share.html"
    file.write_bytes(link_file(studio, settings_in(hostile), link, DAY, ends=True))
    page = look(heard, file.as_uri())
    assert flat(ATTACK) in flat(page.locator("main").inner_text())
    policy = page.locator("meta[http-equiv]").get_attribute("content") or ""
    assert "unsafe" not in policy
    assert policy.count("'sha256-") == 2
    page.evaluate(SLIPPED_IN)
    assert page.evaluate("window.broken") is None


def test_what_is_served_live_runs_nothing_and_shows_troubles_as_words(
    heard: tuple[Page, Watch], hostile: Path
) -> None:
    live = LiveSite({"clients": hostile / "clients", "nothing": hostile / "nothing"})
    server = LiveServer(live, 0)
    server.start()
    try:
        live.refused([Problem(Path("studio.yml"), 1, 1, ATTACK, ATTACK)])
        for path in (f"clients/{SCRIPT}", "nothing/"):
            page = look(heard, server.address, path)
            page.locator("#corymb-trouble").wait_for()
            shown = page.evaluate(
                "document.getElementById('corymb-trouble').shadowRoot.textContent"
            )
            assert flat(ATTACK) in flat(shown)
            assert_nothing_ran(heard)
    finally:
        server.stop()
