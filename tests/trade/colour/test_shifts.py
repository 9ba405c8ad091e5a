"""In what way one colour is not the other, in a florist's words."""

from __future__ import annotations

import pytest

from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.shifts import colour_shift

WORDS = {
    "shell to ivory": ("#e8c2b4", "#f3ddd2", "a little paler"),
    "shell to a deep rose": ("#e8c2b4", "#b5646a", "darker"),
    "plum to wine": ("#4a1f3d", "#5e1f2c", "a little warmer"),
    "coral to magenta": ("#e0705c", "#dd6a9c", "cooler"),
    "clear yellow to straw": ("#f2cf2e", "#dcc77e", "a little duller"),
    "dusty pink to clear pink": ("#c99aa3", "#e0809a", "a little brighter"),
    "white to cream": ("#f7f5f0", "#f3e9cf", "a little warmer"),
    "cream to white": ("#f3e9cf", "#f7f5f0", "a little cooler"),
    "greenish white to cream": ("#e4f3db", "#e6e5ce", "a little warmer"),
    "blackish green to blackish brown": ("#001b19", "#020300", "a little warmer"),
    "gold to lime": ("#e3b23c", "#b8c43c", "cooler"),
    "black to white": ("#000000", "#ffffff", "paler"),
}


@pytest.mark.parametrize(("before", "after", "words"), WORDS.values(), ids=WORDS)
def test_a_change_of_colour_is_called_by_what_changes_most(
    before: str, after: str, words: str
) -> None:
    distance = difference(before, after)
    assert colour_shift(((before, 1.0),), ((after, 1.0),), distance) == words


# As light and as strong as each other, and as far from the warmest hue on either side.
SHADES = {
    "clay to tan": ("#cd8372", "#c18a61", "a slightly different shade"),
    "rose to ochre": ("#d17f88", "#ae9259", "a different shade"),
}


@pytest.mark.parametrize(("before", "after", "words"), SHADES.values(), ids=SHADES)
def test_a_turn_of_the_hue_that_is_no_warmer_or_cooler_is_another_shade(
    before: str, after: str, words: str
) -> None:
    distance = difference(before, after)
    assert colour_shift(((before, 1.0),), ((after, 1.0),), distance) == words
