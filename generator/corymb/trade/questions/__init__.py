"""What may a helper be asked, with one right answer? One module a kind; this is the list of them.

Questions are made from the recipes, the plants and the lessons alone, so that they are always of
what the studio really does.
"""

from __future__ import annotations

from corymb.trade.questions import (
    gloves,
    how_many,
    left_out,
    lesson_first,
    lesson_for,
    not_known,
    out_of_season,
    stands_in,
    to_a_bucket,
    which_role,
)
from corymb.trade.questions.question import Known, Question

KINDS = (
    which_role,
    how_many,
    to_a_bucket,
    out_of_season,
    stands_in,
    lesson_for,
    left_out,
    gloves,
    not_known,
    lesson_first,
)

__all__ = ["KINDS", "Known", "Question", "all_questions"]


def all_questions(known: Known) -> tuple[Question, ...]:
    """Every question, the kinds in their order."""
    return tuple(question for kind in KINDS for question in kind.questions(known))
