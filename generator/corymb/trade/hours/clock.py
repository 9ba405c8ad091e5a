"""What moment is an hour of the clock, on a day, at a place where the clocks change?

Hours of work are written by the clock and last by the sun: 07:00 stays 07:00 after a clock
change, but the night of the change is an hour longer or shorter. So moments are made here by the
clock, and lengths of time added and measured in universal time.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo


def moment(day: date, clock: time, zone: str) -> datetime:
    """The moment, with its zone (IANA name). Raises zoneinfo.ZoneInfoNotFoundError.

    An hour that the clocks leave out is as much later as they are put forward; of an hour that
    comes twice it is the first.
    """
    there = ZoneInfo(zone)
    return datetime.combine(day, clock, there).astimezone(UTC).astimezone(there)


def later(start: datetime, by: timedelta) -> datetime:
    """So long after (or before, where `by` is below 0), by the clock of the same place."""
    return (start.astimezone(UTC) + by).astimezone(start.tzinfo)


def between(start: datetime, end: datetime) -> timedelta:
    """How long it really is from one moment to another."""
    return end.astimezone(UTC) - start.astimezone(UTC)
