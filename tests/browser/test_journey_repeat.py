"""The third journey: last year's piece for a repeat order, from one line to the printed cut list.

On a copy of the demo, whose hotel wants once more what it had a year ago.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date, timedelta
from io import BytesIO
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect
from pypdf import PdfReader

from tests.browser.conftest import DESK, PHONE, scroll_through
from tests.browser.shelf import new_page
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_journey_send import corymb
from tests.browser.test_seen import SEEN
from tests.browser.watching import Watch
from tests.conftest import CACHE, SETTINGS, STUDIO
from tests.once import made_once
from tests.serving import served

LAST_YEAR = "lantern-house-2025-10-14"
AGAIN = date(2026, 10, 13)
CUT = AGAIN - timedelta(days=2)  # by the demo's recipe: conditioned a night, made, brought


def make(folder: Path) -> None:
    shutil.copytree(STUDIO, folder / "content")
    settings = folder / "mkdocs.yml"
    settings.write_text(SETTINGS.format(studio=folder / "content", cache=CACHE), "utf-8")
    here = ("-f", str(settings))
    told = corymb("repeat", LAST_YEAR, "--on", AGAIN.isoformat(), *here)
    (folder / "told.txt").write_text(told, "utf-8")
    corymb("build", "--for", "staff", "--on", (CUT - timedelta(days=3)).isoformat(), *here)


@pytest.fixture(scope="module")
def repeated(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return made_once(tmp_path_factory, "repeated", make)


@pytest.fixture(scope="module")
def host(repeated: Path) -> Iterator[str]:
    with served(repeated / "staff") as address:
        yield address


@pytest.fixture
def opened(browser: Browser, host: str) -> Iterator[tuple[Page, Watch]]:
    page = new_page(browser, {"reduced_motion": "reduce", "bypass_csp": True})
    watch = Watch(page, host)
    yield page, watch
    page.context.close()


def go(page: Page, address: str) -> None:
    """Through the link that leads there, with the keyboard alone."""
    for _ in range(300):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.href || ''").endswith(address):
            with page.expect_navigation():
                page.keyboard.press("Enter")
            return
    pytest.fail(f"{address} can't be reached with the keyboard", pytrace=False)


def test_the_command_tells_season_cost_what_was_sent_and_what_was_learnt(repeated: Path) -> None:
    told = (repeated / "told.txt").read_text("utf-8")
    for words in (
        "The Lantern House, hall: Tuesday 13 October 2026, week 42",
        "1 Lantern House, autumn, Hips and bronze: as pictured, sure.",
        "quote €195",
        "Twice running: Lantern House, autumn: Hips and bronze.",
        "Too near the fire it dropped by Friday.",
        "Written: ",
    ):
        assert words in told


@pytest.mark.parametrize("size", [PHONE, DESK], ids=["phone", "desk"])
def test_the_new_order_leads_to_its_cut_list_and_onto_paper(
    opened: tuple[Page, Watch], host: str, size: dict[str, int]
) -> None:
    page, watch = opened
    page.set_viewport_size(size)  # type: ignore[arg-type]
    page.goto(host + "orders.html")
    go(page, f"orders/lantern-house-{AGAIN}.html")
    for words in ("Tuesday 13 October 2026", "Hips and bronze", "As pictured", "€195"):
        expect(page.locator("main")).to_contain_text(words)
    scroll_through(page)
    SEEN.mkdir(exist_ok=True)
    file = SEEN / f"journey-repeat-{size['width']}.jpg"
    page.screenshot(path=file, full_page=True, type="jpeg", quality=80)
    page.evaluate(AXE)
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]
        assert page.evaluate(RUN) == []

    go(page, f"cut/{CUT}.html")
    expect(page.locator("main")).to_contain_text("Chrysanthemum")
    sheets = PdfReader(BytesIO(page.pdf(format="A4", prefer_css_page_size=True))).pages
    assert len(sheets) <= 2, "the list, and what to be careful of"
    assert "Chrysanthemum" in sheets[0].extract_text()
    assert watch.faults == []
