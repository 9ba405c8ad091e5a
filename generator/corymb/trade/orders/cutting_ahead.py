"""Which cutting days does a studio look at, and which orders does it take to plan them?

Every one-off order's, and those of visits from two weeks before a day to eight weeks after it:
further ahead no walk says anything, and a habit that repeats needs no list yet. A day is planned
with all orders that are cut on it, and after those that were cut before it from the same walk:
what one order took no longer stands for the next.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from datetime import date, timedelta

from corymb.studio.studio import Studio
from corymb.trade.orders.cut_days import CutDay, cutting_day, each_cut_day
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.walked import walk_on
from corymb.trade.season.makeable import Makeable

BACK = timedelta(weeks=2)
AHEAD = timedelta(weeks=8)

LONGEST = timedelta(days=45)
"""No order is cut longer before its day: cutting, conditioning and making take a fortnight each
at most (`timed`), and a day or two lie between them."""

Told = Callable[[int, int], None]


class CuttingAhead:
    """The cutting days of a studio's orders."""

    def __init__(self, dues: Dues, studio: Studio, makeable: Makeable) -> None:
        self._dues = dues
        self._studio = studio
        self._makeable = makeable
        self._days: dict[str, date] = {}

    def on(self, today: date) -> tuple[CutDay, ...]:
        """Those that are looked at on a day."""
        visits = self._dues.between(today - BACK, today + AHEAD + LONGEST)
        near = [due for due in visits if today - BACK <= self._day(due) <= today + AHEAD]
        return self.of({due.id: due for due in (*self._dues.one_off(), *near)}.values())

    def of(self, chosen: Iterable[Due], told: Told | None = None) -> tuple[CutDay, ...]:
        """Those of some orders, whatever else is cut on them included.

        `told` hears of each that is decided: how many are, and how many there will be.
        """
        days = {self._day(due) for due in chosen}
        together = {due.id: due for day in sorted(days) for due in self._cut_by(day)}
        every = len({self._day(due) for due in together.values()})
        planned = []
        for each in each_cut_day(together.values(), self._studio, self._makeable):
            planned.append(each)
            if told:
                told(len(planned), every)
        return tuple(each for each in planned if each.day in days)

    def _cut_by(self, day: date) -> Iterator[Due]:
        """All that is cut on a day, or before it from the same walk."""
        week = walk_on(self._studio, day)
        first = week.monday() if week else day
        for due in self._dues.between(first, day + LONGEST):
            cut_on = self._day(due)
            if cut_on == day or (cut_on < day and walk_on(self._studio, cut_on) == week):
                yield due

    def _day(self, due: Due) -> date:
        if due.id not in self._days:
            self._days[due.id] = cutting_day(due, self._studio, self._makeable)
        return self._days[due.id]
