"""How does the year look in one line of characters? A cell a week, under the months' letters."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.words import MONTHS
from corymb.trade.season.weeks import WEEKS, month_of

PICTURED, VARIANT, NOTHING = "█", "▒", "·"


def season_strip(pictured: frozenset[int], variant: frozenset[int]) -> Iterator[str]:
    """Two lines: the months' letters at their first weeks, and a sign for each week."""
    yield "".join(_heading()).rstrip()
    yield "".join(
        PICTURED if week in pictured else VARIANT if week in variant else NOTHING for week in WEEKS
    )


def _heading() -> Iterator[str]:
    before = 0
    for week in WEEKS:
        month = month_of(week)
        yield MONTHS[month - 1][0] if month != before else " "
        before = month
