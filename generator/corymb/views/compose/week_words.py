"""How is a week of the calendar called?"""

from __future__ import annotations

from datetime import date

from corymb.studio.values.dates import IsoWeek
from corymb.studio.words import MONTHS
from corymb.trade.season.watch import cell_of
from corymb.views.compose.wording import third_of


def week_words(week: IsoWeek) -> str:
    """`week 40, 28 September to 4 October 2026`."""
    return f"week {week.week}, {week_span(week)}"


def week_span(week: IsoWeek) -> str:
    """Its first day and its last, months and years said once where they are the same."""
    first, last = week.monday(), week.sunday()
    if first.year != last.year:
        return f"{_day(first)} {first.year} to {_day(last)} {last.year}"
    if first.month != last.month:
        return f"{_day(first)} to {_day(last)} {last.year}"
    return f"{first.day} to {_day(last)} {last.year}"


def week_third(week: IsoWeek) -> str:
    """The part of the month its cell of the year falls in, and the year: `early July 2027`.

    So a week is called the same here as on the strips, where its Thursday is that of a plain year.
    """
    return f"{third_of(cell_of(week))} {week.year}"


def week_month(week: IsoWeek) -> str:
    """The month its Thursday lies in: `July 2027`. That day decides whose a week is (ISO 8601)."""
    thursday = date.fromisocalendar(week.year, week.week, 4)
    return f"{MONTHS[thursday.month - 1]} {thursday.year}"


def _day(day: date) -> str:
    return f"{day.day} {MONTHS[day.month - 1]}"
