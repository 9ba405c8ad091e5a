"""Which stems are coming on in a week, at their best, or going over?

A stem is coming on when its first cut falls in this week or the next, and going over in the last
two weeks of a flush. In a flush so short that both hold, it is going over. At its best is what the
stem's own file says, as long as it isn't going over: each stands under one heading at most of the
two. What stands all year neither comes nor goes. How many weeks it is called so is a house value:
long enough to plan for.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.beds import Beds
from corymb.trade.season.watch import cell_of
from corymb.trade.season.weeks import weeks_of


@dataclass(frozen=True)
class InTheBeds:
    """What a week brings, by the stems' ids, in the order in which they were asked for."""

    week: IsoWeek
    coming_on: tuple[str, ...]
    at_best: tuple[str, ...]
    going_over: tuple[str, ...]


def in_the_beds(beds: Beds, stems: Iterable[str], week: IsoWeek) -> InTheBeds:
    """What a week brings in the beds."""
    known = tuple(stems)
    going = tuple(s for s in known if is_going_over(beds.weeks(s), week))
    return InTheBeds(
        week=week,
        coming_on=tuple(s for s in known if is_coming_on(beds.weeks(s), week)),
        at_best=tuple(s for s in known if is_at_best(beds, s, week) and s not in going),
        going_over=going,
    )


def is_coming_on(cells: frozenset[int], week: IsoWeek) -> bool:
    """Whether what stands in these cells is first cut in this week or the next."""
    before, now, next_ = (cell_of(week.plus(n)) in cells for n in (-1, 0, 1))
    if now:
        return not before and not is_going_over(cells, week)
    return next_


def is_going_over(cells: frozenset[int], week: IsoWeek) -> bool:
    """Whether this week is the last but one of a flush, or its last."""
    now, *after = (cell_of(week.plus(n)) in cells for n in (0, 1, 2))
    return now and not all(after)


def is_at_best(beds: Beds, stem: str, week: IsoWeek) -> bool:
    """Whether a stem is at its best, as far as its file says when that is."""
    best = beds.at_best(stem)
    cell = cell_of(week)
    return best is not None and cell in weeks_of(best) and cell in beds.weeks(stem)
