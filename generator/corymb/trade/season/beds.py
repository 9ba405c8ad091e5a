"""What stands in the studio's beds, and when?

The book's dates are brought to the studio's place (`hopkins`) and the studio's log is blended in
(`logged`). Where neither changes a window, it stays as it is written.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from math import prod
from types import MappingProxyType

from corymb.studio.models import CutLog, Stem
from corymb.studio.studio import Studio
from corymb.studio.values.season import DAYS_IN_YEAR, Season, Window
from corymb.trade.season.circle import Span, ahead, on_circle
from corymb.trade.season.flush import Flush
from corymb.trade.season.hopkins import (
    Shift,
    is_all_year,
    moved_season,
    moved_span,
    shift_between,
)
from corymb.trade.season.logged import blended
from corymb.trade.season.weeks import weeks_of

__all__ = ["Beds", "Flush"]

NO_LOGS: Mapping[str, CutLog] = MappingProxyType({})


class Beds:
    """Every stem's season here, by its id; each is worked out when it is first asked for."""

    def __init__(
        self,
        stems: Mapping[str, Stem],
        logs: Mapping[str, CutLog] = NO_LOGS,
        shift: Shift | None = None,
    ) -> None:
        self.shift = shift or Shift()
        self._stems = stems
        self._logs = logs
        self._standing: dict[str, _Standing] = {}

    @classmethod
    def of(cls, studio: Studio) -> Beds:
        """A studio's beds, by its place, its stems and its log."""
        shift = shift_between(studio.house.reference_place, studio.house.place)
        return cls(studio.stems, studio.logs, shift)

    def season(self, stem_id: str) -> Season:
        """When it can be cut here, in whole days."""
        return self._of(stem_id).season

    def at_best(self, stem_id: str) -> Season | None:
        """When it is at its best here, if the book says so: within its season here."""
        return self._of(stem_id).at_best

    def flushes(self, stem_id: str) -> tuple[Flush, ...]:
        """Its flushes with their first and last days; none for what stands all year."""
        return self._of(stem_id).flushes

    def years(self, stem_id: str) -> int:
        """How many years of the log speak of it."""
        return len(self._of(stem_id).log)

    def chance(self, stem_id: str, day: int) -> float:
        """That it stands on a day of a plain year (1 to 365), 0 to 1."""
        return self._of(stem_id).chances[day - 1]

    def weeks(self, stem_id: str) -> frozenset[int]:
        """The weeks (1 to 52) in which it can be cut."""
        return weeks_of(self.season(stem_id))

    def _of(self, stem_id: str) -> _Standing:
        if stem_id not in self._standing:
            log = {
                year: each.cuts[stem_id]
                for year, each in self._logs.items()
                if stem_id in each.cuts
            }
            self._standing[stem_id] = _Standing(self._stems[stem_id], log, self.shift)
        return self._standing[stem_id]


@dataclass(frozen=True)
class _Standing:
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

    @cached_property
    def chances(self) -> tuple[float, ...]:
        """The chance of each day of a plain year."""
        if not self.flushes:
            return (1.0,) * DAYS_IN_YEAR
        return tuple(
            1 - prod(1 - flush.chance(day) for flush in self.flushes)
            for day in range(1, DAYS_IN_YEAR + 1)
        )


def _carried_along(best: Span, before: Span, after: Span) -> Span:
    """The best part of a flush whose edges have moved: as far between them as it was."""
    early = max(0.0, before.length - ahead(best.first, before.last))
    late = max(0.0, before.length - ahead(before.first, best.last))
    stretch = after.length / before.length if before.length else 0.0
    length = max(0.0, before.length - early - late) * stretch
    return Span(on_circle(after.first + early * stretch), length)
