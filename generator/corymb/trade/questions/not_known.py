"""No hazard is written for this stem. What does that mean?

About: the stem. Choices: that it is safe, that it isn't known, that it is safe to handle. Right is
always that it isn't known, since nothing else follows from nothing written.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.trade.questions.question import Known, Question, dealt, put

KIND = "not known"
RIGHT = "not known"
WRONG = ("safe", "safe to handle")


def questions(known: Known) -> Iterator[Question]:
    """One for each style that has such a stem."""
    for style_id in known.styles:
        stems = known.of_style(style_id)
        untold = (each for each in stems if not known.stems[each].hazards)
        bare = dealt((each for each in untold if not known.stems[each].caution), KIND + style_id)
        for stem in bare[:1]:
            yield from put(KIND, style_id, "", (stem,), RIGHT, WRONG)
