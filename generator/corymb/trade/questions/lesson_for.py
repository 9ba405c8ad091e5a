"""Which of these lessons does one need before making this recipe?

About: nothing more. Choices: lessons, of which the recipe asks for one. The others aren't needed
for it, nor for any lesson that it asks for.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.trade.questions.question import Known, Question, dealt, put
from corymb.trade.training.lessons import all_needed

KIND = "lesson for"


def questions(known: Known) -> Iterator[Question]:
    """One for each recipe that asks for lessons."""
    for recipe in known.looks:
        seed, style = f"{KIND} {recipe}", known.recipes[recipe].style
        asked = [each for each in known.recipes[recipe].techniques if each in known.lessons]
        needed = set(asked).union(*(all_needed(known.lessons, each) for each in asked))
        others = dealt((each for each in known.lessons if each not in needed), seed)
        for right in dealt(asked, seed)[:1]:
            yield from put(KIND, style, recipe, (), right, others)
