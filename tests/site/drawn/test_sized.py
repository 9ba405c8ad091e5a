"""A recipe's sizes stand side by side at one scale, on its own page and for whoever may see it."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from corymb.picture import Arrangement, draw_side_by_side
from corymb.picture.side_by_side import APART
from corymb.picture.styles import style_of
from corymb.picture.words import description
from corymb.site.drawn.pictures import draw_all
from corymb.site.drawn.sized import arrangement_in_size, arrangements_by_size
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio
from corymb.trade.looks import looks_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.sizes import size_views, told_cm
from corymb.views.pieces import AUDIENCES
from tests import conftest

SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture(scope="module")
def studio() -> Studio:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio is not None
    return studio


def by_size(studio: Studio, recipe_id: str) -> tuple[Arrangement, ...]:
    recipe = studio.recipes[recipe_id]
    return arrangements_by_size(recipe, looks_of(recipe, studio.recipes)[""], studio.stems)


def test_each_size_is_drawn_with_the_stems_of_the_table(studio: Studio) -> None:
    for recipe in studio.recipes.values():
        look = looks_of(recipe, studio.recipes)[""]
        drawn = arrangements_by_size(recipe, look, studio.stems)
        told = size_views(recipe, look, studio.house)
        assert [sum(stem.count for stem in each.stems) for each in drawn] == [
            view.total for view in told
        ]
        assert len({each.id for each in drawn}) == len(told) == 1 + len(recipe.sizes)


def test_a_jar_stays_the_jar_it_is(studio: Studio) -> None:
    assert {each.vessel for each in by_size(studio, "hedgerow-jar")} == {
        by_size(studio, "hedgerow-jar")[0].vessel
    }


@pytest.mark.parametrize(
    ("lengths_in", "told"),
    [("cm", "about 40.2 cm across"), ("inches", "about 16 in across")],
)
def test_a_size_is_told_in_the_studios_lengths(studio: Studio, lengths_in: str, told: str) -> None:
    recipe = studio.recipes["orchard-bowl"]
    look = looks_of(recipe, studio.recipes)[""]
    drawn = arrangement_in_size(recipe, look, "large", studio.stems, lengths_in)
    assert told in description(drawn)


def places(svg: str) -> list[float]:
    """Where each piece's middle is, from the left."""
    groups = ET.fromstring(svg).findall(f"{SVG}g/{SVG}g")
    found = [re.match(r"(?:translate|matrix)\(([^)]*)\)", g.attrib["transform"]) for g in groups]
    return [float(re.split(r"[ ,]+", each[1])[-2]) for each in found if each]


def test_all_sizes_are_at_one_scale_from_small_to_large(studio: Studio) -> None:
    several = by_size(studio, "orchard-bowl")
    svg = draw_side_by_side(several, "Bowls")
    at = places(svg)
    assert at == sorted(at) and len(at) == 3
    boxes = [(s := style_of(each)).lay(s.as_used(each)).box for each in several]
    apart = APART * min(box.width for box in boxes)
    scales = [(at[n + 1] - at[n]) / (boxes[n].right + apart - boxes[n + 1].left) for n in range(2)]
    assert scales[0] == pytest.approx(scales[1], rel=0.01)


def test_a_line_to_compare_with_is_as_long_at_that_scale(studio: Studio) -> None:
    several = by_size(studio, "orchard-bowl")

    def long(cm: float) -> float:
        d = ET.fromstring(draw_side_by_side(several, "Bowls", cm)).findall(f"{SVG}path")[-1]
        top, foot = re.findall(r"M[\d.]+ ([\d.]+)h", d.attrib["d"])
        return float(foot) - float(top)

    assert long(30) == pytest.approx(2 * long(15), abs=0.2)
    box = (s := style_of(several[-1])).lay(s.as_used(several[-1])).box
    at = places(draw_side_by_side(several, "Bowls", 30.0))
    apart = APART * min(style_of(e).lay(style_of(e).as_used(e)).box.width for e in several)
    before = (s := style_of(several[-2])).lay(s.as_used(several[-2])).box
    scale = (at[-1] - at[-2]) / (before.right + apart - box.left)
    assert long(30) / 30 == pytest.approx(scale, rel=0.01)


def test_the_same_sizes_give_the_same_bytes_and_a_name_cannot_leave_its_title(
    studio: Studio,
) -> None:
    several = by_size(studio, "frost-button")
    hostile = 'Rook & "Teasel" <script>'
    svg = draw_side_by_side(several, hostile)
    assert svg == draw_side_by_side(several, hostile)
    root = ET.fromstring(svg)
    title = root.find(f"{SVG}title")
    assert title is not None and title.text == hostile
    assert "<script" not in svg
    ids = re.findall(r' id="([^"]+)"', svg)
    assert len(ids) == len(set(ids))
    assert set(re.findall(r'href="#([^"]+)"', svg)) <= set(ids)


@pytest.mark.parametrize(
    ("cm", "size", "told"),
    [(7.5, "regular", 7.5), (12.5, "regular", 12.5), (5.37, "small", 5.5), (16.7, "small", 17)],
)
def test_a_size_is_told_about_as_closely_as_it_is_made(cm: float, size: str, told: float) -> None:
    assert told_cm(cm, size) == told


def test_a_drafts_sizes_are_for_staff(studio: Studio, tmp_path: Path) -> None:
    jar = studio.recipes["hedgerow-jar"]
    few = replace(studio, recipes={"hedgerow-jar": jar.model_copy(update={"draft": True})})
    pictures = draw_all(few, tmp_path, lambda what, done, total: None)
    for audience in AUDIENCES:
        seen_by = Catalogue(few, audience, date(2026, 6, 1), drawings=pictures.drawings)
        files = dict(pictures.files_for(seen_by))
        assert ("assets/sizes/hedgerow-jar.svg" in files) is (audience == "staff")
