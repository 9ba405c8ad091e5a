"""How likely does a flush stand on a day, if its first and last cut differ from year to year?

The first and the last day are taken as normally distributed about their blended dates, each by
itself, so the chance in one year is P(first <= day) x P(last >= day). Half the years the first cut
falls on its date or before; a date well inside a long flush is next to certain. A day may lie in
this year's flush or in the one before or after, so it is missed only where both miss it; and all
of it holds in those years alone in which the flush comes (`comes`).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import erf, sqrt

from corymb.studio.values.season import DAYS_IN_YEAR
from corymb.trade.season.circle import Span, gap


@dataclass(frozen=True)
class Flush:
    """A time in which a stem can be cut: its first and last day, and how sure each of them is."""

    first: float
    last: float
    first_spread: float
    """The standard deviation of its first day from year to year, in days."""
    last_spread: float
    years: int = 0
    """Years of the studio's log that speak of it."""
    comes: float = 1.0
    """In which share of years it comes at all."""

    @cached_property
    def span(self) -> Span:
        """From its first day to its last."""
        return Span.between(self.first, self.last)

    def chance(self, day: float) -> float:
        """That it stands on a day of a plain year, 0 to 1."""
        span = self.span
        since_first = gap(span.middle, day) + span.length / 2
        # A day far from the flush lies before this year's and after last year's.
        other_way = since_first + (DAYS_IN_YEAR if since_first < span.length / 2 else -DAYS_IN_YEAR)
        misses = 1.0
        for since in (since_first, other_way):
            misses *= 1 - self._stands(since, span.length)
        return self.comes * (1 - misses)

    def _stands(self, since_first: float, length: float) -> float:
        begun = at_most(since_first, self.first_spread)
        not_over = at_most(length - since_first, self.last_spread)
        return begun * not_over


def at_most(days: float, spread: float) -> float:
    """The chance that a normal error with this standard deviation is no more than `days`."""
    return (1 + erf(days / (spread * sqrt(2)))) / 2
