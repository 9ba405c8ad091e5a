"""How are days and hours said on the order pages?"""

from __future__ import annotations

from datetime import date, datetime, timedelta

from corymb.language import gettext as _
from corymb.language import ngettext, pgettext
from corymb.language.locales import clock_words, date_words, day_and_month, weekday_name
from corymb.studio.values.time import ClockSpan


def day_in_full(day: date) -> str:
    """`Saturday 19 September 2026`."""
    return _with_weekday(day, date_words(day))


def weekday_and_day(day: date) -> str:
    """`Saturday 19 September`."""
    return _with_weekday(day, day_and_month(day))


def _with_weekday(day: date, words: str) -> str:
    # L10N: Saturday 19 September, with or without the year.
    told = _("{weekday} {day}")
    return told.format(weekday=weekday_name(day.weekday()), day=words)


def clock_span(start: datetime, end: datetime) -> str:
    """`06:30 to 08:22`; the day of an end that is on another one is named."""
    if start.date() == end.date():
        return _hours(clock_words(start), clock_words(end))
    # L10N: hours that end on another day: 22:00 to Sunday 01:30.
    told = _("{start} to {weekday} {end}")
    return told.format(
        start=clock_words(start), weekday=weekday_name(end.weekday()), end=clock_words(end)
    )


def _hours(start: str, end: str) -> str:
    return pgettext("hours", "{start} to {end}").format(start=start, end=end)


def five_before(at: datetime) -> datetime:
    """A moment's five minutes: nobody begins to the minute."""
    return at - timedelta(minutes=at.minute % 5)


def five_after(at: datetime) -> datetime:
    """The next five minutes: nobody is done to the minute."""
    return at + timedelta(minutes=-at.minute % 5)


def work_span(start: datetime, end: datetime) -> str:
    """The hours of work, to five minutes: `06:30 to 08:25`."""
    return clock_span(five_before(start), five_after(end))


def day_and_hours(day: date, hours: str) -> str:
    """`Saturday 19 September, 06:30 to 08:25`, or one hour alone."""
    return _("{day}, {hours}").format(day=weekday_and_day(day), hours=hours)


def hours_words(hours: ClockSpan) -> str:
    """`17:30 to 23:00`."""
    return _hours(clock_words(hours.start), clock_words(hours.end))


def days_away(day: date, today: date) -> str:
    """`today`, `tomorrow`, `in 3 days`, `8 weeks ago`: days up to three weeks, then weeks."""
    days = (day - today) // timedelta(days=1)
    near = {0: _("today"), 1: _("tomorrow"), -1: _("yesterday")}
    if days in near:
        return near[days]
    apart = abs(days)
    weeks = apart // 7
    if apart > 21 and days > 0:
        return ngettext("in {number} week", "in {number} weeks", weeks).format(number=weeks)
    if apart > 21:
        return ngettext("{number} week ago", "{number} weeks ago", weeks).format(number=weeks)
    if days > 0:
        return ngettext("in {number} day", "in {number} days", apart).format(number=apart)
    return ngettext("{number} day ago", "{number} days ago", apart).format(number=apart)


def day_span(first: date, last: date | None) -> str:
    """`from 6 January to 29 December 2026`; `from 6 January 2026 on` where nothing ends it."""
    if last is None:
        return _("from {day} on").format(day=date_words(first))
    start = day_and_month(first) if first.year == last.year else date_words(first)
    told = pgettext("days", "from {first} to {last}")
    return told.format(first=start, last=date_words(last))
