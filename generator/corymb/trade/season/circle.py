"""How far is it from one day of the year to another, when December is next to January?

Days are those of a plain year, 1 to 365, and between them in fractions: 1 <= day < 366.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import floor

from corymb.studio.values.season import DAYS_IN_YEAR, Window, month_day

HAIR = 1e-6
"""Less than this is a rounding error, in days."""


def on_circle(day: float) -> float:
    """The same day, counted from 1 to just below 366."""
    turned = (day - 1) % DAYS_IN_YEAR
    # A hair below nought turns to a whole year when it is rounded.
    return 1 + (turned if turned < DAYS_IN_YEAR else 0.0)


def ahead(start: float, end: float) -> float:
    """Days onward from one day to the other: 0 or more, less than a year."""
    days = on_circle(end - start + 1) - 1
    return days if days < DAYS_IN_YEAR - HAIR else 0.0  # the same day, but for rounding


def gap(start: float, end: float) -> float:
    """Days to the other day by the shorter way: below nought where it lies before."""
    half = DAYS_IN_YEAR / 2
    return ahead(start - half, end) - half


def whole(day: float) -> int:
    """The nearest whole day, 1 to 365; a half goes to the later one."""
    return int(on_circle(floor(day + 0.5)))


@dataclass(frozen=True)
class Span:
    """From a first day onward to a last one, which may lie beyond the new year."""

    first: float
    length: float
    """Days from the first to the last: 0 where they are the same day."""

    @classmethod
    def between(cls, first: float, last: float) -> Span:
        """From one day onward to another."""
        return cls(on_circle(first), ahead(first, last))

    @classmethod
    def of(cls, window: Window) -> Span:
        """A window's first and last day."""
        return cls.between(window.first.day_of_year, window.last.day_of_year)

    @property
    def last(self) -> float:
        """The last day."""
        return on_circle(self.first + self.length)

    @property
    def middle(self) -> float:
        """The day halfway."""
        return on_circle(self.first + self.length / 2)

    def window(self) -> Window:
        """The same in whole days."""
        first, last = whole(self.first), whole(self.last)
        if first == last and self.length > DAYS_IN_YEAR / 2:  # all year but for part of a day
            last = whole(self.last - 1)
        return Window(month_day(first), month_day(last))

    def shared(self, other: Span) -> float:
        """How many days lie in both, the first and the last ones counted."""
        later = ahead(self.first, other.first)
        earlier = later - DAYS_IN_YEAR
        return self._shared_from(later, other.length) + self._shared_from(earlier, other.length)

    def _shared_from(self, start: float, length: float) -> float:
        days = min(self.length, start + length) - max(0.0, start) + 1
        return max(0.0, days)
