"""On which days, and from when to when, is a job done that may be too long for one day?"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from corymb.trade.apportion import apportion
from corymb.trade.hours.clock import later, moment

Span = tuple[datetime, datetime]


@dataclass(frozen=True)
class Day:
    """How a day of this work goes: when it begins, how long it is at most, and where."""

    begins: Callable[[date], time]
    most_minutes: int
    zone: str


def sessions(last: date, minutes: int, day: Day) -> tuple[Span, ...]:
    """The spans of work that end on the day `last`; none for no work.

    The work is shared out evenly over as few days as it takes. Raises ValueError when a
    day has no room for work.
    """
    if day.most_minutes <= 0:
        raise ValueError("a day's work is longer than nothing")
    days = -(-minutes // day.most_minutes)
    spans = []
    for number, own in enumerate(apportion(minutes, [1] * days)):
        on = last - timedelta(days=days - 1 - number)
        start = moment(on, day.begins(on), day.zone)
        spans.append((start, later(start, timedelta(minutes=own))))
    return tuple(spans)


def sessions_until(end: datetime, last: date, minutes: int, day: Day) -> tuple[Span, ...]:
    """The same, done by a moment: on the day `last`, or as many days before as it takes."""
    spans = sessions(last, minutes, day)
    while spans and spans[-1][1] > end:
        last -= timedelta(days=1)
        spans = sessions(last, minutes, day)
    return spans
