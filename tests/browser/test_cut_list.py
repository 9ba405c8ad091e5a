"""Can a cut list be carried out into the beds, on paper and on a telephone?"""

from __future__ import annotations

from io import BytesIO
from itertools import pairwise

import pytest
from playwright.sync_api import Page, expect
from pypdf import PdfReader

from corymb.views.pieces import Audience
from tests.browser.conftest import PHONE, Visit
from tests.browser.kinds import kinds

LISTS = ("2026-09-17", "2025-09-18", "2026-11-19")
FINGER = 44  # WCAG 2.2, 2.5.5: a target is 44 CSS pixels wide and high

# What has to stay together: each row, each bed with its first row, each bucket, what is bought.
TOGETHER = """() => {
  document.querySelectorAll(".cut-tick").forEach((box) => box.remove());
  const rows = [...document.querySelectorAll(".cut-row, .cut-buckets li, #buy tr")];
  const beds = [...document.querySelectorAll(".cut-bed")].map(
    (bed) => [bed.querySelector("h3"), bed.querySelector(".cut-row")]);
  return [...rows.map((row) => [row]), ...beds].map(
    (parts) => parts.map((part) => part.innerText).join(" "));
}"""


def packed(words: str) -> str:
    """Without spaces, for a printed page keeps them only where words stand apart."""
    return "".join(words.split())


def sheets_of(page: Page) -> list[str]:
    """The words of each sheet of a page as printed."""
    sheets = PdfReader(BytesIO(page.pdf(format="A4"))).pages
    return [packed(sheet.extract_text()) for sheet in sheets]


@pytest.mark.parametrize("day", LISTS)
def test_on_paper_nothing_of_a_cut_list_is_cut_in_two_by_the_end_of_a_sheet(
    day: str, visit: Visit, demo_addresses: dict[Audience, str]
) -> None:
    page = visit()
    page.goto(f"{demo_addresses['staff']}cut/{day}.html")
    sheets = sheets_of(page)
    page.emulate_media(media="print")
    together = page.evaluate(TOGETHER)
    assert len(together) > 10 and len(sheets) > 1
    torn = [words for words in together if not any(packed(words) in sheet for sheet in sheets)]
    assert not torn


def test_on_paper_the_boxes_are_empty_and_the_way_about_the_site_is_gone(visit: Visit) -> None:
    page = visit(*kinds("cut-list"))
    page.emulate_media(media="print")
    expect(page.locator(".cut-row").first).to_be_visible()
    box = page.locator(".cut-tick input").first
    assert box.evaluate("box => getComputedStyle(box).borderTopStyle") == "solid"
    page.emulate_media(media="screen")
    box.check()
    page.emulate_media(media="print")
    tick = box.evaluate("box => [getComputedStyle(box, '::before').display, box.checked]")
    assert tick == ["none", True]
    expect(page.locator(".ticks-bar")).to_be_hidden()
    for unwanted in ("header.top", "footer.foot", ".jump", ".cut-all:not(.cut-fold)"):
        expect(page.locator(unwanted).first).to_be_hidden()


def test_a_thumb_ticks_a_stem_off(visit: Visit) -> None:
    page = visit(*kinds("cut-list"), viewport=PHONE)
    label = page.locator(".cut-tick").first
    size = label.bounding_box()
    assert size and min(size["width"], size["height"]) >= FINGER
    name = page.locator(".cut-row a").first.inner_text()
    box = page.get_by_role("checkbox", name=f"Cut: {name}")
    expect(box).not_to_be_checked()
    label.click()
    expect(box).to_be_checked()


def test_a_row_of_the_list_lies_below_the_one_before(visit: Visit) -> None:
    page = visit(*kinds("cut-list"), viewport=PHONE)
    tops = [row.bounding_box() for row in page.locator(".cut-row").all()]
    for before, after in pairwise(tops):
        assert before and after and after["y"] >= before["y"] + before["height"]
