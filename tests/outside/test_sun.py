"""The sun's place and day against almanacs, textbook examples and plain geometry.

Sources: `data/sun_events.csv` and `data/usno_atlanta_2007.csv` (named there); J. Meeus,
Astronomical Algorithms, 2nd edition 1998, examples 25.a and 28.a; I. Reda, A. Andreas, Solar Energy
76:577-589, 2004, table A5.1; US Naval Observatory, Earth's Seasons and Apparent Geocentric
Positions; published golden hours and twilights as quoted in astral's own tests.
"""

from __future__ import annotations

import csv
from datetime import UTC, date, datetime, timedelta, timezone
from math import acos, degrees, radians, tan
from pathlib import Path

import pytest
from astral.julian import julianday, julianday_to_juliancentury
from astral.sun import (
    eq_of_time,
    sun_apparent_long,
    sun_declination,
    sun_rad_vector,
    sun_rt_ascension,
)

from corymb.trade.light.sun import GOLDEN_FROM, GOLDEN_TO, Site, crossings, sun_at, sun_day

DATA = Path(__file__).parent / "data"


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / name).open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def century(moment: datetime) -> float:
    return julianday_to_juliancentury(julianday(moment))


def seconds(one: datetime, other: datetime) -> float:
    return abs((one - other).total_seconds())


def test_the_sun_stands_where_the_textbook_has_it() -> None:
    t = century(datetime(1992, 10, 13, tzinfo=UTC))
    assert sun_apparent_long(t) == pytest.approx(199.90894, abs=1e-4)
    assert sun_rt_ascension(t) % 360 == pytest.approx(198.38082, abs=1e-4)
    assert sun_declination(t) == pytest.approx(-7.78507, abs=1e-4)
    assert sun_rad_vector(t) == pytest.approx(0.99766, abs=1e-5)
    assert eq_of_time(t) * 60 == pytest.approx(13 * 60 + 42.6, abs=1)


def test_the_sun_stands_where_a_worked_example_has_it() -> None:
    site = Site(39.742476, -105.1786, "Etc/GMT+7")
    there = timezone(timedelta(hours=-7))
    sun = sun_at(site, datetime(2003, 10, 17, 12, 30, 30, tzinfo=there))
    assert 90 - sun.height == pytest.approx(50.11162, abs=0.02)
    assert sun.direction == pytest.approx(194.34024, abs=0.02)
    # The example counts days from midnight at Greenwich, so that its sunset is the eve's here.
    day, eve = sun_day(site, date(2003, 10, 17)), sun_day(site, date(2003, 10, 16))
    told = ((17, 6, 12, 43), (17, 11, 46, 4), (16, 17, 20, 19))
    for found, moment in zip((day.sunrise, day.noon, eve.sunset), told, strict=True):
        assert found
        assert seconds(found, datetime(2003, 10, *moment, tzinfo=there)) < 30


HEIGHTS = {
    "June at 51.5 north": (51.5, date(2025, 6, 21), 61.94),
    "equinox at 51.5 north": (51.5, date(2025, 3, 20), 38.50),
    "December at 51.5 north": (51.5, date(2025, 12, 21), 15.06),
    "June at 55.95 north": (55.95, date(2025, 6, 21), 57.49),
    "December at 55.95 north": (55.95, date(2025, 12, 21), 10.61),
    "June at 41.9 north": (41.9, date(2025, 6, 21), 71.54),
    "December at 33.87 south": (-33.87, date(2025, 12, 21), 79.57),
}


@pytest.mark.parametrize(("latitude", "day", "told"), HEIGHTS.values(), ids=HEIGHTS)
def test_the_sun_at_noon_is_as_high_as_geometry_has_it(
    latitude: float, day: date, told: float
) -> None:
    within = 0.3 if day.month == 3 else 0.1
    assert sun_day(Site(latitude, 0.0, "UTC"), day).height_at_noon == pytest.approx(
        told, abs=within
    )


LENGTHS = {
    "midsummer at 51.5": (51.5, date(2025, 6, 21), 23.44, 16.404, 16.638),
    "midwinter at 51.5": (51.5, date(2025, 12, 21), -23.44, 7.596, 7.826),
    "equinox at 40": (40.0, date(2025, 3, 20), 0.0, 12.000, 12.145),
}


@pytest.mark.parametrize(
    ("latitude", "day", "tilt", "by_centre", "by_edge"), LENGTHS.values(), ids=LENGTHS
)
def test_the_day_is_as_long_as_geometry_has_it(
    latitude: float, day: date, tilt: float, by_centre: float, by_edge: float
) -> None:
    half = degrees(acos(-tan(radians(latitude)) * tan(radians(tilt))))
    assert 2 * half / 15 == pytest.approx(by_centre, abs=0.001)
    site = Site(latitude, 0.0, "UTC")
    for height, told in ((0.0, by_centre), (-0.833, by_edge)):
        up, down = crossings(site, day, height)
        assert (down.at - up.at).total_seconds() / 3600 == pytest.approx(told, abs=0.02)


@pytest.mark.parametrize("row", rows("usno_atlanta_2007.csv"), ids=lambda row: row["date"])
def test_sunrise_and_sunset_are_the_almanac_s(row: dict[str, str]) -> None:
    site = Site(33 + 46 / 60, -(84 + 25 / 60), "Etc/GMT+5")
    day = sun_day(site, date.fromisoformat(row["date"]))
    for found, key in ((day.sunrise, "sunrise_EST"), (day.sunset, "sunset_EST")):
        told = datetime.fromisoformat(f"{row['date']}T{row[key]}:00-05:00")
        assert found and seconds(found, told) <= 75, key


OF_TIME = {
    "25 September": (datetime(2007, 9, 25, tzinfo=UTC), 482.5, -(0 + 37 / 60 + 7.3 / 3600)),
    "27 September": (datetime(2007, 9, 27, tzinfo=UTC), 524.1, -(1 + 23 / 60 + 50.3 / 3600)),
    "1 October": (datetime(2007, 10, 1, tzinfo=UTC), 604.6, -(2 + 57 / 60 + 8.9 / 3600)),
}


@pytest.mark.parametrize(("moment", "fast", "tilt"), OF_TIME.values(), ids=OF_TIME)
def test_the_equation_of_time_is_the_almanac_s(moment: datetime, fast: float, tilt: float) -> None:
    assert eq_of_time(century(moment)) * 60 == pytest.approx(fast, abs=3)
    assert sun_declination(century(moment)) == pytest.approx(tilt, abs=0.01)


TURNS = {
    "spring 2016": (datetime(2016, 3, 20, 4, 30, tzinfo=UTC), 0),
    "summer 2016": (datetime(2016, 6, 20, 22, 34, tzinfo=UTC), 90),
    "autumn 2016": (datetime(2016, 9, 22, 14, 21, tzinfo=UTC), 180),
    "winter 2016": (datetime(2016, 12, 21, 10, 44, tzinfo=UTC), 270),
    "spring 2018": (datetime(2018, 3, 20, 16, 15, tzinfo=UTC), 0),
    "summer 2018": (datetime(2018, 6, 21, 10, 7, tzinfo=UTC), 90),
    "autumn 2018": (datetime(2018, 9, 23, 1, 54, tzinfo=UTC), 180),
    "winter 2018": (datetime(2018, 12, 21, 22, 22, tzinfo=UTC), 270),
    "spring 2020": (datetime(2020, 3, 20, 3, 49, tzinfo=UTC), 0),
    "summer 2020": (datetime(2020, 6, 20, 21, 43, tzinfo=UTC), 90),
    "autumn 2020": (datetime(2020, 9, 22, 13, 30, tzinfo=UTC), 180),
    "winter 2020": (datetime(2020, 12, 21, 10, 2, tzinfo=UTC), 270),
}


@pytest.mark.parametrize(("moment", "longitude"), TURNS.values(), ids=TURNS)
def test_the_seasons_turn_when_the_almanac_says(moment: datetime, longitude: float) -> None:
    off = (sun_apparent_long(century(moment)) - longitude + 180) % 360 - 180
    minutes = abs(off) / 360 * 365.2422 * 24 * 60
    assert minutes < 15


EVENTS = {f"{row['place']} {row['date']}": row for row in rows("sun_events.csv")}


@pytest.mark.parametrize("row", EVENTS.values(), ids=EVENTS)
def test_a_day_of_the_sun_is_as_four_other_programs_have_it(row: dict[str, str]) -> None:
    site, on = (
        Site(float(row["lat"]), float(row["lon"]), row["tz"]),
        date.fromisoformat(row["date"]),
    )
    day = sun_day(site, on)
    found = {
        "civil_dawn": day.civil_dawn,
        "sunrise": day.sunrise,
        "noon": day.noon,
        "sunset": day.sunset,
        "civil_dusk": day.civil_dusk,
    }
    for height, name in ((GOLDEN_FROM, "minus4"), (GOLDEN_TO, "plus6")):
        ways = crossings(site, on, height)
        found[f"am_{name}"] = next((way.at for way in ways if way.rising), None)
        found[f"pm_{name}"] = next((way.at for way in ways if not way.rising), None)
    for key, at in found.items():
        told = row[key] and datetime.strptime(row[key], "%Y-%m-%d %H:%M:%S%z")
        assert bool(at) == bool(told), key
        if at and told:
            assert seconds(at, told) < 90, key
            assert at.utcoffset() == told.utcoffset(), key
    assert day.height_at_noon == pytest.approx(float(row["noon_el"]), abs=0.1)
    if day.sunset:
        assert sun_at(site, day.sunset).direction == pytest.approx(float(row["sunset_az"]), abs=0.3)


GOLDEN = {
    "London, an evening in May": (
        Site(51.50853, -0.12574, "UTC"),
        date(2016, 5, 18),
        (datetime(2016, 5, 18, 19, 1, tzinfo=UTC), datetime(2016, 5, 18, 20, 17, tzinfo=UTC)),
    ),
    "New Delhi, a morning in December": (
        Site(28.61, 77.22, "Asia/Kolkata"),
        date(2015, 12, 1),
        (
            datetime(2015, 12, 1, 1, 10, 10, tzinfo=UTC),
            datetime(2015, 12, 1, 2, 0, 43, tzinfo=UTC),
        ),
    ),
}


@pytest.mark.parametrize(("site", "day", "told"), GOLDEN.values(), ids=GOLDEN)
def test_the_golden_hour_is_as_published(
    site: Site, day: date, told: tuple[datetime, datetime]
) -> None:
    spell = min(sun_day(site, day).golden, key=lambda spell: seconds(spell[0], told[0]))
    assert seconds(spell[0], told[0]) < 90
    assert seconds(spell[1], told[1]) < 90


def test_civil_twilight_in_london_on_christmas_day_is_as_published() -> None:
    day = sun_day(Site(51.50853, -0.12574, "UTC"), date(2015, 12, 25))
    told = {(7, 25): day.civil_dawn, (8, 5): day.sunrise, (12, 0): day.noon}
    told |= {(15, 55): day.sunset, (16, 36): day.civil_dusk}
    for (hour, minute), found in told.items():
        assert found
        assert seconds(found, datetime(2015, 12, 25, hour, minute, tzinfo=UTC)) < 90


def test_where_the_sun_does_not_set_the_golden_hour_runs_through_midnight() -> None:
    day = sun_day(Site(69.649, 18.956, "Europe/Oslo"), date(2025, 6, 21))
    assert (day.sunrise, day.sunset, day.never_sets, day.never_rises) == (None, None, True, False)
    assert day.words == "The sun doesn't set that day."
    (_, morning), (evening, _) = day.golden
    assert f"{morning:%H:%M}" == "02:56" and f"{evening:%H:%M}" == "22:35"


def test_where_the_sun_does_not_rise_a_day_is_told_all_the_same() -> None:
    day = sun_day(Site(69.649, 18.956, "Europe/Oslo"), date(2025, 12, 21))
    assert (day.sunrise, day.sunset, day.never_rises) == (None, None, True)
    assert day.words == "The sun doesn't rise that day."
    assert day.civil_dawn and day.civil_dusk
