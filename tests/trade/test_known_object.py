"""The length of what sizes are compared with is read from its words."""

from __future__ import annotations

import pytest

from corymb.trade.known_object import known_line_cm
from tests.trade.colour.mixes import demo

POSY, CHURCH = "windfall-posy", "lychgate-urn"

ROWS = {
    "a jug": ("a half-litre jug, 16 cm high", POSY, 16.0),
    "a forearm": ("a forearm from elbow to wrist, 25 cm", POSY, 25.0),
    "with a comma": ("a tumbler, 9,5 cm high", POSY, 9.5),
    "in inches": ("a jug, 6 inches high", POSY, 15.24),
    "the first of two": ("a plate, 27 cm across and 2 cm high", POSY, 27.0),
    "no length": ("a half-litre jug", POSY, None),
    "nothing": ("", POSY, None),
    "a number that is no length": ("a jug for 12 may cups", POSY, None),
    "far larger than a posy": ("a kitchen door, 2 m high", POSY, None),
    "larger than a buttonhole": ("a teaspoon, 14 cm long", "frost-button", None),
    "but not than an urn": ("a kitchen chair, 90 cm to the top of its back", CHURCH, 90.0),
    "longer than there is anything": ("a road, 99999999 m long", CHURCH, None),
}


@pytest.mark.parametrize(("words", "recipe", "cm"), ROWS.values(), ids=ROWS)
def test_the_length_is_the_first_named_if_it_suits_the_pieces(
    words: str, recipe: str, cm: float | None
) -> None:
    studio, _ = demo()
    assert known_line_cm(words, studio.recipes[recipe]) == (cm and pytest.approx(cm))
