"""How does the language that is spoken write dates, numbers and lists? As Unicode's CLDR has it.

Where no messages are there for a language, its sentences are English, and so are the dates in
them. English is that of Britain and Ireland unless a country says otherwise, as in `en-US`.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date, datetime, time
from decimal import Decimal
from functools import cache

from babel import Locale
from babel.dates import format_date, format_skeleton, format_time
from babel.lists import format_list
from babel.numbers import format_decimal

from corymb.language.messages import AS_WRITTEN, messages_of
from corymb.language.speaking import ENGLISH, spoken

AS_THE_CODE = "en-GB"
DASHES = " \u00a0\u2009\u202f-\u2010\u2011\u2012\u2013\u2014~\u301c\uff5e"
"""What stands between the two days of a span in CLDR, where we say it in a word."""


def locale_spoken() -> Locale:
    """The language that is spoken, with its country, as Babel knows it."""
    return _locale_of(spoken())


@cache
def _locale_of(tag: str) -> Locale:
    locale = Locale.parse(tag, sep="-")
    if tag == ENGLISH or (locale.language != ENGLISH and messages_of(tag) is AS_WRITTEN):
        return Locale.parse(AS_THE_CODE, sep="-")
    return locale


def and_list(words: Iterable[str]) -> str:
    """`a`, `a and b`, `a, b and c`; empty for none."""
    return format_list([*words], "standard", locale_spoken())


def or_list(words: Iterable[str]) -> str:
    """`a`, `a or b`, `a, b or c`; empty for none."""
    return format_list([*words], "or", locale_spoken())


def figures(number: float | Decimal) -> str:
    """A number as the language writes it, without thousands: `9.5`, `9,5`."""
    return format_decimal(number, "0.####", locale=locale_spoken())


def rounded(number: float, places: int) -> str:
    """A number with so many decimals, whatever they are: `9.0`, `9,0`."""
    written = Decimal(f"{number:.{places}f}")
    return format_decimal(written, f"0.{'0' * places}" if places else "0", locale=locale_spoken())


def month_names() -> tuple[str, ...]:
    """The twelve months by themselves, January first."""
    locale = locale_spoken()
    # Languages whose months stand otherwise by themselves use that form before a year (CLDR). The
    # others lack it, and Babel (2.18) then gives that of whichever language was asked before.
    by_itself = "LLLL" in locale.datetime_skeletons["yMMMM"].pattern
    names = locale.months["stand-alone" if by_itself else "format"]["wide"]
    return tuple(names[month] for month in range(1, 13))


def month_letters() -> tuple[str, ...]:
    """A letter for each month, January first."""
    letters = locale_spoken().months["stand-alone"]["narrow"]
    return tuple(letters[month] for month in range(1, 13))


def month_in_date(month: int) -> str:
    """A month as it is said behind a day or a part of it, 1 to 12."""
    return _months_in_dates(locale_spoken())[month - 1]


@cache
def _months_in_dates(locale: Locale) -> tuple[str, ...]:
    return tuple(str(locale.months["format"]["wide"][month]) for month in range(1, 13))


def weekday_name(weekday: int) -> str:
    """A day of the week, 0 for Monday as in Python and first in ISO 8601."""
    return str(locale_spoken().days["format"]["wide"][weekday])


def weekday_and_number(day: date) -> str:
    """A day within its month, in short: `Sat 19`."""
    return format_skeleton("Ed", day, locale=locale_spoken())


def clock_words(at: time | datetime) -> str:
    """An hour of the day, of 24: `06:30`, `6.30`."""
    locale = locale_spoken()
    hour = at.time() if isinstance(at, datetime) else at
    return format_time(hour, locale.datetime_skeletons["Hm"].pattern, locale=locale)


def date_words(day: date) -> str:
    """`16 September 2026`."""
    return format_date(day, "long", locale_spoken())


def day_and_month(day: date) -> str:
    """`16 September`."""
    return format_skeleton("MMMMd", day, locale=locale_spoken())


def day_and_short_month(day: date) -> str:
    """`24 Oct`."""
    return format_skeleton("MMMd", day, locale=locale_spoken())


def month_of_year(day: date) -> str:
    """`September 2026`."""
    locale = locale_spoken()
    return format_date(day, locale.datetime_skeletons["yMMMM"].pattern, locale)


def ends_of_span(first: date, last: date) -> tuple[str, str]:
    """The two ends of a span of days, what is alike said once: `14` and `20 September 2026`."""
    locale = locale_spoken()
    differ = "y" if first.year != last.year else "M" if first.month != last.month else "d"
    spans = locale.interval_formats
    parts = (spans.get("yMMMMd") or spans.get("yMMMd") or {}).get(differ, ())
    if len(parts) != 2:
        return date_words(first), date_words(last)
    start, end = (_with_whole_months(part) for part in parts)
    return (
        format_date(first, start, locale).strip(DASHES),
        format_date(last, end, locale).strip(DASHES),
    )


def _with_whole_months(pattern: str) -> str:
    """A pattern with its months written out; what stands in quotes is no pattern."""
    return re.sub(r"(?<!M)MMM(?!M)", "MMMM", pattern)
