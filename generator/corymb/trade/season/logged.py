"""What does the studio's own log make of the book's dates?

Each year of the log outweighs the book a little more. With n years of a flush its edge lies at
(1 - w) x book + w x mean of the log, w = n / (n + 2): the book counts as much as two years.
All differences are taken around the year, so that a flush over New Year stays in winter. Several
windows of one year that speak of one flush (`paired`) are taken together, from first to last.

A flush that the book doesn't have counts from its second year (ENOUGH_YEARS), at the mean of its
logged dates, and comes in a share w of the years. A log says when a stem was cut, never that
it couldn't be: a flush that a year is silent about keeps its dates, and what stands all year keeps
standing.

How far an edge strays from year to year, as a standard deviation: the habit of the house is
PRIOR_DAYS, weighed as two years, and the log's own scatter is added to it,

    variance = (2 x PRIOR_DAYS^2 + sum (x - mean)^2) / (n + 2) x (1 + 1 / (n + 2))

where the last factor stands for not knowing the mean itself. Six days: common practice; the full
flower of the cherries of Kyoto strayed by about that much over the centuries (Aono and Kazui 2008,
International Journal of Climatology 28:905-914; from memory).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from math import sqrt

from corymb.studio.values.season import DAYS_IN_YEAR, Season
from corymb.trade.season.circle import Span, gap, on_circle
from corymb.trade.season.flush import Flush
from corymb.trade.season.paired import Spoken, paired

BOOK_YEARS = 2
"""The book counts as much as so many years of log: house value."""

ENOUGH_YEARS = 2
"""A flush that the book doesn't have counts from so many years on: one might be chance."""

PRIOR_DAYS = 6.0
"""How far an edge strays where the log tells nothing yet, as a standard deviation."""


def weight(years: int) -> Fraction:
    """How much so many years of log count against the book, 0 to 1."""
    return Fraction(years, years + BOOK_YEARS)


def spread(deviations: Sequence[float]) -> float:
    """How far an edge strays from year to year, by how far the log's years lay from the book."""
    years = len(deviations) + BOOK_YEARS
    mean = _mean(deviations)
    scatter = sum((each - mean) ** 2 for each in deviations)
    variance = (BOOK_YEARS * PRIOR_DAYS**2 + scatter) / years
    return sqrt(variance * (1 + 1 / years))


def blended(book: Sequence[Span], log: Mapping[str, Season]) -> tuple[Flush, ...]:
    """The book's flushes in order with a stem's log (season by year) blended in, then any others.

    `book` is as the dates would be at the studio's place.
    """
    known, strays = paired(book, log)
    own = (_own_flush(stray) for stray in strays if len(stray.windows) >= ENOUGH_YEARS)
    return (*(_blend(each, float(weight(len(each.windows)))) for each in known), *own)


def _own_flush(stray: Spoken) -> Flush:
    """A flush the log alone knows of: the first year's dates stand in for the book's."""
    return replace(_blend(stray, log_weight=1.0), comes=float(weight(len(stray.windows))))


def _blend(spoken: Spoken, log_weight: float) -> Flush:
    book = spoken.flush
    years = [_Year.of(windows, book) for windows in spoken.windows.values()]
    firsts, lasts = [year.first for year in years], [year.last for year in years]
    first = log_weight * _mean(firsts)
    length = book.length - first + log_weight * _mean(lasts)
    # Between the book's length and the log's, so its edges never cross. Two windows of one year
    # may reach round the year, though: what would bite its own tail leaves a day between.
    span = Span(on_circle(book.first + first), min(length, DAYS_IN_YEAR - 2))
    return Flush(span.first, span.last, spread(firsts), spread(lasts), len(years))


@dataclass(frozen=True)
class _Year:
    """How far one year's first and last cut lay from the flush's own, in days."""

    first: float
    last: float

    @classmethod
    def of(cls, windows: Sequence[Span], flush: Span) -> _Year:
        """Of several windows from the first to the last, measured from the flush's middle."""
        edges = [_edges(window, flush) for window in windows]
        return cls(min(first for first, _ in edges), max(last for _, last in edges))


def _edges(window: Span, flush: Span) -> tuple[float, float]:
    apart = gap(flush.middle, window.middle)
    longer = (window.length - flush.length) / 2
    return apart - longer, apart + longer


def _mean(days: Sequence[float]) -> float:
    return sum(days) / len(days) if days else 0.0
