"""When does one stem stand here, and how sure is it?

The book's dates are brought to the studio's place (`hopkins`) and the studio's log is blended in
(`logged`). Where neither changes a window, it stays as it is written. Each answer is worked out
when it is first asked for.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from math import prod

from corymb.studio.models import Stem
from corymb.studio.values.season import Season, Window
from corymb.trade.season.circle import Span, ahead, on_circle
from corymb.trade.season.flush import Flush
from corymb.trade.season.hopkins import Shift, is_all_year, moved_season, moved_span
from corymb.trade.season.logged import blended, weight
from corymb.trade.season.unbroken import unbroken

AT_MOST = 0.8
"""As likely as a date can be that the law had to be stretched for; house value, below `sure`."""


@dataclass(frozen=True)
class StemSeason:
    """One stem: the book's season, what the log says of it, and where the studio lies."""

    stem: Stem
    log: Mapping[str, Season]
    shift: Shift

    @cached_property
    def book(self) -> tuple[Span, ...]:
        """The book's windows at the studio's place, to the fraction of a day."""
        windows = self.stem.in_season.windows
        return tuple(moved_span(Span.of(window), self.shift) for window in windows)

    @cached_property
    def flushes(self) -> tuple[Flush, ...]:
        return () if is_all_year(self.stem.in_season) else blended(self.book, self.log)

    @cached_property
    def season(self) -> Season:
        if not self.flushes:
            return self.stem.in_season
        return Season(tuple(self._windows()))

    def _windows(self) -> Iterator[Window]:
        written = self.stem.in_season.windows
        for place, flush in enumerate(self.flushes):
            kept = place < len(written) and self._is_as_written(flush)
            yield written[place] if kept else flush.span.window()

    def _is_as_written(self, flush: Flush) -> bool:
        return self.shift.nothing and not flush.years

    @cached_property
    def at_best(self) -> Season | None:
        best = self.stem.at_best
        if best is None or not self.flushes:
            return best and moved_season(best, self.shift)
        return Season(tuple(self._best_window(window) for window in best.windows))

    def _best_window(self, window: Window) -> Window:
        """Carried along with the flush it belongs to, and kept within it."""
        span = moved_span(Span.of(window), self.shift)
        place = max(range(len(self.book)), key=lambda n: span.shared(self.book[n]))
        flush = self.flushes[place]
        if self._is_as_written(flush):
            return window
        if not span.shared(self.book[place]):
            return span.window()
        return _carried_along(span, self.book[place], flush.span).window()

    def chance(self, day: int) -> float:
        """That it stands on a day of a plain year, 0 to 1."""
        if day not in self._chances:
            misses = prod(1 - flush.chance(day) for flush in self._runs)
            self._chances[day] = min(1 - misses if self.flushes else 1.0, self._most)
        return self._chances[day]

    @cached_property
    def _chances(self) -> dict[int, float]:
        return {}

    @property
    def _most(self) -> float:
        """Where the law is out of its depth nothing is sure, until the log outweighs it."""
        return AT_MOST if self.shift.stretched and weight(len(self.log)) < 0.5 else 1.0

    @cached_property
    def _runs(self) -> tuple[Flush, ...]:
        return unbroken(self.flushes)


def _carried_along(best: Span, before: Span, after: Span) -> Span:
    """The best part of a flush whose edges have moved: as far between them as it was."""
    early = max(0.0, before.length - ahead(best.first, before.last))
    late = max(0.0, before.length - ahead(before.first, best.last))
    stretch = after.length / before.length if before.length else 0.0
    length = max(0.0, before.length - early - late) * stretch
    return Span(on_circle(after.first + early * stretch), length)
