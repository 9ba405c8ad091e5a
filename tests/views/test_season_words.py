"""A season is said with the ends that were written; a part of a month as one says it."""

from __future__ import annotations

import pytest

from corymb.studio.values.season import MonthDay, Season, Window
from corymb.studio.values.season_text import parse_season
from corymb.views.compose.season_words import window_words

# As the file's own canonical spelling has it, with the dash that print uses.
SAID = {
    "early July - mid October": "early July – mid October",
    "W02 - W30": "W02 – W30",
    "4 July - 12 October": "4 July – 12 October",
    "September": "September",
    "29 February": "29 February",
    "late May - mid June, September": "late May – mid June, September",
    "all year": "all year",
}


@pytest.mark.parametrize("written", SAID)
def test_a_season_is_said_with_the_ends_that_were_written(written: str) -> None:
    assert window_words(parse_season(written)) == SAID[written]


def test_a_season_that_was_moved_is_said_by_its_days() -> None:
    moved = Season((Window(MonthDay(7, 4), MonthDay(10, 12)),))
    assert window_words(moved) == "4 July – 12 October"
