"""For which of these does the sheet ask for gloves?

About: nothing more. Choices: stems with hazards written, of which one has a hazard that asks for
gloves. The others have none but what harms no hand, and no caution of their own beside it. A stem
with no hazard written is no choice: it isn't known whether it is safe to handle.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from corymb.studio.models import Stem
from corymb.trade.questions.question import Known, Question, dealt, put

KIND = "gloves"
AT_MOST = 3
"""Questions of a style."""

GLOVES = (
    *("irritant sap", "irritant hairs", "burns in sun", "thorns", "skin allergy"),
    "heart poison",
)
"""The hazards for which a bench sheet asks for gloves (common practice, no source)."""

NO_HARM_TO_HANDS = ("heavy pollen", "irritant dust", "poisonous to pets")
"""Hazards for which it asks for something else."""


def questions(known: Known) -> Iterator[Question]:
    """A few for each style."""
    for style_id in known.styles:
        seed = f"{KIND} {style_id}"
        stems = dealt(known.of_style(style_id), seed)
        gloved = [each for each in stems if wants_gloves(known.stems[each])]
        others = [each for each in stems if harms_no_hand(known, each)]
        elsewhere = (each for each in dealt(known.stems, seed) if harms_no_hand(known, each))
        others += (each for each in elsewhere if each not in others)
        for right in islice(gloved, AT_MOST):
            wrong = known.apart(right, dealt(others[:8], f"{seed} {right}"))
            yield from put(KIND, style_id, "", (), right, wrong)


def wants_gloves(stem: Stem) -> bool:
    """Whether a hazard of it asks for gloves."""
    return any(hazard in GLOVES for hazard in stem.hazards)


def harms_no_hand(known: Known, stem: str) -> bool:
    """Whether hazards are written, none of them asks for gloves, and nothing more is said."""
    hazards, caution = known.stems[stem].hazards, known.stems[stem].caution
    return bool(hazards) and not caution and all(each in NO_HARM_TO_HANDS for each in hazards)
