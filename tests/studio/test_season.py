"""Seasons are read from thirds of months, months, days and weeks, and print as written."""

from datetime import date

import pytest

from corymb.studio.values.season import (
    MonthDay,
    Season,
    Window,
    day_of_year,
    month_day,
    week_days,
)
from corymb.studio.values.season_text import parse_season


@pytest.mark.parametrize(
    ("text", "first", "last", "printed"),
    [
        ("early July - mid October", (7, 1), (10, 20), "early July - mid October"),
        ("early july – mid oct", (7, 1), (10, 20), "early July - mid October"),
        ("Early July to Mid October", (7, 1), (10, 20), "early July - mid October"),
        ("early-July until mid-October", (7, 1), (10, 20), "early July - mid October"),
        ("early July-mid October", (7, 1), (10, 20), "early July - mid October"),
        ("beginning of July till the end of Sept.", (7, 1), (9, 30), "early July - late September"),
        ("September", (9, 1), (9, 30), "September"),
        ("June - August", (6, 1), (8, 31), "June - August"),
        ("late May", (5, 21), (5, 31), "late May"),
        ("late February", (2, 21), (2, 29), "late February"),
        ("mid to late August", (8, 11), (8, 31), "mid August - late August"),
        ("mid-late August", (8, 11), (8, 31), "mid August - late August"),
        ("4 July - 12 October", (7, 4), (10, 12), "4 July - 12 October"),
        ("4 July-12 October", (7, 4), (10, 12), "4 July - 12 October"),
        ("4th July to 12th Oct", (7, 4), (10, 12), "4 July - 12 October"),
        ("July 4 - October 12", (7, 4), (10, 12), "4 July - 12 October"),
        ("4-12 July", (7, 4), (7, 12), "4 July - 12 July"),
        ("29 February", (2, 29), (2, 29), "29 February"),
        ("November - February", (11, 1), (2, 29), "November - February"),
        ("W22 - W30", (5, 28), (7, 29), "W22 - W30"),
        ("w22-w30", (5, 28), (7, 29), "W22 - W30"),
        ("week 22 to 30", (5, 28), (7, 29), "W22 - W30"),
        ("W22", (5, 28), (6, 3), "W22"),
        ("W1", (1, 1), (1, 7), "W01"),
        ("W48 - W06", (11, 26), (2, 11), "W48 - W06"),
        ("W52", (12, 24), (12, 31), "W52"),
        ("W53", (12, 31), (12, 31), "W53"),
        ("all year", (1, 1), (12, 31), "all year"),
        ("All year round", (1, 1), (12, 31), "all year"),
        ("year-round", (1, 1), (12, 31), "all year"),
    ],
)  # fmt: skip
def test_a_window_is_read_and_printed(
    text: str, first: tuple[int, int], last: tuple[int, int], printed: str
) -> None:
    season = parse_season(text)
    assert season == Season((Window(MonthDay(*first), MonthDay(*last)),))
    assert str(season) == printed
    assert str(parse_season(printed)) == printed


@pytest.mark.parametrize(
    "text",
    ["early June - mid July, September", "early June-mid July; September",
     "early June to mid July and September", "early June - mid July & September,"],
)  # fmt: skip
def test_flushes_are_set_apart(text: str) -> None:
    assert str(parse_season(text)) == "early June - mid July, September"


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("", "There is no season here: write it like ‘early July - mid October’."),
        ("Setpember", "‘Setpember’ is not a month. Did you mean ‘September’?"),
        ("early Jully", "‘Jully’ is not a month. Did you mean ‘July’?"),
        ("summer", "‘summer’ is not a month. Write a season like ‘early July - mid October’."),
        ("Ju", "‘Ju’ is not a month. Did you mean ‘June’ or ‘July’?"),
        ("erly July", "‘erly’ is not a part of a month. Did you mean ‘early’?"),
        ("31 June", "There is no 31 June: it has 30 days."),
        ("30 February", "There is no 30 February: it has 29 days."),
        ("22", "‘22’ could be a day or a week: write ‘4 July’ or ‘W22’."),
        ("W60", "There is no week 60: the weeks run from W1 to W53."),
        ("W0 - W4", "There is no week 0: the weeks run from W1 to W53."),
        (
            "June 2025",
            "‘June 2025’ names a year: a season comes every year, so leave the year out.",
        ),
        (
            "4 July 2025 - 6 July 2025",
            "‘4 July 2025’ names a year: a season comes every year, so leave the year out.",
        ),
        ("July -", "‘July -’ should have two ends, one dash between them."),
        ("May - June - July", "‘May - June - July’ should have two ends, one dash between them."),
        (
            "late July - early July",
            "‘late July - early July’ runs backwards: it would last nearly all year. "
            "Write ‘early July - late July’, or ‘all year’.",
        ),
        (
            "very late May",
            "‘very late May’ is not a part of the year: write it like ‘early July - mid October’, "
            "‘September’, ‘4 July’ or ‘W22’.",
        ),
    ],
)
def test_a_wrong_season_is_told_with_what_would_be_right(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_season(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "count", "inside", "outside"),
    [
        ("early January", 10, (1, 10), (11, 365)),
        ("late February", 8, (52, 59), (51, 60)),
        ("29 February", 1, (59,), (58, 60)),
        ("December", 31, (335, 365), (334, 1)),
        ("late December - early January", 21, (355, 365, 1, 10), (354, 11)),
        ("June, September", 60, (152, 181, 244, 273), (151, 182, 243, 274)),
        ("June - August, July", 92, (152, 243), (151, 244)),
        ("all year", 365, (1, 60, 365), ()),
        ("W01", 7, (1, 7), (8, 365)),
        ("W52", 8, (358, 365), (357, 1)),
    ],
)
def test_a_season_has_its_days_and_no_others(
    text: str, count: int, inside: tuple[int, ...], outside: tuple[int, ...]
) -> None:
    season = parse_season(text)
    assert len(season.days()) == count
    assert all(season.has(day) and day in season.days() for day in inside)
    assert not any(season.has(day) or day in season.days() for day in outside)


def test_having_a_day_and_being_among_the_days_are_the_same() -> None:
    for text in ("early June - mid July, September", "November - 3 February", "W50 - W02", "W53"):
        season = parse_season(text)
        assert {day for day in range(1, 366) if season.has(day)} == season.days()


@pytest.mark.parametrize("week", range(1, 53))
def test_a_week_of_a_plain_year_is_near_every_real_one(week: int) -> None:
    """ISO 8601 lets week 1 start on 29 December to 4 January: so at most three days off."""
    start = date(2025, 1, 1).toordinal() + week_days(week)[0] - 1
    for year in range(2000, 2028):
        monday = date.fromisocalendar(year, week, 1)
        offset = (monday - date(year, 1, 1)).days - (start - date(2025, 1, 1).toordinal())
        assert -3 <= offset <= 3


@pytest.mark.parametrize(
    ("day", "number"),
    [
        (date(2025, 1, 1), 1),
        (date(2025, 2, 28), 59),
        (date(2025, 3, 1), 60),
        (date(2025, 12, 31), 365),
        (date(2024, 2, 28), 59),
        (date(2024, 2, 29), 59),
        (date(2024, 3, 1), 60),
        (date(2024, 12, 31), 365),
        (date(2100, 3, 1), 60),
        (date(2000, 3, 1), 60),
    ],
    ids=str,
)
def test_29_february_counts_as_the_28th(day: date, number: int) -> None:
    assert day_of_year(day) == number


def test_a_day_of_the_year_and_its_date_go_both_ways() -> None:
    assert [month_day(day).day_of_year for day in range(1, 366)] == list(range(1, 366))


@pytest.mark.parametrize("day", [0, 366, -1])
def test_a_day_outside_the_year_is_refused(day: int) -> None:
    with pytest.raises(ValueError, match=f"there is no day {day}"):
        month_day(day)


def test_a_season_made_in_python_prints_as_days() -> None:
    season = Season(
        (Window(MonthDay(7, 4), MonthDay(10, 12)), Window(MonthDay(5, 1), MonthDay(5, 1)))
    )
    assert str(season) == "4 July - 12 October, 1 May"
    assert parse_season(str(season)) == season
