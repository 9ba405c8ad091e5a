"""Book dates are brought to the studio's place and keep their order."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values.season_text import parse_season
from corymb.trade.season.circle import ahead, gap
from corymb.trade.season.hopkins import (
    Shift,
    is_stretched,
    moved,
    moved_season,
    shift_between,
)
from tests.trade.season.places import at

DAYS = st.floats(min_value=1, max_value=366, exclude_max=True)
SHIFTS = st.builds(
    Shift,
    days=st.floats(min_value=-60, max_value=60),
    half_year=st.booleans(),
    south=st.booleans(),
)


def back(shift: Shift) -> Shift:
    """The way from the studio's dates to the book's."""
    return Shift(-shift.days, shift.half_year, shift.south != shift.half_year)


@given(DAYS, SHIFTS)
def test_there_and_back_again_is_the_same_day(day: float, shift: Shift) -> None:
    there = moved(day, shift)
    assert 1 <= there < 366
    assert gap(moved(there, back(shift)), day) == pytest.approx(0, abs=1e-9)


@given(st.lists(DAYS, min_size=3, max_size=3, unique_by=lambda day: round(day, 2)), SHIFTS)
def test_dates_keep_their_order_round_the_year(days: list[float], shift: Shift) -> None:
    a, b, c = (moved(day, shift) for day in sorted(days))
    assert ahead(a, b) + ahead(b, c) + ahead(c, a) == pytest.approx(365)


@given(DAYS, st.booleans())
def test_half_a_year_twice_is_the_same_day(day: float, south: bool) -> None:
    there = moved(day, Shift(0, half_year=True, south=south))
    assert abs(gap(there, day)) == pytest.approx(182.5)
    assert gap(moved(there, Shift(0, half_year=True, south=not south)), day) == pytest.approx(0)


# By hand, by latitude. 1 July is day 182 and half a year on is 364.5; whole days go up. From 51
# north to 41 south is 40 days earlier in spring, from 1 May (121) to day 81, and half a year on.
MOVED = {
    "the book's own place": (51, 51, "early May - mid July", "early May - mid July"),
    "north": (51, 53, "1 May - 20 October", "9 May - 12 October"),
    "south": (53, 51, "9 May - 12 October", "1 May - 20 October"),
    "half a year": (51, -51, "1 May - 1 July", "31 October - 31 December"),
    "half a year back": (-51, 51, "31 October", "2 May"),
    "half a year and 40 days": (51, -41, "1 May", "21 September"),
    "southern spring": (-41, -43, "1 November", "9 November"),
    "southern autumn": (-41, -43, "1 May", "23 April"),
    "all year": (51, -41, "all year", "all year"),
    "all year in two": (
        51,
        60,
        "July - December, January - June",
        "July - December, January - June",
    ),
    "two flushes": (51, 53, "1 May - 10 May, 1 October", "9 May - 18 May, 23 September"),
}


@pytest.mark.parametrize("name", MOVED)
def test_a_season_is_brought_here(name: str) -> None:
    reference, place, book, here = MOVED[name]
    season = moved_season(parse_season(book), shift_between(at(reference), at(place)))
    assert str(season) == here


def test_a_season_shortens_from_both_ends_further_north() -> None:
    book = parse_season("1 May - 20 October")
    lengths = [len(moved_season(book, Shift(days)).days()) for days in (-20, -10, 0, 10, 20)]
    assert lengths == [213, 193, 173, 153, 133]


STRETCHED = {
    "a month and two days": (at(51), at(59)),
    "the same southwards": (at(51), at(43)),
    "a thousand metres up": (at(51), at(51, 1000)),
    "just within the tropics": (at(24), at(23)),
    "from within the tropics": (at(-23), at(-24)),
    "to the other side of the equator": (at(10), at(-10)),
}
NOT_STRETCHED = {
    "a month less two days": (at(51), at(58)),
    "just out of the tropics": (at(24), at(25)),
    "in the tropics with dates of its own": (at(10), at(10)),
    "the other half of the world": (at(51), at(-51)),
}


@pytest.mark.parametrize("name", [*STRETCHED, *NOT_STRETCHED])
def test_the_law_is_stretched_by_a_month_and_in_the_tropics(name: str) -> None:
    reference, place = (STRETCHED | NOT_STRETCHED)[name]
    assert is_stretched(reference, place) is (name in STRETCHED)


WAYS = {
    "polewards": (at(50), at(52), (2, 0, 0)),
    "polewards in the south": (at(50), at(-52), (2, 0, 0)),
    "uphill": (at(50), at(50, 100), (0, 0, 100)),
}


@pytest.mark.parametrize("name", WAYS)
def test_what_was_counted_of_the_way_is_kept(name: str) -> None:
    reference, place, counted = WAYS[name]
    way = shift_between(reference, place).way
    assert (way.polewards, way.eastwards, way.upwards) == counted
