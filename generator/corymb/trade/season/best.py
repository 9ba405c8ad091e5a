"""Which of a recipe's looks is the best to make in each week?

What the studio has designed goes before what the program works out: the recipe as pictured, then
a variant as pictured, then the recipe with swaps, then a variant with swaps. Of several variants
the surer goes first, then the one written first; of several with swaps the one that changes least.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from corymb.trade.looks import Look
from corymb.trade.season.makeable import Answer, Makeable, nearest
from corymb.trade.season.sureness import WORDS
from corymb.trade.season.weeks import WEEKS

BestState = Literal["pictured", "variant", "swaps", "none"]


@dataclass(frozen=True)
class Best:
    """The look to make in a week, and its answer for that week.

    `state` is `variant` where a variant can be made as pictured and the recipe itself can't.
    """

    week: int
    look: Look
    answer: Answer
    state: BestState

    @property
    def sure(self) -> str:
        """How sure it is, in a word."""
        return self.answer.sure


def best_of(looks: Mapping[str, Look], makeable: Makeable) -> tuple[Best, ...]:
    """The best look of a recipe for each of the 52 weeks; `looks` is by variant, '' its own."""
    answers = {variant: makeable.answers(look) for variant, look in looks.items()}
    bests = [_best(looks, {v: a[week - 1] for v, a in answers.items()}) for week in WEEKS]
    can = [best.week for best in bests if best.state != "none"]
    return tuple(best if best.state != "none" else _pointing(best, can) for best in bests)


def _pointing(best: Best, can: Sequence[int]) -> Best:
    """To the nearest week in which any of the looks can be made."""
    return replace(best, answer=replace(best.answer, nearest=nearest(best.week, can)))


def _best(looks: Mapping[str, Look], answers: Mapping[str, Answer]) -> Best:
    places = {variant: place for place, variant in enumerate(answers)}
    chosen = min(answers, key=lambda variant: (_rank(variant, answers[variant]), places[variant]))
    answer = answers[chosen]
    state: BestState = "variant" if chosen and answer.state == "pictured" else answer.state
    return Best(answer.week, looks[chosen], answer, state)


def _rank(variant: str, answer: Answer) -> tuple[int, ...]:
    own = not variant
    first = {"pictured": 0 if own else 1, "swaps": 2 if own else 3, "none": 4 if own else 5}
    changes = sum(swap.in_count for swap in answer.swaps)
    return first[answer.state], changes, WORDS.index(answer.sure)
