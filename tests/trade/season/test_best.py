"""Which look is the best to make in a week; and where none is, which week is the nearest?"""

from __future__ import annotations

import pytest

from corymb.trade.looks import Look
from corymb.trade.season.best import best_of
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.season.weeks import WEEKS
from corymb.trade.swaps.standing_in import StandIn
from tests.trade.making import recipe, stem, variant
from tests.trade.season.studio import all_looks, small_studio


class Told(Makeable):
    """Answers that are told it, by variant: the same in every week."""

    def __init__(self, answers: dict[str, Answer]) -> None:
        self._told = answers

    def answers(self, look: Look) -> tuple[Answer, ...]:
        return (self._told[look.variant],) * len(WEEKS)


def pictured(chance: float = 1.0) -> Answer:
    return Answer(1, "pictured", chance)


def with_swaps(*counts: int, chance: float = 1.0) -> Answer:
    """So many stems come in by each swap."""
    swaps = [StandIn("rose", "pink", "light", 1, n, 5.0, 1.0, 0, True, 5.0) for n in counts]
    return Answer(1, "swaps", chance, tuple(swaps))


NEVER = Answer(1, "none", 0.0, blocks=("rose",))

# The answers of the recipe ('') and of its variants, and the one that is chosen, with its state.
CHOICES = {
    "the recipe as pictured before a surer variant": (
        {"": pictured(0.4), "a": pictured()}, "", "pictured",
    ),
    "a variant as pictured before the recipe with one swap": (
        {"": with_swaps(1), "a": pictured(0.4)}, "a", "variant",
    ),
    "the recipe with many swaps before a variant with few": (
        {"": with_swaps(9, 9), "a": with_swaps(1)}, "", "swaps",
    ),
    "a variant with swaps before nothing": ({"": NEVER, "a": with_swaps(9)}, "a", "swaps"),
    "the surer of two variants": (
        {"": NEVER, "a": pictured(0.7), "b": pictured(0.95)}, "b", "variant",
    ),
    "of two that are as sure, in a word, the one written first": (
        {"": NEVER, "a": pictured(0.91), "b": pictured(0.99)}, "a", "variant",
    ),
    "of two that the log doubts the one written first": (
        {"": NEVER, "a": pictured(0.1), "b": pictured(0.4)}, "a", "variant",
    ),
    "the variant whose swaps change the fewest stems": (
        {"": NEVER, "a": with_swaps(3, 3), "b": with_swaps(5, chance=0.4)}, "b", "swaps",
    ),
    "of two that change as many the surer": (
        {"": NEVER, "a": with_swaps(5, chance=0.7), "b": with_swaps(2, 3)}, "b", "swaps",
    ),
    "the recipe, where nothing can be made": ({"": NEVER, "a": NEVER}, "", "none"),
}  # fmt: skip


@pytest.mark.parametrize(("answers", "chosen", "state"), CHOICES.values(), ids=CHOICES)
def test_the_best_look_is(answers: dict[str, Answer], chosen: str, state: str) -> None:
    looks = {known_as: Look("jar", known_as, (), ()) for known_as in answers}
    best, *_ = best_of(looks, Told(answers))
    assert (best.look.variant, best.state) == (chosen, state)


def test_what_is_pictured_is_never_called_not_then() -> None:
    best, *_ = best_of({"": Look("jar", "", (), ())}, Told({"": pictured(0.2)}))
    assert (best.state, best.sure) == ("pictured", "touch and go")


# The jar can be made in weeks 20 to 26, or with poppies in weeks 30 to 36.
NEAREST = {
    "before the recipe's own weeks": (15, 20),
    "between, nearer to the recipe's own": (27, 26),
    "halfway, the one to come": (28, 30),
    "after the variant's": (40, 36),
    "back over the new year": (1, 36),
}


@pytest.mark.parametrize(("week", "nearest"), NEAREST.values(), ids=NEAREST)
def test_the_nearest_week_is_one_in_which_any_of_the_looks_can_be_made(
    week: int, nearest: int
) -> None:
    studio = small_studio(
        stem("rose", in_season="W20 - W26"),
        stem("poppy", in_season="W30 - W36", colours=["red c02020 100 %"]),
        recipe(
            stems=["6 rose, light, essential"],
            variants={"poppies": variant(swap=["rose -> poppy"])},
        ),
    )
    best = best_of(all_looks(studio)["gate-jar"], Makeable.of(studio))[week - 1]
    assert (best.state, best.answer.nearest) == ("none", nearest)
