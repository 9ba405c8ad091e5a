"""A date carried along the year moves at the year's pace."""

from __future__ import annotations

from itertools import pairwise

import pytest

from corymb.trade.season.circle import gap, on_circle
from corymb.trade.season.pace import carried


def pace(day: float) -> float:
    """The same drawn by hand: straight lines through five corners of the year."""
    corners = [(-31, -1), (32, 1), (181, 1), (244, -1), (334, -1), (397, 1)]
    day = on_circle(day)
    for (x0, y0), (x1, y1) in pairwise(corners):
        if x0 <= day <= x1:
            return y0 + (y1 - y0) * (day - x0) / (x1 - x0)
    raise AssertionError(day)


def stepped(day: float, time: float, steps: int = 2000) -> float:
    """The same walked in small steps (Heun's rule)."""
    step = time / steps
    for _ in range(steps):
        ahead = day + step * pace(day)
        day += step * (pace(day) + pace(ahead)) / 2
    return day


@pytest.mark.parametrize("time", [-45.0, -7.5, 3.74, 18.377, 60.0])
@pytest.mark.parametrize("day", range(3, 366, 11))
def test_it_comes_to_where_small_steps_lead(day: int, time: float) -> None:
    assert gap(stepped(day, time), carried(day, time)) == pytest.approx(0, abs=2e-3)


@pytest.mark.parametrize("day", [212.5, 365.5], ids=["the turn of summer", "New Year"])
@pytest.mark.parametrize("time", [-90, 30, 400])
def test_nothing_moves_at_the_turn_of_summer_and_at_new_year(day: float, time: float) -> None:
    assert carried(day, time) == pytest.approx(day)


# By hand. 25 June is 5 days before the pace slackens; from there (31.5 days before the turn)
# the distance from the turn shrinks by exp(-2 / 63) a day.
@pytest.mark.parametrize(
    ("day", "time", "there"),
    [
        pytest.param(176, 5, 181, id="to the end of spring"),
        pytest.param(176, 36.5, 212.5 - 31.5 / 2.718281828, id="beyond the end of spring"),
        pytest.param(334, 90, 244, id="through all of autumn"),
        pytest.param(32, -10, 365.5 + 31.5 * 2.718281828 ** (-10 / 31.5), id="back into winter"),
        pytest.param(100, 0, 100, id="nowhere"),
    ],
)
def test_dates_worked_out_by_hand(day: float, time: float, there: float) -> None:
    assert carried(day, time) == pytest.approx(there)
