"""What stands in the studio's beds, and when?

How one stem's answers come about is told in `stem_season`.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from corymb.studio.models import CutLog, Stem
from corymb.studio.studio import Studio
from corymb.studio.values.season import Season
from corymb.trade.season.flush import Flush
from corymb.trade.season.hopkins import Shift, shift_between
from corymb.trade.season.stem_season import StemSeason
from corymb.trade.season.sureness import sureness
from corymb.trade.season.weeks import thursday, weeks_of

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
        self._found: dict[str, StemSeason] = {}

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
        return self._of(stem_id).chance(day)

    def sure(self, stem_id: str, week: int) -> str:
        """How sure it is that it stands in a week (1 to 52), in a word."""
        chance = self.chance(stem_id, thursday(week))
        return sureness(chance, held=week in self.weeks(stem_id))

    def weeks(self, stem_id: str) -> frozenset[int]:
        """The weeks (1 to 52) in which it can be cut."""
        return weeks_of(self.season(stem_id))

    def _of(self, stem_id: str) -> StemSeason:
        if stem_id not in self._found:
            log = {
                year: each.cuts[stem_id]
                for year, each in self._logs.items()
                if stem_id in each.cuts
            }
            self._found[stem_id] = StemSeason(self._stems[stem_id], log, self.shift)
        return self._found[stem_id]
