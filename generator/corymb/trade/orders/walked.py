"""What stands to be cut on a day: what the walk counted, less what has been cut since?

The walk of the day's week counts, or the last one before it that isn't too old; a stem that it
doesn't name was not seen, and has none standing. Without a walk nothing has been counted: a stem
in season is then taken to stand in any number, and the plan is only what would be wanted.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from fractions import Fraction

from corymb.studio.models import Stem
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek, parse_iso_week
from corymb.studio.values.season import day_of_year
from corymb.trade.cut import Standing
from corymb.trade.season.beds import Beds

TOO_OLD_WEEKS = 2
"""A walk so many weeks old says nothing any more. House value, no source."""

UNCOUNTED = 10_000
"""More than anyone wants: what stands in any number."""


@dataclass
class Walked:
    """What stands in the beds in a walk's time; `cut` is what has been taken since."""

    studio: Studio
    beds: Beds
    week: IsoWeek | None
    """The week of the walk; None where nothing was counted."""
    cut: Counter[str] = field(default_factory=Counter)

    @property
    def counts(self) -> Mapping[str, int]:
        """What the walk counted, by stem."""
        return self.studio.walks[str(self.week)].counts if self.week else {}

    def standing(self, stem_id: str, day: date, asked: int) -> Standing:
        """How many of a stem stand on a day, and how it may be cut where so many are asked for."""
        stem, house = self.studio.stems[stem_id], self.studio.house
        keep = Fraction(house.cutting.keep_standing.fraction)
        return Standing(
            stem_id,
            self._standing(stem_id, day),
            self._step(stem, asked),
            keep,
            stem.grown,
            stem.bought,
            may_break_step=stem.cutting_step <= house.cutting.precious_step,
        )

    def may_cut(self, stem_id: str, day: date) -> bool:
        """Whether any of it may be cut, once what stays standing is left."""
        return self.standing(stem_id, day, asked=1).may_cut > 0

    def _step(self, stem: Stem, asked: int) -> int:
        """Its own step, or the small one where less than half a step is asked for."""
        small = self.studio.house.cutting.small_step
        return min(stem.cutting_step, small) if 2 * asked < stem.cutting_step else stem.cutting_step

    def _standing(self, stem_id: str, day: date) -> int:
        if self.week is not None:
            return max(0, self.counts.get(stem_id, 0) - self.cut[stem_id])
        in_season = self.beds.season(stem_id).has(day_of_year(day))
        return UNCOUNTED if in_season else 0


def walk_on(studio: Studio, day: date) -> IsoWeek | None:
    """The week of the walk that still counts on a day; None when there is none."""
    weeks = sorted(parse_iso_week(known_as) for known_as in studio.walks)
    this = IsoWeek.of(day)
    near = [week for week in weeks if week <= this <= week.plus(TOO_OLD_WEEKS - 1)]
    return near[-1] if near else None
