"""Flushes without a day between them are one."""

from __future__ import annotations

import pytest

from corymb.trade.season.flush import Flush
from corymb.trade.season.unbroken import unbroken

# First and last days as they are written, and as they come out; each first strays as many days
# as its own number, each last as its own.
RUNS: dict[str, tuple[list[tuple[float, float]], list[tuple[float, float]]]] = {
    "apart": ([(100, 120), (140, 150)], [(100, 120), (140, 150)]),
    "the day after": ([(100, 120), (121, 150)], [(100, 150)]),
    "half a day more, by rounding": ([(100, 120), (121.5, 150)], [(100, 150)]),
    "a day between": ([(100, 120), (122, 150)], [(100, 120), (122, 150)]),
    "overlapping": ([(100, 125), (121, 150)], [(100, 150)]),
    "one within the other": ([(100, 150), (110, 120)], [(100, 150)]),
    "in another order": ([(121, 150), (100, 120)], [(100, 150)]),
    "three in a row": ([(151, 170), (100, 120), (121, 150)], [(100, 170)]),
    "over New Year": ([(1, 80), (300, 365)], [(300, 80)]),
    "over New Year and on": ([(21, 80), (300, 20)], [(300, 80)]),
    "on the same day": ([(100, 100), (100, 100)], [(100, 100)]),
    "all year": ([(1, 180), (181, 365)], [(1, 180), (181, 365)]),
}


@pytest.mark.parametrize(("written", "found"), RUNS.values(), ids=RUNS)
def test_flushes_that_go_on_in_each_other_are_one(
    written: list[tuple[float, float]], found: list[tuple[float, float]]
) -> None:
    runs = unbroken(Flush(first, last, first, last) for first, last in written)
    assert [(flush.first, flush.last) for flush in runs] == found
    assert [(flush.first_spread, flush.last_spread) for flush in runs] == found


def test_one_that_comes_in_half_of_the_years_isnt_made_certain_by_its_neighbour() -> None:
    june, july = Flush(152, 181, 6, 6), Flush(182, 201, 6, 6, comes=0.5)
    assert set(unbroken([june, july])) == {june, july}


def test_two_that_come_in_the_same_years_are_one_that_comes_as_often() -> None:
    one, two = Flush(152, 181, 6, 6, comes=0.5), Flush(182, 201, 6, 6, comes=0.5)
    assert unbroken([one, two]) == (Flush(152, 201, 6, 6, comes=0.5),)
