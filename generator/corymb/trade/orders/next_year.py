"""What does a standing order come to in another year, visit by visit?"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from itertools import takewhile

from corymb.studio.models import StandingOrder
from corymb.studio.studio import Studio
from corymb.trade.hours.visits import visits
from corymb.trade.orders.due import Dues
from corymb.trade.orders.laid_out import LaidOut, coming_of
from corymb.trade.orders.pieces import piece_of
from corymb.trade.season.best import best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.weeks import week_on


@dataclass(frozen=True)
class NextYear:
    """A standing order in another year."""

    order: StandingOrder
    laid: tuple[LaidOut, ...]
    """Every visit with its look."""
    still_comes: date | None
    """The first visit on which the old order would come round in that year as well."""


def next_year(
    studio: Studio, makeable: Makeable, old: StandingOrder, year: int, known_as: str
) -> NextYear:
    """The order of that year by its new id, and its visits laid out.

    Raises ValueError where no visit falls into the year.
    """
    first, last = days_of(old, year)
    moved = {"from_": first, "until": last, "skip": [], "moved": {}}
    order = old.model_copy(update=moved).with_id(known_as)
    both = {**studio.standing_orders, known_as: order}
    dues = Dues(replace(studio, standing_orders=both), makeable)
    laid = dues.laid_out(known_as, last) or _always_alike(studio, makeable, order, last)
    double = visits(coming_of(old), first, last)
    return NextYear(order, laid, double[0].day if double else None)


def days_of(old: StandingOrder, year: int) -> tuple[date, date]:
    """The first and the last such day of a year.

    A rule that counts (every second week) goes on counting, unless it has ended by then. Raises
    ValueError where no such day falls into the year.
    """
    first, last = date(year, 1, 1), date(year, 12, 31)
    for start in (old.from_, first):
        days = (each.date() for each in old.repeats.starting(start))
        found = [day for day in takewhile(lambda day: day <= last, days) if day >= first]
        if found:
            return found[0], found[-1]
    raise ValueError(f"{old.repeats} doesn't come round in {year}.")


def _always_alike(
    studio: Studio, makeable: Makeable, order: StandingOrder, last: date
) -> tuple[LaidOut, ...]:
    """The visits of an order without a rotation, by the first of its lines."""
    look = piece_of(order.lines[0], studio.recipes).look
    bests = best_of({"": look}, makeable)
    return tuple(
        LaidOut(visit, best, int(best.state != "none"), 1 if visit.number > 1 else None)
        for visit in visits(coming_of(order), order.from_, last)
        for best in [bests[week_on(visit.day) - 1]]
    )
