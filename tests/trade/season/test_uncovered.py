"""In which weeks a style has nothing, and what comes nearest."""

from __future__ import annotations

import pytest

from corymb.trade.season.makeable import Makeable
from corymb.trade.season.uncovered import Spell, spells, uncovered
from tests.trade.making import recipe, stem
from tests.trade.season.studio import all_looks, small_studio

SPELLS = {
    "one in summer": (set(range(1, 53)) - {24, 25}, 10, [(24, 25)]),
    "over the new year": (set(range(3, 52)), 10, [(52, 1, 2)]),
    "the one that is now first, and whole": (set(range(3, 52)) - {30}, 1, [(52, 1, 2), (30,)]),
    "those to come in turn": (set(range(1, 53)) - {5, 30, 40}, 20, [(30,), (40,), (5,)]),
    "none": (set(range(1, 53)), 10, []),
}  # fmt: skip


@pytest.mark.parametrize(("can", "start", "runs"), SPELLS.values(), ids=SPELLS)
def test_weeks_with_nothing_are_told_in_runs_from_now_on(
    can: set[int], start: int, runs: list[tuple[int, ...]]
) -> None:
    assert list(spells(can, start)) == runs


def test_a_style_that_can_never_be_made_has_one_spell_of_a_year() -> None:
    assert spells(set(), 51) == ((51, 52, *range(1, 51)),)


def found(*recipes: list[str]) -> tuple[Spell, ...]:
    """The spells of a studio whose recipes have these lines; what grows is written here."""
    studio = small_studio(
        stem("rose", in_season="W1 - W30"),
        stem("poppy", in_season="W1 - W30", colours=["red c02020 100 %"]),
        stem("peony", in_season="all year", colours=["blush e6c0b0 100 %"]),
        stem("mint", in_season="W1 - W29", use="foliage", colours=["green 507040 100 %"]),
        stem("ivy", in_season="all year", use="foliage", hazards=["poisonous if eaten"]),
        *(recipe(f"jar-{n}", stems=lines) for n, lines in enumerate(recipes, 1)),
    )
    return uncovered(studio, all_looks(studio), Makeable.of(studio), start=1)


@pytest.mark.parametrize(
    ("recipes", "nearest"),
    [
        ([["6 rose, light, essential", "4 mint, depth"], ["5 rose, light, essential"]], "jar-2"),
        ([["5 rose, light, essential", "20 peony, depth"], ["5 rose, light, essential"]], "jar-1"),
        ([["5 rose, light, essential"], ["4 poppy, light, essential"]], "jar-1"),
    ],
    ids=["the fewest stems", "the least of what is seen", "of two alike the first"],
)
def test_the_recipe_that_comes_nearest_lacks_least(recipes: list[list[str]], nearest: str) -> None:
    (spell,) = (each for each in found(*recipes) if 40 in each.weeks)
    assert spell.look.id == nearest


def test_each_stem_that_is_lacking_has_the_swap_that_comes_nearest() -> None:
    (spell,) = found(["5 rose, light, essential", "4 mint, depth"])
    assert spell.weeks == tuple(range(30, 53))
    rose, mint = spell.lacks
    assert (rose.stem, rose.essential, mint.stem, mint.essential) == ("rose", True, "mint", False)
    assert rose.nearest and (rose.nearest.swap.in_, rose.nearest.against) == ("peony", ())
    # Ivy alone is foliage that stands then, and it is poisonous.
    assert mint.nearest is None
