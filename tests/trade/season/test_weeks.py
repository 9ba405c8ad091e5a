"""The weeks of the year in which a stem stands, and a look can be made."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.trade.looks import looks_of
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import (
    WEEKS,
    common_weeks,
    month_of,
    thursday,
    week_on,
    weeks_of,
    weeks_of_look,
)
from tests.trade.making import recipe, stem

SEASONS = {
    # A week counts by its Thursday, day 7 x (week - 1) + 4 of the year, worked out by hand:
    # 1 June is day 152, so week 22 (day 151) is out and week 23 (day 158) is in;
    # 30 September is day 273, week 39 (day 270) is in and week 40 (day 277) out.
    "June - September": set(range(23, 40)),
    # 21 December is day 355 (week 52, day 361), 10 January is day 10 (week 1, day 4).
    "late December - early January": {52, 1},
    "all year": set(range(1, 53)),
    "W22 - W30": set(range(22, 31)),
    "early June, early October": {23, 40},
}


@pytest.mark.parametrize("written", SEASONS)
def test_a_stem_stands_in_the_weeks_whose_thursday_lies_in_its_season(written: str) -> None:
    assert weeks_of(stem(in_season=written).in_season) == SEASONS[written]


def test_a_look_can_be_made_when_all_its_stems_stand() -> None:
    stems = {
        "rose": stem(in_season="June - September"),
        "mint": stem(in_season="May - July"),
        "poppy": stem(in_season="W26 - W40"),
    }
    look = looks_of(recipe(), {})[""]
    assert weeks_of_look(look, Beds(stems)) == set(range(26, 31))


def test_nothing_to_ask_for_can_be_had_all_year() -> None:
    assert common_weeks([]) == set(WEEKS)


def test_a_weeks_thursday_is_the_calendars_in_a_year_that_begins_on_a_monday() -> None:
    for week in WEEKS:
        day = date.fromisocalendar(2018, week, 4)  # 1 January 2018 was a Monday
        assert thursday(week) == day.timetuple().tm_yday
        assert month_of(week) == day.month


@pytest.mark.parametrize(
    ("day", "week"),
    [(date(2026, 1, 1), 1), (date(2026, 9, 16), 38), (date(2026, 12, 31), 52)],
    ids=["new year", "autumn", "the fifty-third week is shown as the last"],
)
def test_a_date_falls_into_the_cell_of_its_week(day: date, week: int) -> None:
    assert week_on(day) == week
