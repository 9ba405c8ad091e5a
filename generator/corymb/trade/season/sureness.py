"""How sure is it, in words?

The borders are house values, common practice without a source: nine years in ten is sure enough
to promise, two in three to plan for, and less than one in three not worth a line on a list.

Whether a stem stands in a week is decided by its windows; the log may doubt what they hold, and
can't forbid it.
"""

from __future__ import annotations

from corymb.language import noted

SURE, LIKELY, TOUCH, NOT = "sure", "likely", "touch and go", "not then"
WORDS = (SURE, LIKELY, TOUCH, NOT)
"""The surest first."""

MEANS = (
    (SURE, noted("at least nine years in ten")),
    (LIKELY, noted("about two years in three, or more")),
    (TOUCH, noted("in some years and not in others")),
)
"""The same for a client, who plans by years; `touch and go` is said of all else that is held."""

AT_LEAST = ((0.9, SURE), (0.65, LIKELY), (0.35, TOUCH))


def sureness(chance: float, *, held: bool = False) -> str:
    """The word for a chance from 0 to 1; never `not then` of what the windows hold."""
    least_sure = TOUCH if held else NOT
    return next((word for least, word in AT_LEAST if chance >= least), least_sure)
