"""The year is a circle: December lies beside January, in long years as in short ones."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from corymb.studio.values.season import DAYS_IN_YEAR, day_of_year
from corymb.studio.values.season_text import parse_season
from corymb.trade.season.beds import Beds
from corymb.trade.season.circle import Span, gap
from corymb.trade.season.flush import Flush
from corymb.trade.season.hopkins import Shift, moved_season
from corymb.trade.season.logged import blended
from corymb.trade.season.weeks import week_on, weeks_of
from tests.trade.making import stem


def test_days_of_the_year_are_counted_from_one() -> None:
    # The record of a first flower that a zero-based count puts on day 86.
    assert day_of_year(date(1965, 3, 28)) == 87


def spans(text: str) -> list[Span]:
    return [Span.of(window) for window in parse_season(text).windows]


def flush(book: str, *years: str) -> Flush:
    log = {str(2001 + n): parse_season(year) for n, year in enumerate(years)}
    return blended(spans(book), log)[0]


# By hand: n years weigh n / (n + 2), and days are counted on over New Year. Plain means of the
# day numbers would land in July: (305 + 10) / 2 = 157, for one.
WINTER_FLOWERS = {
    "first cuts either side of New Year": (
        ("10 January - 20 March", "1 November - 20 March", "10 January - 20 March"),
        # Days from 10 January: -70 and 0, their mean -35, weighing a half: -17.5.
        (357.5, 79.0),
    ),
    "last cuts either side of New Year": (
        ("1 November - 30 December", "1 November - 4 January", "1 November - 8 January"),
        # Days from 30 December: +5 and +9, mean 7, weighing a half: 3.5 days on is 2.5 January.
        (305.0, 2.5),
    ),
    "a book that stops where the log goes on": (
        ("20 November - 31 December", "5 December - 15 January"),
        # One year weighs a third: 15 / 3 days later at both ends.
        (329.0, 5.0),
    ),
}


@pytest.mark.parametrize("name", WINTER_FLOWERS)
def test_winter_flowers_are_never_averaged_to_midsummer(name: str) -> None:
    (book, *years), (first, last) = WINTER_FLOWERS[name]
    found = flush(book, *years)
    assert (found.first, found.last) == pytest.approx((first, last))


def test_a_flush_over_new_year_is_as_likely_on_either_side_of_it() -> None:
    over = flush("21 December - 11 January")
    # Its middle is noon of New Year's Eve, so 31 December and 1 January lie alike.
    assert over.chance(365) == pytest.approx(over.chance(1))
    assert over.chance(365) > 0.8
    assert over.chance(182) < 1e-9


@pytest.mark.parametrize(
    "written",
    [
        "October - December, January - March",
        "January - March, October - December",
        "January - February, October - November, March, December",
    ],
)
def test_a_season_cut_at_new_year_is_as_sure_there_as_one_that_isnt(written: str) -> None:
    parts, whole = (Beds({"rose": stem(in_season=text)}) for text in (written, "October - March"))
    days = range(1, DAYS_IN_YEAR + 1)
    likely = [whole.chance("rose", day) for day in days]
    assert [parts.chance("rose", day) for day in days] == pytest.approx(likely)
    assert parts.chance("rose", 365) == parts.chance("rose", 1) == pytest.approx(1)


@pytest.mark.parametrize("shift", [Shift(20), Shift(-20)], ids=["north", "south"])
def test_a_season_over_new_year_stays_in_winter_when_it_moves(shift: Shift) -> None:
    [window] = moved_season(parse_season("mid November - late January"), shift).windows
    assert window.over_new_year
    assert abs(gap(window.first.day_of_year, 315)) <= 20
    assert abs(gap(window.last.day_of_year, 31)) <= 20


def test_weeks_48_to_6_are_eleven_cells_of_the_year() -> None:
    assert weeks_of(parse_season("W48 - W06")) == {*range(48, 53), *range(1, 7)}


# The long years of ISO 8601 between 2000 and 2040.
@pytest.mark.parametrize("year", [2004, 2009, 2015, 2020, 2026, 2032, 2037])
def test_every_day_of_a_long_year_falls_into_one_of_52_cells(year: int) -> None:
    monday = date.fromisocalendar(year, 53, 1)
    days = [monday + timedelta(days=n) for n in range(-7, 14)]
    assert [week_on(day) for day in days] == [52] * 14 + [1] * 7


@pytest.mark.parametrize("year", [2024, 2025, 2026])
def test_every_date_is_one_of_the_365_days_of_a_plain_year(year: int) -> None:
    days = [date(year, 1, 1) + timedelta(days=n) for n in range(366)]
    numbers = {day_of_year(day) for day in days if day.year == year}
    assert numbers == set(range(1, DAYS_IN_YEAR + 1))
