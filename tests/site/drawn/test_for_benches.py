"""Each bench sheet shows its piece as it will be made, from the front and from above."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from bs4 import BeautifulSoup, Tag

from corymb.views.pieces import Audience

AS_MADE = "Drawn as it will be made, not as the recipe is written."
SVG = "{http://www.w3.org/2000/svg}"

Sites = dict[Audience, Path]


@pytest.fixture(scope="module")
def sheets(demo_sites: Sites) -> list[tuple[Path, Tag]]:
    """Every bench sheet of the demo, with the page it is on."""
    files = sorted((demo_sites["staff"] / "orders").glob("*-bench.html"))
    return [
        (file, sheet)
        for file in files
        for sheet in BeautifulSoup(file.read_text("utf-8"), "lxml").select(".bench-sheet")
    ]


def sheet_of(sheets: list[tuple[Path, Tag]], order: str, line: int) -> Tag:
    return next(
        sheet
        for file, sheet in sheets
        if file.name == f"{order}-bench.html" and sheet["id"] == f"line-{line}"
    )


def drawn(page: Path, sheet: Tag, part: str) -> Path:
    image = sheet.select_one(f".sheet-{part} img")
    assert image is not None and image["alt"]
    return (page.parent / str(image["src"])).resolve()


def test_a_plan_has_as_many_heads_as_one_piece_has_stems(sheets: list[tuple[Path, Tag]]) -> None:
    with_plan = [(page, sheet) for page, sheet in sheets if sheet.select(".sheet-plan")]
    assert len(with_plan) > 15
    for page, sheet in with_plan:
        key = [item.get_text(" ", strip=True).split()[:2] for item in sheet.select(".sheet-key li")]
        assert [int(number) for number, _ in key] == list(range(1, len(key) + 1))
        heads = ET.parse(drawn(page, sheet, "plan")).getroot().iter(f"{SVG}circle")
        assert sum(int(count) for _, count in key) == len(list(heads))
        each = sheet.select(".sheet-stems tfoot .count")[1].get_text(strip=True)
        if " or " not in sheet.select_one(".sheet-stems").get_text():  # type: ignore[union-attr]
            assert len(key) and sum(int(count) for _, count in key) == int(each), page.name


def test_what_leaves_in_buckets_has_no_plan(sheets: list[tuple[Path, Tag]]) -> None:
    loose = [sheet for _, sheet in sheets if "in buckets" in str(sheet.h2)]
    assert loose and not any(sheet.select(".sheet-plan") for sheet in loose)
    assert all(sheet.select(".sheet-picture img") for sheet in loose)


def test_what_the_cut_changed_is_drawn_as_it_will_be_made(
    sheets: list[tuple[Path, Tag]], demo_sites: Sites
) -> None:
    mixed = sheet_of(sheets, "barn-supper", 4)
    told = mixed.select_one(".sheet-told")
    assert told is not None and told.get_text() == AS_MADE
    plan = demo_sites["staff"] / "orders" / "barn-supper-bench-4-plan.svg"
    missing = "Ninebark"  # of which there is none left for the mix
    assert missing not in plan.read_text("utf-8")
    assert missing in (demo_sites["staff"] / "assets/plans/rooks-wing-hand-tie.svg").read_text()


def test_what_is_as_written_has_its_looks_own_drawings(
    sheets: list[tuple[Path, Tag]], demo_sites: Sites
) -> None:
    jars = sheet_of(sheets, "barn-supper", 2)
    page = demo_sites["staff"] / "orders" / "barn-supper-bench.html"
    assert not jars.select(".sheet-told")
    assert drawn(page, jars, "plan").name == "hedgerow-jar--later.svg"
    assert drawn(page, jars, "picture").name == "hedgerow-jar--later.svg"


def test_a_short_trough_is_said_and_drawn_shorter(
    sheets: list[tuple[Path, Tag]], demo_sites: Sites
) -> None:
    trough = sheet_of(sheets, "barn-supper", 1)
    # 65 cm by 0.6, and as high as the regular one.
    assert trough.select(".facts dd")[0].get_text(strip=True) == "39 x 30 cm"
    assert "about 39 cm across" in (
        demo_sites["staff"] / "orders" / "barn-supper-bench-1-plan.svg"
    ).read_text("utf-8")


def test_clients_get_no_bench_drawing(demo_sites: Sites) -> None:
    assert not [*demo_sites["clients"].rglob("*-bench-*")]
