"""Does a bench sheet come out of the printer as a bench sheet, not as a web page?"""

from __future__ import annotations

import re

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import DESK, Visit
from tests.browser.kinds import Kind, kinds

MOST_SHEETS = 2
A4 = {"width": 703, "height": 1032}  # in CSS pixels, less margins of 12 mm

# The recipe that is asked for most, the one with the most stems, and the one with most to say.
SHEETS = ("hedgerow-jar", "rooks-wing-hand-tie", "lantern-house-autumn")


def sheets_in(pdf: bytes) -> int:
    """How many pages a PDF has (ISO 32000-2, 7.7.3.3: one dictionary of the type Page each)."""
    return len(re.findall(rb"/Type\s*/Page\b", pdf))


@pytest.mark.parametrize("recipe", SHEETS)
@pytest.mark.parametrize("paper", ["A4"])
def test_a_bench_sheet_takes_two_sheets_at_most(recipe: str, paper: str, visit: Visit) -> None:
    page = visit(Kind("staff", "recipe", f"arrangements/{recipe}.html"))
    assert 1 <= sheets_in(page.pdf(format=paper)) <= MOST_SHEETS


@pytest.mark.parametrize("kind", kinds("recipe", audience="staff"), ids=str)
def test_a_printed_bench_sheet_holds_the_work_and_nothing_else(kind: Kind, visit: Visit) -> None:
    page = visit(kind, viewport=DESK)
    page.emulate_media(media="print")
    for wanted in (
        page.get_by_role("heading", level=1),
        page.locator(".showing img").first,
        page.locator(".lines"),
        page.locator(".lines tfoot"),
        page.locator(".steps"),
        page.locator(".ticks"),
        page.locator(".bench .cautions"),
    ):
        expect(wanted).to_be_visible()
    for unwanted in ("header.top", "footer.foot", ".actions", ".variant-switch", ".costs", ".skip"):
        expect(page.locator(f"{unwanted}:visible")).to_have_count(0)


@pytest.mark.parametrize("kind", kinds("recipe", "variant"), ids=str)
def test_on_paper_the_picture_covers_no_word(kind: Kind, visit: Visit) -> None:
    page = visit(kind, viewport=A4)
    page.emulate_media(media="print")
    picture = page.locator(".showing img:visible").last.bounding_box()
    words = page.locator(".recipe .beside, .recipe .know").first.bounding_box()
    assert picture and words
    assert picture["y"] + picture["height"] <= words["y"]


@pytest.mark.parametrize("kind", kinds("recipe", audience="staff"), ids=str)
def test_a_printed_sheet_is_black_on_white_even_in_dark_mode(kind: Kind, visit: Visit) -> None:
    page = visit(kind, color_scheme="dark")
    page.emulate_media(media="print", color_scheme="dark")
    colours = page.evaluate(
        "[getComputedStyle(document.body), getComputedStyle(document.querySelector('.lines a'))]"
        ".flatMap((style) => [style.backgroundColor, style.color])"
    )
    assert colours[0] == "rgb(255, 255, 255)"
    assert colours[1] == colours[3] == "rgb(0, 0, 0)"
