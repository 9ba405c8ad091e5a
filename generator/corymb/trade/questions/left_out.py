"""Which of these is left out of a style, for what it can do to people?

About: nothing more. Choices: stems with hazards written, of which one has a hazard that the style
leaves out and the others have none of these. A stem with no hazard written is no choice: it isn't
known what it does, and a question mustn't make it look safe.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from corymb.trade.questions.question import Known, Question, dealt, put

KIND = "left out"
AT_MOST = 4
"""Questions of a style."""


def questions(known: Known) -> Iterator[Question]:
    """A few for each style that leaves something out."""
    for style_id in known.styles:
        yield from _of_style(known, style_id)


def _of_style(known: Known, style_id: str) -> Iterator[Question]:
    seed = f"{KIND} {style_id}"
    stems = dealt((each for each, stem in known.stems.items() if stem.hazards), seed)
    barred = [each for each in stems if left_out(known, style_id, each)]
    used = set(known.of_style(style_id))
    others = [each for each in stems if not left_out(known, style_id, each)]
    others.sort(key=lambda each: each not in used)
    for right in islice(barred, AT_MOST):
        wrong = dealt(known.apart(right, others)[:6], f"{seed} {right}")
        yield from put(KIND, style_id, "", (), right, wrong)


def left_out(known: Known, style_id: str, stem: str) -> tuple[str, ...]:
    """The hazards of a stem for which the style leaves it out."""
    excludes = known.styles[style_id].excludes
    return tuple(each for each in known.stems[stem].hazards if each in excludes)
