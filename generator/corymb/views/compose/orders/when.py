"""How are days, hours and lengths of time said on the order pages?"""

from __future__ import annotations

from datetime import date, datetime, timedelta

from corymb.studio.saying import counted
from corymb.studio.values.time import ClockSpan, Duration
from corymb.studio.words import MONTHS, WEEKDAYS


def day_in_full(day: date) -> str:
    """`Saturday 19 September 2026`."""
    return f"{weekday_and_day(day)} {day.year}"


def weekday_and_day(day: date) -> str:
    """`Saturday 19 September`."""
    return f"{WEEKDAYS[day.weekday()]} {day.day} {MONTHS[day.month - 1]}"


def short_day(day: date) -> str:
    """`Sat 19`."""
    return f"{WEEKDAYS[day.weekday()][:3]} {day.day}"


def clock_span(start: datetime, end: datetime) -> str:
    """`06:30 to 08:22`; the day of an end that is on another one is named."""
    if start.date() == end.date():
        return f"{start:%H:%M} to {end:%H:%M}"
    return f"{start:%H:%M} to {WEEKDAYS[end.weekday()]} {end:%H:%M}"


def five_before(at: datetime) -> datetime:
    """A moment's five minutes: nobody begins to the minute."""
    return at - timedelta(minutes=at.minute % 5)


def five_after(at: datetime) -> datetime:
    """The next five minutes: nobody is done to the minute."""
    return at + timedelta(minutes=-at.minute % 5)


def work_span(start: datetime, end: datetime) -> str:
    """The hours of work, to five minutes: `06:30 to 08:25`."""
    return clock_span(five_before(start), five_after(end))


def hours_words(hours: ClockSpan) -> str:
    """`17:30 to 23:00`."""
    return f"{hours.start:%H:%M} to {hours.end:%H:%M}"


def long_time(minutes: int) -> str:
    """`4 h 12 min`."""
    return str(Duration(minutes))


def days_away(day: date, today: date) -> str:
    """`today`, `tomorrow`, `in 3 days`, `8 weeks ago`: days up to three weeks, then weeks."""
    days = (day - today) // timedelta(days=1)
    near = {0: "today", 1: "tomorrow", -1: "yesterday"}
    if days in near:
        return near[days]
    apart = abs(days)
    words = counted(apart // 7, "week", "weeks") if apart > 21 else counted(apart, "day", "days")
    return f"in {words}" if days > 0 else f"{words} ago"


def day_span(first: date, last: date | None) -> str:
    """`from 6 January to 29 December 2026`; `from 6 January 2026 on` where nothing ends it."""
    start = f"{first.day} {MONTHS[first.month - 1]}"
    if last is None:
        return f"from {start} {first.year} on"
    year = "" if first.year == last.year else f" {first.year}"
    return f"from {start}{year} to {last.day} {MONTHS[last.month - 1]} {last.year}"
