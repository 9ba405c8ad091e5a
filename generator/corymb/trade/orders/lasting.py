"""Do the stems of an order keep until its flowers have done their work, or the next visit comes?

As its hours say (`timed`): from the first morning of its cut on, each stem by its shortest number
of days.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from corymb.studio.studio import Studio
from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import timed
from corymb.trade.season.makeable import Makeable


@dataclass(frozen=True)
class Lasting:
    """From the cut until the flowers have done their work."""

    cut: datetime | None
    """None where nothing is cut."""
    until: datetime
    days: int
    """For which they are wanted, a part of one counted whole; 0 where nothing is cut."""
    next_visit: date | None
    short: tuple[tuple[str, int], ...]
    """The stems that don't surely keep so long, by id, with their fewest days; shortest first."""


def lasting(due: Due, studio: Studio, makeable: Makeable) -> Lasting:
    """How long the stems of an order are wanted, and which of them don't keep so long."""
    of_due = timed(due, studio, makeable)
    flagged = (flag.stem for flag in of_due.timeline.flags if flag.kind == "vase life")
    short = [(stem, studio.stems[stem].vase_life.fewest) for stem in flagged]
    return Lasting(
        of_due.cut_from,
        of_due.keeps_until,
        of_due.days,
        due.next_visit,
        tuple(sorted(short, key=lambda each: each[1])),
    )
