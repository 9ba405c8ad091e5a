"""How much of what is seen each stem and colour takes."""

from __future__ import annotations

from math import pi

import pytest

from corymb.studio.words import FORMS
from corymb.trade.colour.areas import FILLED, colour_areas, line_shares, visible_area
from corymb.trade.looks import looks_of
from tests.trade.making import recipe, stem

STEMS = {
    "rose": stem(),
    "mint": stem("mint", form="spike", head="2 cm", head_length="9 cm"),
    "poppy": stem("poppy", heads_per_stem="3", colours=["red c0392b 75 %", "black 222222 25 %"]),
}


def test_every_form_has_a_filled_part() -> None:
    assert set(FILLED) == set(FORMS)
    assert all(0 < part <= 1 for part in FILLED.values())


def test_a_round_head_shows_a_disc_and_a_long_one_an_ellipse() -> None:
    assert visible_area(STEMS["rose"]) == pytest.approx(pi / 4 * 36)
    assert visible_area(STEMS["mint"]) == pytest.approx(pi / 4 * 18 * FILLED["spike"])
    assert visible_area(STEMS["poppy"]) == pytest.approx(3 * visible_area(STEMS["rose"]))


def test_the_shares_of_lines_and_of_colours_make_a_whole() -> None:
    look = looks_of(recipe(), {})[""]
    assert sum(line_shares(look.lines, STEMS)) == pytest.approx(1)
    colours = colour_areas(look.lines, STEMS)
    assert sum(area.share for area in colours) == pytest.approx(1)
    red, black = (area for area in colours if area.stem == "poppy")
    assert red.share == pytest.approx(3 * black.share)
