"""What stands to be cut on a day: what the walk counted, less what has been cut since?

The walk of the day's week counts, or the last one before it that isn't too old; a stem that it
doesn't name was not seen, and has none standing. Without a walk nothing has been counted: a stem
in season is then taken to stand in any number, and the plan is only what would be wanted.

The cutting step is a habit, and gives way before anything is bought, swapped or missed: whole
steps where they cover what a day's own lines ask for, else small ones, else one by one, and never
more than may be cut. What a stem might stand in for isn't asked of it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
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
        """How many of a stem stand on a day, and how it is cut where its own lines ask so many."""
        stem, house = self.studio.stems[stem_id], self.studio.house
        keep = Fraction(house.cutting.keep_standing.fraction)
        stands = Standing(
            stem_id,
            self._standing(stem_id, day),
            stem.cutting_step,
            keep,
            stem.grown,
            stem.bought,
            may_break_step=stem.cutting_step <= house.cutting.precious_step,
        )
        return replace(stands, step=self._step(stem, asked, stands.may_cut))

    def may_cut(self, stem_id: str, day: date) -> bool:
        """Whether any of it may be cut, once what stays standing is left."""
        return self.standing(stem_id, day, asked=0).may_cut > 0

    def _step(self, stem: Stem, asked: int, may_cut: int) -> int:
        """The step by which so many can be cut: its own first, if half of one is asked for.

        A stem that only stands in is asked for none: it needs room for one step.
        """
        own = stem.cutting_step
        small = min(own, self.studio.house.cutting.small_step)
        steps = (own, small) if 2 * asked >= own else (small,)
        return next((step for step in steps if _in_steps(max(1, asked), step) <= may_cut), 1)

    def _standing(self, stem_id: str, day: date) -> int:
        if self.week is not None:
            return max(0, self.counts.get(stem_id, 0) - self.cut[stem_id])
        in_season = self.beds.season(stem_id).has(day_of_year(day))
        return UNCOUNTED if in_season else 0


def _in_steps(count: int, step: int) -> int:
    """So many, up to whole steps."""
    return -(-count // step) * step


def walk_on(studio: Studio, day: date) -> IsoWeek | None:
    """The week of the walk that still counts on a day; None when there is none."""
    weeks = sorted(parse_iso_week(known_as) for known_as in studio.walks)
    this = IsoWeek.of(day)
    near = [week for week in weeks if week <= this <= week.plus(TOO_OLD_WEEKS - 1)]
    return near[-1] if near else None
