"""Which real weeks lie ahead, and which of the year's 52 cells answers for each?

A real week is judged as its cell is: by the Thursday of a plain year (`weeks`). So every page
gives a week the same answer, whatever the year. A 53rd week is answered as the 52nd.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.values.dates import IsoWeek, weeks_in
from corymb.trade.season.weeks import week_on


def cell_of(week: IsoWeek) -> int:
    """The cell, 1 to 52, that answers for a week of the calendar."""
    return week_on(week.monday())


def year_from(week: IsoWeek) -> tuple[IsoWeek, ...]:
    """This week and those after it, until it comes round again: 52, or 53 in a long year."""
    return tuple(weeks_after(week, weeks_in(week.year)))


def weeks_after(week: IsoWeek, count: int) -> Iterator[IsoWeek]:
    """So many weeks, this one the first."""
    yield from week.until(week.plus(count - 1))
