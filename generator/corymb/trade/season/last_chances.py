"""Which recipes can't be made any more some weeks from now, by any look and with any swaps?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.best import Best
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.season.watch import cell_of, weeks_after, year_from

WITHIN_WEEKS = 4
"""House value: long enough to sell what still stands, short enough to be read."""

SHORT_GAP = 3
"""So many weeks without are a gap and no end: house value."""


@dataclass(frozen=True)
class LastChance:
    """A recipe, the last week it can be made in, and what comes after that."""

    recipe: str
    last: IsoWeek
    best: Best
    """How it can be made in its last week."""
    after: Answer
    """Why that look can't be made in the week after."""
    again: IsoWeek
    """The next week in which it can be made again: a year on, if it has but one."""


def last_chances(
    bests: Mapping[str, Sequence[Best]],
    makeable: Makeable,
    week: IsoWeek,
    within: int = WITHIN_WEEKS,
) -> tuple[LastChance, ...]:
    """The recipes whose last way of being made goes within so many weeks, the soonest first.

    A gap of a few weeks isn't an end. `bests` are the best looks of each recipe for the 52 cells.
    """
    found = []
    for recipe, year in bests.items():
        last = _last(year, week, within)
        if last is not None:
            found.append(_chance(recipe, year, makeable, last))
    return tuple(sorted(found, key=lambda chance: chance.last))


def _last(year: Sequence[Best], week: IsoWeek, within: int) -> IsoWeek | None:
    """The last week of those asked for with a way of making it, and none for a while after."""
    ends = [w for w in weeks_after(week, within) if _can(year, w) and _is_an_end(year, w)]
    return ends[-1] if ends else None


def _is_an_end(year: Sequence[Best], week: IsoWeek) -> bool:
    return not any(_can(year, week.plus(n)) for n in range(1, SHORT_GAP + 2))


def _chance(recipe: str, year: Sequence[Best], makeable: Makeable, last: IsoWeek) -> LastChance:
    best, next_ = _on(year, last), last.plus(1)
    after = makeable.answers(best.look)[cell_of(next_) - 1]
    again = next(week for week in year_from(next_) if _can(year, week))
    return LastChance(recipe, last, best, after, again)


def _can(year: Sequence[Best], week: IsoWeek) -> bool:
    return _on(year, week).state != "none"


def _on(year: Sequence[Best], week: IsoWeek) -> Best:
    return year[cell_of(week) - 1]
