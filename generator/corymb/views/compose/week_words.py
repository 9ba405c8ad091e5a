"""How is a week of the calendar called?"""

from __future__ import annotations

from datetime import date

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.language.locales import date_words, ends_of_span, month_of_year
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose.wording import third_of_day


def week_words(week: IsoWeek) -> str:
    """`week 40, 28 September to 4 October 2026`."""
    return _("week {week}, {days}").format(week=week.week, days=week_span(week))


def weeks_span(first: IsoWeek, last: IsoWeek) -> str:
    """`weeks 27 to 41, 29 June to 11 October 2026`; one week as it is called."""
    if first == last:
        return week_words(first)
    days = days_span(first.monday(), last.sunday())
    told = _("weeks {first} to {last}, {days}")
    return told.format(first=first.week, last=last.week, days=days)


def week_span(week: IsoWeek) -> str:
    """Its first day and its last: `14 to 20 September 2026`."""
    return days_span(week.monday(), week.sunday())


def days_span(first: date, last: date) -> str:
    """From one day to another, months and years said once where they are the same."""
    start, end = ends_of_span(first, last)
    return pgettext("days", "{first} to {last}").format(first=start, last=end)


def third_in(week: IsoWeek) -> str:
    """The part of the month its Thursday lies in: `early July`."""
    return third_of_day(thursday_of(week))


def week_third(week: IsoWeek) -> str:
    """The same with the year: `early July 2027`."""
    # L10N: a part of a month and its year: early July 2027.
    told = _("{part} {year}")
    return told.format(part=third_in(week), year=thursday_of(week).year)


def week_month(week: IsoWeek) -> str:
    """The month its Thursday lies in: `July 2027`. That day decides whose a week is (ISO 8601)."""
    return month_of_year(thursday_of(week))


def day_words(day: date) -> str:
    """`16 September 2026`."""
    return date_words(day)


def thursday_of(week: IsoWeek) -> date:
    """The day that decides whose a week is."""
    return date.fromisocalendar(week.year, week.week, 4)
