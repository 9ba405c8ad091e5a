"""A length of time is said on a page as it would be written in a file."""

from __future__ import annotations

import pytest

from corymb.studio.values.time import DayRange, Duration
from corymb.views.compose.durations import days_words, time_words


@pytest.mark.parametrize(
    ("minutes", "words"),
    [(0, "0 min"), (45, "45 min"), (60, "1 h"), (90, "1 h 30 min"), (480, "8 h")],
)
def test_hours_and_minutes_are_said_as_files_have_them(minutes: int, words: str) -> None:
    assert time_words(minutes) == str(Duration(minutes)) == words


@pytest.mark.parametrize(
    ("days", "words"),
    [(DayRange(1, 1), "1 day"), (DayRange(5, 5), "5 days"), (DayRange(5, 7), "5-7 days")],
    ids=str,
)
def test_days_are_said_as_files_have_them(days: DayRange, words: str) -> None:
    assert days_words(days) == str(days) == words
