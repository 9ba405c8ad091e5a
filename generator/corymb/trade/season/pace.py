"""How does a date move along the year, where spring comes later and autumn earlier?

Hopkins' rule holds to the full from 1 February to 30 June, the other way round to the full
from 1 September to 30 November, and in between it changes steadily, through nothing about
31 July and about New Year. (Hopkins gives the two seasons; the change between them is our own
choice.) A date is carried along the year at that pace for as many days as the places differ:
dx/ds = pace(x), from s = 0 to s = shift. So there and back again returns to the same date, two
dates never change their order, and further north a season shortens from both its ends. Where the
pace is constant the date moves evenly, where it changes steadily it moves exponentially; each
stretch is solved exactly.

Days are those of a northern plain year.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import exp, inf, log

from corymb.studio.values.season import DAYS_IN_YEAR


@dataclass(frozen=True)
class _Stretch:
    """A part of the northern year in which the pace is constant or changes steadily."""

    start: float
    end: float
    pace_at_start: float
    pace_at_end: float

    @property
    def steepness(self) -> float:
        return (self.pace_at_end - self.pace_at_start) / (self.end - self.start)

    def pace(self, day: float) -> float:
        return self.pace_at_start + self.steepness * (day - self.start)

    def time_to(self, day: float, target: float) -> float:
        """How long a date takes from one day of the stretch to another; for ever over a rest."""
        here, there = self.pace(day), self.pace(target)
        if here * there <= 0:
            return inf
        if not self.steepness:
            return (target - day) / here
        return log(there / here) / self.steepness

    def after(self, day: float, time: float) -> float:
        """Where a date is after a time that it spends within the stretch."""
        if not self.steepness:
            return day + self.pace_at_start * time
        grown = exp(self.steepness * time)
        return day + self.pace(day) * (grown - 1) / self.steepness


SPRING, SUMMER, AUTUMN, WINTER = 32.0, 181.0, 244.0, 334.0
"""1 February, 30 June, 1 September and 30 November."""
_YEAR = (
    _Stretch(SPRING, SUMMER, 1, 1),
    _Stretch(SUMMER, AUTUMN, 1, -1),
    _Stretch(AUTUMN, WINTER, -1, -1),
    _Stretch(WINTER, SPRING + DAYS_IN_YEAR, -1, 1),
)


def carried(day: float, time: float) -> float:
    """A date of the northern year, carried along for a time (backwards where below nought)."""
    forward = 1 if time > 0 else -1
    day = day if day >= SPRING else day + DAYS_IN_YEAR
    at = next(n for n, stretch in enumerate(_YEAR) if day <= stretch.end)
    while time:
        stretch = _YEAR[at]
        onward = stretch.pace(day) * time > 0
        border = stretch.end if onward else stretch.start
        needed = stretch.time_to(day, border)
        if abs(needed) >= abs(time) or stretch.pace(day) == 0:
            return stretch.after(day, time)
        time = forward * (abs(time) - abs(needed))
        at = (at + (1 if onward else -1)) % len(_YEAR)
        day = _YEAR[at].start if onward else _YEAR[at].end
    return day
