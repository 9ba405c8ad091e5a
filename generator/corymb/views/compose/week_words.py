"""How is a week of the calendar called?"""

from __future__ import annotations

from datetime import date

from corymb.studio.values.dates import IsoWeek
from corymb.studio.words import MONTHS
from corymb.views.compose.wording import third_of_day


def week_words(week: IsoWeek) -> str:
    """`week 40, 28 September to 4 October 2026`."""
    return f"week {week.week}, {week_span(week)}"


def weeks_span(first: IsoWeek, last: IsoWeek) -> str:
    """`weeks 27 to 41, 29 June to 11 October 2026`; one week as it is called."""
    if first == last:
        return week_words(first)
    return f"weeks {first.week} to {last.week}, {_days(first.monday(), last.sunday())}"


def week_span(week: IsoWeek) -> str:
    """Its first day and its last: `14 to 20 September 2026`."""
    return _days(week.monday(), week.sunday())


def third_in(week: IsoWeek) -> str:
    """The part of the month its Thursday lies in: `early July`."""
    return third_of_day(_thursday(week))


def week_third(week: IsoWeek) -> str:
    """The same with the year: `early July 2027`."""
    return f"{third_in(week)} {_thursday(week).year}"


def week_month(week: IsoWeek) -> str:
    """The month its Thursday lies in: `July 2027`. That day decides whose a week is (ISO 8601)."""
    thursday = _thursday(week)
    return f"{MONTHS[thursday.month - 1]} {thursday.year}"


def day_words(day: date) -> str:
    """`16 September 2026`."""
    return f"{_day(day)} {day.year}"


def _thursday(week: IsoWeek) -> date:
    return date.fromisocalendar(week.year, week.week, 4)


def _days(first: date, last: date) -> str:
    """From one day to another, months and years said once where they are the same."""
    if first.year != last.year:
        return f"{day_words(first)} to {day_words(last)}"
    if first.month != last.month:
        return f"{_day(first)} to {day_words(last)}"
    return f"{first.day} to {day_words(last)}"


def _day(day: date) -> str:
    return f"{day.day} {MONTHS[day.month - 1]}"
