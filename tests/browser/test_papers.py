"""Do papers leave the printer whole: a sheet a page, no row cut, codes that a camera reads?"""

from __future__ import annotations

import io
import math
import re
from collections import Counter
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Page
from pypdf import PdfReader

from corymb.views.pieces import Audience
from tests.browser.conftest import DESK, Visit
from tests.browser.kinds import Kind, kinds

A4 = {"width": 718, "height": 1047}  # in CSS pixels, less margins of 10 mm
PAPERS = ("bench", "labels", "load", "collection", "cards")

# What stands out of its sheet, or lies across another part of it.
OUT_OF_SHEET = """() => [...document.querySelectorAll(".sheet")].flatMap((sheet) => {
  const edge = sheet.getBoundingClientRect();
  return [...sheet.querySelectorAll("tr, li, p, dd, svg, img")]
    .filter((part) => part.checkVisibility())
    .map((part) => [part, part.getBoundingClientRect()])
    .filter(([, box]) => box.right > edge.right + 2 || box.bottom > edge.bottom + 2)
    .map(([part]) => `${part.tagName} ${part.textContent.trim().slice(0, 30)}`);
})"""
NAME_AND_PRICES = """(row) => [row.querySelector("h4").textContent,
  [...row.querySelectorAll("dd")].map((price) => price.textContent)]"""
LINE = re.compile(r"line (\d+) of")
HEIGHTS = """() => [...document.querySelectorAll(".sheet")]
  .map((sheet) => sheet.getBoundingClientRect().height)"""
FULL_LABELS = """() => [...document.querySelectorAll(".bucket-label, .care-card")]
  .filter((label) => label.scrollHeight > label.clientHeight + 1
    || label.getBoundingClientRect().bottom > label.parentElement.getBoundingClientRect().bottom)
  .length"""


def papers_of(site: Path, kind: str) -> list[str]:
    """The addresses of all papers of a kind on the staff's site."""
    of_no_order = [f"cards/{file.name}" for file in (site / "cards").glob("*.html")]
    of_orders = [f"orders/{file.name}" for file in (site / "orders").glob(f"*-{kind}.html")]
    return sorted([*of_orders, *(of_no_order if kind == "cards" else ())])


PRINTED: dict[tuple[str, str, int], list[str]] = {}
"""What came out of the printer, by address, paper and the width of the window."""


def printed(page: Page, paper: str = "A4") -> list[str]:
    """The words on each side of a page as the printer gets it; it is printed once."""
    asked = (page.url, paper, page.evaluate("innerWidth"))
    if asked not in PRINTED:
        pdf = PdfReader(io.BytesIO(page.pdf(format=paper)))
        PRINTED[asked] = [side.extract_text() for side in pdf.pages]
    return PRINTED[asked]


def without_drawings(page: Page) -> None:
    """From here on every drawing is a blank of its size: where words come to stand is the same."""
    blank = '<svg xmlns="http://www.w3.org/2000/svg"/>'
    page.route("**/*.svg", lambda r: r.fulfill(body=blank, content_type="image/svg+xml"))


def letters_in(sides: list[str]) -> Counter[str]:
    """How often each letter and digit is printed; where lines end is the paper's business."""
    return Counter(letter for letter in "".join(sides) if letter.isalnum())


@pytest.mark.parametrize("kind", PAPERS)
def test_every_sheet_is_one_side_of_a4_and_no_label_is_fuller_than_its_frame(
    kind: str, visit: Visit, demo_sites: dict[Audience, Path], demo_addresses: dict[Audience, str]
) -> None:
    paths = papers_of(demo_sites["staff"], kind)
    assert len(paths) >= 10
    page = visit(viewport=A4)
    page.emulate_media(media="print")
    for path in paths:
        page.goto(demo_addresses["staff"] + path)
        heights = page.evaluate(HEIGHTS)
        assert heights and max(heights) <= A4["height"], (path, heights)
        assert page.evaluate(OUT_OF_SHEET) == [], path
        assert page.evaluate(FULL_LABELS) == 0, path


@pytest.mark.parametrize(
    "kind", kinds("bench-sheets", "bucket-labels", "load-sheet", "client-sheet"), ids=str
)
def test_as_many_pages_are_printed_as_there_are_sheets(kind: Kind, visit: Visit) -> None:
    page = visit(kind, viewport=DESK)
    sheets = page.locator(".sheet").count()
    texts = printed(page)
    assert len(texts) == sheets
    assert all("Barn supper" in text for text in texts)
    assert not any("Arrangements" in text or "Back to the order" in text for text in texts)


def test_bench_sheets_begin_each_on_a_page_of_their_own(visit: Visit) -> None:
    page = visit(*kinds("bench-sheets"))
    firsts = [side.split("line ")[1][:6] for side in printed(page)]
    assert firsts == [f"{n} of 4" for n in range(1, 5)]


@pytest.mark.parametrize("kind", kinds("bench-sheets", "client-sheet", "load-sheet"), ids=str)
def test_on_a5_no_word_is_lost(kind: Kind, visit: Visit) -> None:
    page = visit(kind)
    large, small = (letters_in(printed(page, paper)) for paper in ("A4", "A5"))
    assert not large - small  # heads of sheets are said again on their second side


@pytest.mark.parametrize("order", ["barn-supper", "lantern-house--2026-09-29"])
def test_on_a5_a_bench_sheet_has_two_sides_at_most_and_each_says_whose_it_is(
    order: str, visit: Visit
) -> None:
    page = visit(*kinds("bench-sheets"))
    without_drawings(page)
    page.goto(page.url.replace("barn-supper", order))
    sheets = page.locator(".sheet").count()
    lines = Counter(line for side in printed(page, "A5") for line in LINE.findall(side)[:1])
    assert sorted(lines) == [str(number) for number in range(1, sheets + 1)]
    assert max(lines.values()) <= 2 and lines.total() == len(printed(page, "A5"))


def test_care_cards_come_four_to_a_sheet_of_a4_and_one_to_a_sheet_of_their_own_size(
    visit: Visit,
) -> None:
    page = visit(*kinds("care-cards"), viewport=DESK)
    without_drawings(page)
    page.reload()
    pieces = 12 + 10 + 6 + 1  # of the demo's barn supper
    a4 = printed(page)
    assert len(a4) == math.ceil(pieces / 4)
    assert [side.count("poisons line") for side in a4[:-1]] == [4] * (len(a4) - 1)
    a6 = PdfReader(io.BytesIO(page.pdf(width="105mm", height="148mm")))
    assert len(a6.pages) == pieces


def test_of_one_look_only_its_own_cards_are_printed(visit: Visit) -> None:
    page = visit(*kinds("care-cards"), viewport=DESK)
    without_drawings(page)
    page.goto(page.url.replace("orders/barn-supper-cards", "cards/posy") + "#hedgerow-jar--later")
    (side,) = printed(page)
    assert side.count("Hedgerow jar") == 4


@pytest.mark.parametrize("paper", ["A4", "A5"])
def test_no_arrangement_of_the_price_list_is_torn(paper: str, visit: Visit) -> None:
    page = visit(*kinds("price-list"), viewport=DESK)
    sides = [" ".join(side.split()) for side in printed(page, paper)]
    rows = page.locator(".price-recipe").all()
    assert len(rows) > 20
    for name, prices in (row.evaluate(NAME_AND_PRICES) for row in rows):
        assert any(name in side and all(price in side for price in prices) for side in sides), name


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_a_camera_reads_the_code_from_the_screen(scheme: str, visit: Visit) -> None:
    page = visit(*kinds("bucket-labels"), color_scheme=scheme, device_scale_factor=2)
    shot = page.locator(".bucket-code svg").first.screenshot()
    (found,) = zxingcpp.read_barcodes(Image.open(io.BytesIO(shot)), try_invert=False)
    assert found.text == "https://bench.teaselandrook.example/orders/barn-supper-bench.html"


def test_the_scissors_line_runs_outside_the_labels_border(visit: Visit) -> None:
    page = visit(*kinds("bucket-labels"), viewport=A4)
    page.emulate_media(media="print")
    cell = page.locator(".label-cell").first.bounding_box()
    label = page.locator(".bucket-label").first.bounding_box()
    assert cell and label
    assert label["x"] - cell["x"] >= 7  # 2 mm
    assert cell["y"] + cell["height"] - label["y"] - label["height"] >= 7


def test_the_load_floor_is_printed_to_scale(visit: Visit) -> None:
    page = visit(*kinds("load-sheet"), viewport=A4)
    page.emulate_media(media="print")
    long, wide = page.locator(".floor-edge").first.evaluate(
        "(edge) => [edge.getBBox().width, edge.getBBox().height]"
        ".map((side) => side * edge.getScreenCTM().a)"
    )
    mm = 25.4 / 96  # of a CSS pixel
    assert long * mm == pytest.approx(1700 / 15, abs=0.5)
    assert wide * mm == pytest.approx(1200 / 15, abs=0.5)


@pytest.mark.parametrize("kind", kinds("bench-sheets", "load-sheet", "bucket-labels"), ids=str)
def test_papers_are_black_on_white_in_dark_mode_too(kind: Kind, visit: Visit) -> None:
    page = visit(kind, color_scheme="dark")
    page.emulate_media(media="print", color_scheme="dark")
    colours = page.evaluate(
        "['body', '.sheet'].map((one) => getComputedStyle(document.querySelector(one)))"
        ".flatMap((style) => [style.backgroundColor, style.color])"
    )
    assert colours[0] == "rgb(255, 255, 255)"
    assert colours[1] == colours[3] == "rgb(0, 0, 0)"
