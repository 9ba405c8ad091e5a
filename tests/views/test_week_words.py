"""How a week of the calendar is called."""

from __future__ import annotations

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.views.compose.week_words import week_month, week_third, week_words

# The dates are those of the calendar (ISO 8601): Monday to Sunday.
WORDS = {
    (2026, 38): "week 38, 14 to 20 September 2026",
    (2026, 40): "week 40, 28 September to 4 October 2026",
    (2026, 53): "week 53, 28 December 2026 to 3 January 2027",
    (2026, 1): "week 1, 29 December 2025 to 4 January 2026",
}


@pytest.mark.parametrize("week", WORDS, ids=str)
def test_a_week_is_told_by_its_days_months_and_years_once(week: tuple[int, int]) -> None:
    assert week_words(IsoWeek(*week)) == WORDS[week]


MONTHS = {
    (2026, 40): "October 2026",  # its Thursday is 1 October
    (2026, 53): "December 2026",  # 31 December
    (2026, 1): "January 2026",  # 1 January
}


@pytest.mark.parametrize("week", MONTHS, ids=str)
def test_a_week_is_counted_to_the_month_of_its_thursday(week: tuple[int, int]) -> None:
    assert week_month(IsoWeek(*week)) == MONTHS[week]


@pytest.mark.parametrize(
    ("week", "words"),
    [
        ((2027, 26), "early July 2027"),  # its Thursday is 1 July
        ((2026, 41), "early October 2026"),  # 8 October
        ((2026, 53), "late December 2026"),
        ((2027, 1), "early January 2027"),
    ],
    ids=str,
)
def test_a_part_of_a_month_is_that_of_its_thursday(week: tuple[int, int], words: str) -> None:
    assert week_third(IsoWeek(*week)) == words
