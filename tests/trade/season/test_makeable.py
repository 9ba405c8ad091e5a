"""Small gardens, where one can see what may stand in for what."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.models import Stem
from corymb.trade.changes import LookLine
from corymb.trade.looks import Look
from corymb.trade.season.beds import Beds
from corymb.trade.season.makeable import Answer, Makeable, State, nearest
from corymb.trade.swaps.limits import SwapLimits
from tests.trade.making import stem, style

JUNE, JULY, AUGUST = 24, 29, 33


def garden(*stems: Stem, limits: SwapLimits = SwapLimits()) -> Makeable:  # noqa: B008
    by_id = {each.id: each for each in stems}
    return Makeable(Beds(by_id), by_id, {"jar": style()}, limits)


def look(*lines: tuple[str, int], essential: str = "", variant: str = "") -> Look:
    made = tuple(
        LookLine(name, count, "light", None, name == essential, "") for name, count in lines
    )
    return Look("jar", variant, made, made)


def blush(name: str, season: str, **keys: Any) -> Stem:
    return stem(name, in_season=season, **keys)


ROSE = blush("rose", "June")
MINT = blush("mint", "all year", use="foliage", colours=["green 5d7350 100 %"])
PINK = blush("pink", "July", botanical="Dianthus")
COSMOS = blush("cosmos", "July - August", head="4 cm", botanical="Cosmos")
JUNES = [blush(name, "June", botanical=f"Planta {name}") for name in "abcd"]
JULYS = [blush(name, "July", botanical=f"Planta {name}") for name in "efgh"]


def on(made: Makeable, what: Look, week: int) -> Answer:
    return made.answers(what)[week - 1]


def test_a_look_is_as_pictured_in_the_weeks_that_all_its_stems_stand() -> None:
    made = garden(ROSE, MINT)
    answers = made.answers(look(("rose", 3), ("mint", 9)))
    assert {a.week for a in answers if a.state == "pictured"} == {23, 24, 25, 26}
    assert made.weeks_pictured(look(("rose", 3), ("mint", 9))) == {23, 24, 25, 26}


def test_the_likest_stem_that_stands_stands_in_by_what_it_shows() -> None:
    made = garden(ROSE, MINT, PINK, COSMOS)
    jar = look(("rose", 3), ("mint", 9))
    assert [(s.in_, s.in_count) for s in on(made, jar, JULY).swaps] == [("pink", 3)]
    assert [(s.in_, s.in_count) for s in on(made, jar, AUGUST).swaps] == [("cosmos", 7)]


def test_three_lines_may_be_swapped_at_once_and_a_studio_may_say_fewer() -> None:
    jar = look(*((each.id, 1) for each in JUNES[:3]), ("mint", 40))
    assert len(on(garden(MINT, *JUNES, *JULYS), jar, JULY).swaps) == 3
    few = garden(MINT, *JUNES, *JULYS, limits=SwapLimits(lines=2))
    assert on(few, jar, JULY).too_much


NOT_THEN: dict[str, tuple[Makeable, Look, tuple[str, ...], bool]] = {
    "nothing like it stands": (
        garden(ROSE, MINT),
        look(("rose", 3), ("mint", 9)),
        ("rose",),
        False,
    ),
    "it is essential": (
        garden(ROSE, MINT, PINK),
        look(("rose", 3), ("mint", 9), essential="rose"),
        ("rose",),
        False,
    ),
    "the style leaves its stand-in out": (
        garden(ROSE, MINT, blush("pink", "July", hazards=["poisonous if eaten"])),
        look(("rose", 3), ("mint", 9)),
        ("rose",),
        False,
    ),
    "its stand-in is in the look already": (
        garden(ROSE, MINT, PINK),
        look(("rose", 3), ("pink", 3), ("mint", 9)),
        ("rose",),
        False,
    ),
    "too much would change": (
        garden(ROSE, MINT, PINK),
        look(("rose", 9), ("mint", 3)),
        ("rose",),
        True,
    ),
    "two lines want the only stand-in": (
        garden(ROSE, blush("tulip", "May", botanical="Tulipa"), MINT, PINK),
        look(("rose", 2), ("tulip", 2), ("mint", 9)),
        ("tulip",),
        False,
    ),
    "its stand-in is the plant of another line in another guise": (
        garden(ROSE, MINT, PINK, blush("dried", "all year", botanical="Dianthus")),
        look(("rose", 3), ("dried", 3), ("mint", 9)),
        ("rose",),
        False,
    ),
    "four lines would be swapped": (
        garden(MINT, *JUNES, *JULYS),
        look(*((each.id, 1) for each in JUNES), ("mint", 40)),
        ("a", "b", "c", "d"),
        True,
    ),
}


@pytest.mark.parametrize("case", NOT_THEN)
def test_it_is_not_then_when(case: str) -> None:
    made, what, blocks, too_much = NOT_THEN[case]
    answer = on(made, what, JULY)
    assert (answer.state, answer.blocks, answer.too_much) == ("none", blocks, too_much)


def test_how_sure_it_is_is_how_sure_the_least_sure_stem_is() -> None:
    made = garden(ROSE, MINT)
    jar = look(("rose", 3), ("mint", 9))
    assert on(made, jar, 25).chance == made.beds.chance("rose", 7 * 24 + 4)
    assert on(made, jar, JULY).chance == 0


NEAREST = {
    "ahead": (10, [14, 30], 14),
    "behind": (10, [8, 30], 8),
    "of two alike the one to come": (10, [8, 12], 12),
    "over New Year": (50, [2, 40], 2),
    "over New Year backwards": (2, [20, 51], 51),
    "never": (10, [], None),
}


@pytest.mark.parametrize(("week", "weeks", "expected"), NEAREST.values(), ids=NEAREST)
def test_the_nearest_week_is_looked_for_round_the_year(
    week: int, weeks: list[int], expected: int | None
) -> None:
    assert nearest(week, weeks) == expected


def test_not_then_points_to_the_nearest_week() -> None:
    assert on(garden(ROSE, MINT), look(("rose", 3), ("mint", 9)), JULY).nearest == 26


@pytest.mark.parametrize(
    ("state", "chance", "sure"),
    [
        ("pictured", 0.95, "sure"),
        ("pictured", 0.2, "touch and go"),
        ("swaps", 0.0, "touch and go"),
        ("none", 0.0, "not then"),
    ],
    ids=["sure", "pictured, doubted by the log", "swaps, doubted by the log", "not then"],
)
def test_it_is_called_not_then_exactly_where_it_cant_be_made(
    state: State, chance: float, sure: str
) -> None:
    assert Answer(JULY, state, chance).sure == sure
