"""How is a day called in a terminal, whatever the machine's own language?"""

from __future__ import annotations

from datetime import date

from corymb.studio.words import MONTHS, WEEKDAYS


def long_day(day: date) -> str:
    """`Saturday 24 October 2026`."""
    return f"{WEEKDAYS[day.weekday()]} {day.day} {MONTHS[day.month - 1]} {day.year}"


def short_day(day: date) -> str:
    """`24 Oct`, of one width for all days."""
    return f"{day.day:>2} {MONTHS[day.month - 1][:3]}"
