"""In which weeks of the year can a stem be cut, and a look be made as it is pictured?

The year at a glance has 52 cells. A cell stands for the week around its Thursday, day
7 x (week - 1) + 4 of a common year, as ISO 8601 counts a week to the year of its Thursday;
a stem stands in a week when its window holds that day. A look's dates are those of the beds
(`beds`): the book's, brought to the studio's place, with its log blended in.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from functools import lru_cache
from typing import TYPE_CHECKING

from corymb.studio.values.season import Season
from corymb.trade.looks import Look

if TYPE_CHECKING:
    from corymb.trade.season.beds import Beds

WEEKS = tuple(range(1, 53))
COMMON_YEAR = 2025  # any year of 365 days


def thursday(week: int) -> int:
    """The day of the year (1 to 365) in the middle of a week's cell."""
    return 7 * (week - 1) + 4


def month_of(week: int) -> int:
    """The month (1 to 12) that a week's cell is counted to."""
    return (date(COMMON_YEAR, 1, 1) + timedelta(days=thursday(week) - 1)).month


def week_on(day: date) -> int:
    """The cell (1 to 52) that a date falls in; a 53rd week is shown as the 52nd."""
    return min(day.isocalendar().week, WEEKS[-1])


@lru_cache(maxsize=4096)
def weeks_of(season: Season) -> frozenset[int]:
    """The weeks in which something of this season can be cut."""
    return frozenset(week for week in WEEKS if season.has(thursday(week)))


def weeks_of_look(look: Look, beds: Beds) -> frozenset[int]:
    """The weeks in which every stem of a look stands, so that it can be made as pictured."""
    return common_weeks(beds.season(line.stem) for line in look.lines)


def common_weeks(seasons: Iterable[Season]) -> frozenset[int]:
    """The weeks that all seasons share; all weeks where there is no season to ask."""
    shared = frozenset(WEEKS)
    for season in seasons:
        shared &= weeks_of(season)
    return shared


def runs_of(weeks: Iterable[int]) -> list[tuple[int, int]]:
    """Unbroken runs of weeks, first and last; one that crosses the new year is one run."""
    runs: list[tuple[int, int]] = []
    for week in sorted(weeks):
        if runs and week == runs[-1][1] + 1:
            runs[-1] = (runs[-1][0], week)
        else:
            runs.append((week, week))
    if len(runs) > 1 and runs[0][0] == WEEKS[0] and runs[-1][1] == WEEKS[-1]:
        runs = [*runs[1:-1], (runs[-1][0], runs[0][1])]
    return runs
