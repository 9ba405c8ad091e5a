"""How many of a stem stand in one bucket?

About: the stem. Choices: numbers; the wrong ones are other stems' numbers, and half and double.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import log

from corymb.trade.questions.question import Known, Question, dealt, in_numbers, put

KIND = "to a bucket"


def questions(known: Known) -> Iterator[Question]:
    """One for each recipe, and no stem twice."""
    asked: set[str] = set()
    for recipe in known.looks:
        left = [line.stem for line in known.own(recipe).lines if line.stem not in asked]
        for stem in dealt(dict.fromkeys(left), f"{KIND} {recipe}")[:1]:
            asked.add(stem)
            yield from in_numbers(_of_stem(known, recipe, stem))


def _of_stem(known: Known, recipe: str, stem: str) -> Iterator[Question]:
    right = known.stems[stem].stems_per_bucket
    style = known.recipes[recipe].style
    wrong = dealt(map(str, _others(known, right)), f"{KIND} {stem}")
    yield from put(KIND, style, recipe, (stem,), str(right), wrong)


def _others(known: Known, right: int) -> list[int]:
    """The four numbers nearest to the right one that might be taken for it."""
    numbers = {each.stems_per_bucket for each in known.stems.values()}
    numbers |= {2 * right, 3 * right, right // 2}
    numbers -= {right, 0}
    return sorted(numbers, key=lambda number: (abs(log(number / right)), number))[:4]
