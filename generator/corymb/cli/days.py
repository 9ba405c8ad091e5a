"""How is a day called in a terminal, and how is it read?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import suppress
from datetime import date

from corymb.cli.values import Value
from corymb.language.locales import day_and_short_month
from corymb.studio.values.dates import parse_date
from corymb.studio.words import MONTHS, WEEKDAYS


def long_day(day: date) -> str:
    """`Saturday 24 October 2026`, in what is said of an error."""
    return f"{WEEKDAYS[day.weekday()]} {day.day} {MONTHS[day.month - 1]} {day.year}"


def short_day(day: date) -> str:
    """`24 Oct`, the days below each other."""
    words = day_and_short_month(day)
    return f" {words}" if day.day < 10 and words[0].isdecimal() else words


def next_on(text: str, today: date) -> date:
    """A date as the studio's files have it; without a year, the next of that day and month."""
    try:
        return parse_date(text)
    except ValueError:
        found = [] if re.search(r"\d{4}", text) else [*_without_year(text, today)]
        if not found:
            raise
        return found[0]


def _without_year(text: str, today: date) -> Iterator[date]:
    for year in (today.year, today.year + 1):
        with suppress(ValueError):
            day = parse_date(f"{text} {year}")
            if day >= today:
                yield day


DAY = Value(lambda text: next_on(text, date.today()), "date")
"""A day on the command line."""
