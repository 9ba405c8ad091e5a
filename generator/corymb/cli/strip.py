"""How does the year look in one line of characters? A cell a week, under the months' letters."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from corymb.studio.words import MONTHS
from corymb.trade.season.weeks import WEEKS, month_of

SIGNS = {"pictured": "█", "variant": "▒", "swaps": "▂", "none": "·"}


def season_strip(states: Mapping[int, str]) -> Iterator[str]:
    """Two lines: the months' letters at their first weeks, and a sign for the state of each week.

    A week that isn't among `states` has nothing.
    """
    yield "".join(_heading()).rstrip()
    yield "".join(SIGNS[states.get(week, "none")] for week in WEEKS)


def _heading() -> Iterator[str]:
    before = 0
    for week in WEEKS:
        month = month_of(week)
        yield MONTHS[month - 1][0] if month != before else " "
        before = month
