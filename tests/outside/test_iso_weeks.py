"""Weeks agree with ISO 8601 and with calendars that no one here wrote."""

import subprocess
from datetime import date, timedelta
from shutil import which

import pytest

from corymb.studio.values.dates import IsoWeek, parse_iso_week, weeks_in

# ISO 8601-1:2019, week calendar. The list of dates is the one that encyclopaedias give (from
# memory); GNU date prints the same.
WEEK_DATES = [
    ("2005-01-01", "2004-W53-6"),
    ("2005-01-02", "2004-W53-7"),
    ("2005-12-31", "2005-W52-6"),
    ("2006-01-01", "2005-W52-7"),
    ("2006-01-02", "2006-W01-1"),
    ("2006-12-31", "2006-W52-7"),
    ("2007-01-01", "2007-W01-1"),
    ("2007-12-31", "2008-W01-1"),
    ("2008-01-01", "2008-W01-2"),
    ("2008-12-28", "2008-W52-7"),
]


@pytest.mark.parametrize(("day", "week_date"), WEEK_DATES, ids=[day for day, _ in WEEK_DATES])
def test_a_day_lies_in_the_week_that_iso_8601_gives_it(day: str, week_date: str) -> None:
    week = IsoWeek.of(date.fromisoformat(day))
    weekday = (date.fromisoformat(day) - week.monday()).days + 1
    assert f"{week}-{weekday}" == week_date


# ISO 8601 rule: the week of 28 December is a year's last.
LONG_YEARS = {2004, 2009, 2015, 2020, 2026, 2032, 2037}


@pytest.mark.parametrize("year", range(2000, 2041))
def test_only_the_long_years_have_a_week_53(year: int) -> None:
    assert weeks_in(year) == (53 if year in LONG_YEARS else 52)


# Computed with Python's calendar and with the package isoweek 1.3.3, which agree.
@pytest.mark.parametrize(
    ("week", "monday", "sunday"),
    [
        ("2025-W01", "2024-12-30", "2025-01-05"),
        ("2025-W18", "2025-04-28", "2025-05-04"),
        ("2026-W53", "2026-12-28", "2027-01-03"),
    ],
)
def test_a_week_runs_from_its_monday_to_its_sunday(week: str, monday: str, sunday: str) -> None:
    read = parse_iso_week(week)
    assert (read.monday(), read.sunday()) == (
        date.fromisoformat(monday),
        date.fromisoformat(sunday),
    )


def test_a_week_53_in_a_short_year_is_refused_with_the_years_that_have_one() -> None:
    with pytest.raises(ValueError) as wrong:
        parse_iso_week("2025-W53")
    assert str(wrong.value) == (
        "2025 has 52 weeks; a 53rd comes only in some years, the nearest being 2020 or 2026."
    )


# By hand: weeks 48 to 52 and 1 to 6 are 5 + 6; with a week 53 between them, one more.
@pytest.mark.parametrize(
    ("first", "last", "count"), [("2025-W48", "2026-W06", 11), ("2026-W48", "2027-W06", 12)]
)
def test_weeks_over_new_year_are_counted_as_they_come(first: str, last: str, count: int) -> None:
    assert len(list(parse_iso_week(first).until(parse_iso_week(last)))) == count


@pytest.mark.skipif(which("date") is None, reason="there is no date command here")
def test_gnu_date_gives_every_new_years_week_the_same_name() -> None:
    days = [date(year, 12, 26) + timedelta(days=n) for year in range(2000, 2041) for n in range(12)]
    told = subprocess.run(
        ["date", "-u", "-f", "-", "+%G-W%V"],
        input="\n".join(day.isoformat() for day in days),
        capture_output=True,
        text=True,
        check=False,
    )
    if told.returncode != 0:
        pytest.skip("this date command is not GNU's")
    assert told.stdout.split() == [str(IsoWeek.of(day)) for day in days]
