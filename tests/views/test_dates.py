"""Staff are told where a stem's dates here come from: the book, the way here, the log."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.studio.models import CutLog, StudioFile
from corymb.studio.studio import Studio
from corymb.studio.values.season_text import parse_season
from corymb.trade.season.hopkins import shift_between
from corymb.views.compose.dates import dates_words
from corymb.views.compose.moved import moved_words
from tests.trade.making import stem
from tests.trade.season.studio import small_studio
from tests.views.making import catalogue_of, demo


def house_at(latitude: float, height: float = 80, longitude: float = -7.1) -> StudioFile:
    """The demo's studio somewhere else; its book is of 51.2 north, 80 m up."""
    house = demo().house
    metres = house.reference_place.height.metres
    height_there = type(house.place.height)(height)
    assert metres == 80
    moved = {"latitude": latitude, "longitude": longitude, "height": height_there}
    return house.model_copy(update={"place": house.place.model_copy(update=moved)})


@pytest.mark.parametrize(
    ("latitude", "height", "words"),
    [
        (51.2, 80, ""),
        (
            53.2,
            80,
            "moved by up to 8 days for Dunmallow, 2 degrees further north: "
            "later in spring, earlier in autumn",
        ),
        (
            50.2,
            19,
            "moved by up to 6 days for Dunmallow, 1 degree further south and 61 m lower: "
            "earlier in spring, later in autumn",
        ),
        (-51.2, 80, "moved by half a year, to the other half of the world for Dunmallow"),
        (
            -41.2,
            80,
            "moved by half a year, to the other half of the world and up to 40 days for "
            "Dunmallow, 10 degrees nearer the equator: earlier in spring, later in autumn",
        ),
    ],
    ids=["here", "north", "south-and-low", "other-half", "other-half-and-nearer"],
)
def test_the_way_here_is_told_with_its_reasons(latitude: float, height: float, words: str) -> None:
    house = house_at(latitude, height)
    assert moved_words(house, shift_between(house.reference_place, house.place)) == words


def with_years(count: int) -> Studio:
    """The demo with so many years of log of one stem."""
    studio = demo()
    season = parse_season("10 July - 20 October")
    log = next(iter(studio.logs.values()))
    logs: dict[str, CutLog] = {
        str(2025 - n): log.model_copy(update={"cuts": {"dahlia-shell": season}})
        for n in range(count)
    }
    return replace(studio, logs=logs)


@pytest.mark.parametrize(
    ("years", "words"),
    [
        (0, "Your log doesn't speak of it yet."),
        (1, "One year of your log counts for a third."),
        (2, "Two years of your log count for half."),
        (3, "Three years of your log count for 60 %."),
        (4, "Four years of your log count for two thirds."),
    ],
)
def test_the_log_counts_for_more_with_every_year(years: int, words: str) -> None:
    staff = catalogue_of(with_years(years), "staff")
    told = dates_words(staff, staff.stem("dahlia-shell"))
    assert told.startswith("The book says early July – mid October. ")
    assert f" {words} So here it is " in told
    assert told.endswith("In week 38: sure (100 %).")


def test_what_stands_all_year_is_not_moved() -> None:
    staff = catalogue_of(demo(), "staff")
    told = dates_words(staff, staff.stem("dried-statice-violet"))
    assert told == "The book says all year. In week 38: sure (100 %)."


def test_of_two_flushes_the_log_counts_only_where_it_speaks_of_one() -> None:
    rose = stem("rose", in_season="May, September")
    studio = small_studio(rose)
    log = CutLog.model_validate({"cuts": {"rose": "2 May - 30 May"}})
    staff = catalogue_of(replace(studio, logs={"2025": log}), "staff")
    told = dates_words(staff, rose)
    assert "One year of your log counts for a third in the flush that it knows best." in told


def test_where_the_law_is_out_of_its_depth_the_page_says_so_and_nothing_is_sure() -> None:
    house = house_at(42.9)
    staff = catalogue_of(replace(demo(), house=house, logs={}), "staff")
    told = dates_words(staff, staff.stem("dahlia-shell"))
    assert "The law is out of its depth here: it isn't meant for the tropics" in told
    assert told.endswith("In week 38: likely (80 %).")
