"""How does the year look in one line of characters? A cell a week, under the months' letters."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType

from corymb.language.locales import month_letters
from corymb.trade.season.best import BestState
from corymb.trade.season.weeks import WEEKS, month_of
from corymb.views.compose.states import STATE_WORDS, words_of_states

SIGNS: Mapping[BestState, str] = MappingProxyType(
    {"pictured": "█", "variant": "▒", "swaps": "▂", "none": "·"}
)


def season_strip(states: Mapping[int, BestState]) -> Iterator[str]:
    """The months' letters at their first weeks, a sign for the state of each week, and the key.

    A week that isn't among `states` has nothing. The key is of what occurs, if that differs.
    """
    cells = [states.get(week, "none") for week in WEEKS]
    yield "".join(_heading()).rstrip()
    yield "".join(SIGNS[cell] for cell in cells)
    found = [state for state in STATE_WORDS if state in cells]
    if len(found) > 1:
        words = words_of_states()
        yield "   ".join(f"{SIGNS[state]} {words[state]}" for state in found)


def _heading() -> Iterator[str]:
    before, letters = 0, month_letters()
    for week in WEEKS:
        month = month_of(week)
        yield letters[month - 1] if month != before else " "
        before = month
