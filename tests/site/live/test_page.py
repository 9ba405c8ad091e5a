"""An open page beside the files: it refreshes, and shows what is wrong, in a real browser."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from corymb.site.live.live_site import LiveSite
from corymb.site.live.server import LiveServer
from corymb.site.render import THEME
from corymb.studio.problems import Problem

PAGE = (
    "<!doctype html><html lang=en><head>{head}<title>Jar</title></head><body>{text}</body></html>"
)


def content_policy() -> str:
    """The theme's own, which the listening script has to live with."""
    head = (THEME / "templates" / "partials" / "head.html").read_text(encoding="utf-8")
    lines = [line for line in head.splitlines() if "Content-Security-Policy" in line]
    assert len(lines) == 1
    return lines[0]


@pytest.fixture
def live(tmp_path: Path) -> LiveSite:
    (tmp_path / "index.html").write_text(PAGE.format(head=content_policy(), text="first"))
    return LiveSite({"clients": tmp_path})


@pytest.fixture
def page(live: LiveSite, browser: Browser) -> Iterator[Page]:
    server = LiveServer(live, 0)
    server.start()
    page = browser.new_page()
    page.goto(f"{server.address}clients/")
    yield page
    page.close()
    server.stop()


def test_an_open_page_shows_a_new_build_by_itself(live: LiveSite, page: Page) -> None:
    expect(page.get_by_text("first")).to_be_visible()
    (live.folders["clients"] / "index.html").write_text(PAGE.format(head="", text="second"))
    live.published()
    expect(page.get_by_text("second")).to_be_visible()


def test_an_error_is_shown_over_the_page_and_goes_when_it_is_mended(
    live: LiveSite, page: Page
) -> None:
    panel = page.get_by_role("alert")
    expect(panel).to_have_count(0)
    live.refused([Problem(Path("jar.yml"), 3, 1, "<b>`tme`</b> is not a key.", "tme: 20 min")])
    expect(panel).to_contain_text("jar.yml:3:1: <b>`tme`</b> is not a key.\n    3 | tme: 20 min")
    expect(page.get_by_text("first")).to_be_visible()
    assert panel.evaluate("panel => getComputedStyle(panel).position") == "fixed"
    live.published()
    expect(panel).to_have_count(0)


def test_the_panel_can_be_hidden(live: LiveSite, page: Page) -> None:
    live.refused([Problem(Path("jar.yml"), 3, 1, "wrong.")])
    page.get_by_role("button", name="Hide").click()
    expect(page.get_by_role("alert")).to_have_count(0)
