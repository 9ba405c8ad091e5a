"""Which of these lessons is taken first?

About: nothing more. Choices: lessons, of which one is needed for every other, at once or in the
end.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.trade.questions.question import Known, Question, dealt, put
from corymb.trade.training.lessons import all_needed

KIND = "lesson first"


def questions(known: Known) -> Iterator[Question]:
    """One for each lesson that enough others need."""
    for right in known.lessons:
        later = (each for each in known.lessons if right in all_needed(known.lessons, each))
        yield from put(KIND, "", "", (), right, dealt(later, f"{KIND} {right}"))
