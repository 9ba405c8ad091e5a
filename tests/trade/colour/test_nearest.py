"""Which stems are nearest to a colour, and what would a first recipe of some be?"""

from __future__ import annotations

from itertools import pairwise

import pytest

from corymb.trade.colour.likeness import Palette
from corymb.trade.colour.nearest import FirstLine, first_recipe, nearest_stems
from tests.trade.making import stem

WHITE, PLUM, BLUE = "#f7f3ea", "#3f1d33", "#2a52be"

STEMS = {
    "cosmos": stem("cosmos", colours=["white f7f3ea 100 %"]),
    "daisy": stem("daisy", colours=["white f7f3ea 90 %", "gold d9a32b 10 %"]),
    "scabious": stem("scabious", colours=["plum 401e34 100 %"], head="3 cm"),
    "tulip": stem("tulip", colours=["plum 3f1d33 100 %"]),
}
SUMMER, SPRING = frozenset(range(25, 36)), frozenset(range(14, 20))
WEEKS = {"cosmos": SUMMER, "daisy": SUMMER | SPRING, "scabious": SUMMER, "tulip": SPRING}


@pytest.mark.parametrize(
    ("colour", "expected"),
    [(WHITE, ["cosmos", "daisy"]), (PLUM, ["tulip", "scabious"]), (BLUE, [])],
    ids=["white", "plum", "none is blue"],
)
def test_the_nearest_stems_come_first_and_others_not_at_all(
    colour: str, expected: list[str]
) -> None:
    found = nearest_stems(colour, STEMS)
    assert [near.stem for near in found] == expected
    assert all(one.distance <= other.distance for one, other in pairwise(found))


RECIPES: dict[str, tuple[Palette, int, list[FirstLine]]] = {
    "white alone": (((WHITE, 1.0),), 7, [FirstLine(7, "cosmos", "depth")]),
    "heads a quarter as large, four times as many": (
        ((WHITE, 0.5), ("#401e34", 0.5)),
        10,
        [FirstLine(8, "scabious", "depth"), FirstLine(2, "cosmos", "light")],
    ),
    "two whites in one line": (
        ((WHITE, 0.5), ("#f6f2e9", 0.3), ("#401e34", 0.2)),
        10,
        [FirstLine(5, "cosmos", "light"), FirstLine(5, "scabious", "depth")],
    ),
    "no more than a crumb": (
        ((WHITE, 0.99), ("#401e34", 0.01)),
        5,
        [FirstLine(5, "cosmos", "light")],
    ),
    "what nothing comes near": (((WHITE, 0.5), (BLUE, 0.5)), 3, [FirstLine(3, "cosmos", "light")]),
    "nothing at all": (((BLUE, 1.0),), 3, []),
}


@pytest.mark.parametrize(("colours", "count", "expected"), RECIPES.values(), ids=RECIPES.keys())
def test_a_first_recipe_shows_each_colour_by_its_nearest(
    colours: Palette, count: int, expected: list[FirstLine]
) -> None:
    assert list(first_recipe(colours, STEMS, count, WEEKS).lines) == expected


@pytest.mark.parametrize(
    ("weeks", "expected", "stems"),
    [
        (WEEKS, SUMMER, {"cosmos", "scabious"}),
        ({**WEEKS, "scabious": frozenset[int]()}, SPRING, {"daisy", "tulip"}),
    ],
    ids=["both at their nearest in summer", "none of the plums in summer"],
)
def test_all_of_a_first_recipe_stands_in_one_week(
    weeks: dict[str, frozenset[int]], expected: frozenset[int], stems: set[str]
) -> None:
    first = first_recipe(((WHITE, 0.5), ("#401e34", 0.5)), STEMS, 10, weeks)
    assert first.week == min(expected)
    assert {line.stem for line in first.lines} == stems
    assert all(first.week in weeks[line.stem] for line in first.lines)
