"""A stem whose colour does something else than its role says is told of."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.studio.words import ROLES
from corymb.trade.colour.role_check import role_advice
from tests.trade.colour.mixes import HOUSE, bed, demo, demo_looks, look

LOOKS = {
    "all as called": (("4 white, light", "4 plum, depth", "1 crimson, accent"), []),
    "a light that is dark": (("4 white, light", "4 plum, light"), [("plum", "depth")]),
    "a depth that is light": (("4 white, depth", "4 plum, depth"), [("white", "light")]),
    "a large accent": (("4 white, light", "4 crimson, accent"), [("crimson", "depth")]),
    "an accent that just is one": (("6 white, light", "2 crimson, accent"), []),
    "a stem alone": (("4 white, light",), []),
    # White, plum and moss are about 100, 16 and 46 light; their means 55 and 34 here, and lightness
    # varies by 36 and 26.
    "a leaf of the middle as light": (("4 white, light", "4 plum, depth", "3 moss, light"), []),
    "a leaf of the middle as depth": (("1 white, light", "6 plum, depth", "3 moss, depth"), []),
    # With white and cream alone, a mean of 83 and 23 either way.
    "that leaf among pale ones": (
        ("4 white, light", "4 cream, light", "3 moss, light"),
        [("moss", "depth")],
    ),
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


STUDIO, _ = demo()
DEMO = demo_looks()


def test_every_stem_of_the_demo_does_what_it_is_called() -> None:
    told = {
        known_as: [advice.words for advice in role_advice(each.lines, STUDIO.stems, HOUSE)]
        for known_as, each in DEMO.items()
    }
    assert len(told) > 100
    assert {known_as: words for known_as, words in told.items() if words} == {}


OTHER_WAY_ROUND = dict(zip(ROLES, ("light", "depth", "accent"), strict=True))


def test_each_look_of_the_demo_is_told_of_with_depth_and_light_changed_about() -> None:
    for known_as, each in DEMO.items():
        lines = [replace(line, role=OTHER_WAY_ROUND[line.role]) for line in each.lines]
        told = {advice.role for advice in role_advice(lines, STUDIO.stems, HOUSE)}
        assert told >= {"depth", "light"}, known_as
