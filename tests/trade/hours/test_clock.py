"""Hours by the clock, on the days on which the clocks change."""

from datetime import date, time, timedelta

import pytest

from corymb.trade.hours.clock import between, later, moment

# IANA time zone database: Ireland's clocks go forward at 01:00 on 29 March 2026, back at 02:00
# on 25 October 2026.
MOMENTS = {
    "winter": (date(2026, 1, 1), time(7), "2026-01-01T07:00:00+00:00"),
    "summer": (date(2026, 7, 1), time(7), "2026-07-01T07:00:00+01:00"),
    "an hour that is left out": (date(2026, 3, 29), time(1, 30), "2026-03-29T02:30:00+01:00"),
    "an hour that comes twice": (date(2026, 10, 25), time(1, 30), "2026-10-25T01:30:00+01:00"),
}


@pytest.mark.parametrize(("day", "clock", "iso"), MOMENTS.values(), ids=MOMENTS)
def test_an_hour_of_the_clock_is_a_moment(day: date, clock: time, iso: str) -> None:
    assert moment(day, clock, "Europe/Dublin").isoformat() == iso


NIGHTS = {"plain": (date(2026, 7, 1), 12), "forward": (date(2026, 3, 28), 11)}
NIGHTS["back"] = (date(2026, 10, 24), 13)


@pytest.mark.parametrize(("evening", "hours"), NIGHTS.values(), ids=NIGHTS)
def test_a_night_is_as_long_as_it_really_is(evening: date, hours: int) -> None:
    start = moment(evening, time(20), "Europe/Dublin")
    end = moment(evening + timedelta(days=1), time(8), "Europe/Dublin")
    assert between(start, end) == timedelta(hours=hours)
    assert later(start, timedelta(hours=hours)) == end
    assert later(end, -timedelta(hours=hours)).isoformat() == start.isoformat()
