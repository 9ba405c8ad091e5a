"""A stem whose colour does something else than its role says is told of."""

from __future__ import annotations

import pytest

from corymb.trade.colour.role_check import role_advice
from tests.trade.colour.mixes import HOUSE, bed, look

LOOKS = {
    "all as called": (("4 white, light", "4 plum, depth", "1 crimson, accent"), []),
    "a light that is dark": (("4 white, light", "4 plum, light"), [("plum", "depth")]),
    "a depth that is light": (("4 white, depth", "4 plum, depth"), [("white", "light")]),
    "a large accent": (("4 white, light", "4 crimson, accent"), [("crimson", "depth")]),
    "an accent that just is one": (("6 white, light", "2 crimson, accent"), []),
    "a stem alone": (("4 white, light",), []),
    "all alike": (("4 white, light", "4 white, depth"), []),
}


@pytest.mark.parametrize(("lines", "told"), LOOKS.values(), ids=LOOKS)
def test_what_does_another_part_than_it_is_called_is_told(
    lines: tuple[str, ...], told: list[tuple[str, str]]
) -> None:
    advice = role_advice(look(*lines), bed(), HOUSE)
    assert [(each.stem, each.better) for each in advice] == told


WORDS = {
    "light": (
        ("4 white, light", "4 plum, light"),
        "Plum is called light here, and is darker than the mix as a whole.",
    ),
    "depth": (
        ("4 white, depth", "4 plum, depth"),
        "White is called depth here, and is lighter than the mix as a whole.",
    ),
    "accent": (
        ("4 white, light", "4 crimson, accent"),
        "Crimson is called accent here, and takes 50 % of what is seen: above 25 % it sets the "
        "colour of the piece.",
    ),
}


@pytest.mark.parametrize(("lines", "words"), WORDS.values(), ids=WORDS)
def test_it_is_told_in_a_sentence(lines: tuple[str, ...], words: str) -> None:
    (advice,) = role_advice(look(*lines), bed(), HOUSE)
    assert advice.words == words
