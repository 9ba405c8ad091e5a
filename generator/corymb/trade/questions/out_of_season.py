"""Which of these can't be cut in the week of the build?

About: nothing more. Choices: stems of a recipe and its variants, of which one doesn't stand on
any day of that week, by the windows and by the log; the others are sure to.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.trade.questions.question import Known, Question, dealt, put
from corymb.trade.season.sureness import SURE
from corymb.trade.season.weeks import thursday

KIND = "out of season"
NEVER = 0.02
"""Less likely than this is as good as never. House value."""


def questions(known: Known) -> Iterator[Question]:
    """One for each recipe of which something stands and something doesn't."""
    for recipe in known.looks:
        seed, style = f"{KIND} {known.week} {recipe}", known.recipes[recipe].style
        stems = dealt(known.of_recipe(recipe), seed)
        gone = [stem for stem in stems if is_gone(known, stem)]
        here = [stem for stem in stems if known.beds.sure(stem, known.week) == SURE]
        if gone:
            yield from put(KIND, style, recipe, (), gone[0], known.apart(gone[0], here))


def is_gone(known: Known, stem: str) -> bool:
    """Whether nobody finds it in the beds in that week."""
    middle = thursday(known.week)
    days = ((day - 1) % 365 + 1 for day in range(middle - 3, middle + 4))
    return all(
        day not in known.beds.season(stem).days() and known.beds.chance(stem, day) < NEVER
        for day in days
    )
