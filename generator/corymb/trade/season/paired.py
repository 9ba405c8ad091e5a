"""Of which flush does a window in the log speak?

Of the book's flush that shares most days with it. A window that shares none with any belongs to
the flush with the nearest middle that its year hasn't spoken of otherwise, if that lies within a
quarter of a year. What is left over is a stray: a flush that the book doesn't have. Strays of
different years that share days are one flush.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from corymb.studio.values.season import DAYS_IN_YEAR, Season
from corymb.trade.season.circle import Span, gap

NEAR_DAYS = DAYS_IN_YEAR / 4
"""House value: no year is so early or so late that a flush would stray by a quarter of a year."""


@dataclass
class Spoken:
    """A flush, and what each year of the log calls it."""

    flush: Span
    windows: dict[str, list[Span]] = field(default_factory=dict)
    """By year."""

    def add(self, year: str, window: Span) -> None:
        """One more window of a year."""
        self.windows.setdefault(year, []).append(window)


def paired(book: Sequence[Span], log: Mapping[str, Season]) -> tuple[list[Spoken], list[Spoken]]:
    """The book's flushes in order with a stem's log (season by year), and the strays."""
    known, strays = [Spoken(flush) for flush in book], list[Spoken]()
    for year, season in sorted(log.items()):
        apart = []
        for window in (Span.of(each) for each in season.windows):
            flush = _most_shared(window, known)
            if flush:
                flush.add(year, window)
            else:
                apart.append(window)
        for window in apart:
            flush = _nearest(window, (each for each in known if year not in each.windows))
            (flush or _stray(window, strays)).add(year, window)
    return known, strays


def _most_shared(window: Span, flushes: Sequence[Spoken]) -> Spoken | None:
    """The flush with the most days in common, if any has one."""
    best = max(flushes, key=lambda each: window.shared(each.flush), default=None)
    return best if best and window.shared(best.flush) else None


def _nearest(window: Span, flushes: Iterable[Spoken]) -> Spoken | None:
    """The flush whose middle is nearest, if it is near at all."""

    def away(each: Spoken) -> float:
        return abs(gap(each.flush.middle, window.middle))

    best = min(flushes, key=away, default=None)
    return best if best and away(best) <= NEAR_DAYS else None


def _stray(window: Span, strays: list[Spoken]) -> Spoken:
    """The stray that shares days with this window, or a new one."""
    found = _most_shared(window, strays)
    if found is None:
        found = Spoken(window)
        strays.append(found)
    return found
