"""A page's own colour can be read on paper, by day and by night."""

from __future__ import annotations

import re
from functools import cache

from coloraide import Color
from hypothesis import given
from hypothesis import strategies as st

from corymb.photos import HOUSE_FINISH
from corymb.site.render import THEME
from corymb.trade.looks import looks_of
from corymb.views.compose.bands import band_of
from corymb.views.compose.tint import NIGHT, PAPER, readable, tint_of
from corymb.views.frame import Tint
from corymb.views.pieces import Patch, RoleShare
from tests.outside.test_contrast import contrast
from tests.views.making import catalogue_of, demo

HEX = st.integers(0, 0xFFFFFF).map(lambda n: f"#{n:06x}")


@given(HEX, st.sampled_from([PAPER, NIGHT]))
def test_any_colour_becomes_readable(hex_: str, ground: str) -> None:
    # WCAG 2.2, success criterion 1.4.3: 4.5:1 for text.
    assert Color(readable(hex_, ground)).contrast(Color(ground), method="wcag21") >= 4.5


def test_a_colour_that_can_be_read_already_is_left_as_it_is() -> None:
    assert readable("#7a2a3f", PAPER) == "#7a2a3f"


def test_the_grounds_are_the_themes_own() -> None:
    parts = THEME / "assets/css/parts"
    tokens = "".join(file.read_text("utf-8") for file in parts.rglob("*.css"))
    papers = re.findall(r"--paper:\s*(#[0-9a-f]{6})", tokens)
    assert papers == [PAPER, NIGHT]
    assert re.findall(r"--cell:\s*(#[0-9a-f]{6})", tokens) == [*CELLS]
    assert HOUSE_FINISH.paper == PAPER
    head = (THEME / "templates/partials/head.html").read_text("utf-8")
    assert re.findall(r'name="theme-color" content="(#[0-9a-f]{6})"', head) == papers
    assert f'fill="{PAPER}"' in (THEME / "assets/icon.svg").read_text("utf-8")


def test_a_band_without_colour_has_no_tint() -> None:
    white = RoleShare("light", 100, (Patch("white", "#f4f4f4", 100),))
    assert tint_of([white]) is None
    assert tint_of([]) is None


def test_a_telling_colour_goes_before_a_large_dull_or_green_one() -> None:
    band = [
        RoleShare("depth", 80, (Patch("leaf", "#5d7350", 80),)),
        RoleShare("accent", 20, (Patch("ember", "#d9482b", 20),)),
    ]
    tint = tint_of(band)
    assert tint is not None
    assert 20 < Color(tint.light).convert("oklch")["hue"] < 50


@cache
def demo_tints() -> dict[str, Tint]:
    """Of each recipe's page and each variant's."""
    catalogue, recipes = catalogue_of(demo()), demo().recipes
    looks = [look for recipe in recipes.values() for look in looks_of(recipe, recipes).values()]
    found = {look.id: tint_of(band_of(catalogue, look)) for look in looks}
    return {known_as: tint for known_as, tint in found.items() if tint}


CELLS = ("#e4dac8", "#362d28")
TEXT, GRAPHIC = 4.5, 3.0
"""WCAG 2.2, success criteria 1.4.3 for words and 1.4.11 for what is drawn, as the year's weeks."""


def test_every_look_of_the_demo_has_a_tint_that_can_be_read_by_day_and_by_night() -> None:
    assert len(demo_tints()) > 100
    for known_as, tint in demo_tints().items():
        assert contrast(tint.light, PAPER) >= TEXT, known_as
        assert contrast(tint.dark, NIGHT) >= TEXT, known_as


def test_every_look_s_weeks_are_told_from_those_that_are_empty() -> None:
    for known_as, tint in demo_tints().items():
        for colour, cell in zip((tint.light, tint.dark), CELLS, strict=True):
            assert contrast(colour, cell) >= GRAPHIC, known_as
