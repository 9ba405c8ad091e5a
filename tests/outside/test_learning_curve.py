"""Learning, against the tables of textbooks: two forms of one curve, and they differ."""

from math import ceil

import pytest

from corymb.trade.hours.learning import (
    PRACTISED_RATE,
    Hand,
    exponent,
    making_minutes,
    unit,
)


def together(first: float, pieces: int, rate: float) -> float:
    """The unit form's time of all pieces."""
    return sum(unit(first, number, rate) for number in range(1, pieces + 1))


# T. P. Wright, J. Aeronautical Sciences 3 (1936) 122-128: log2 of the rate.
@pytest.mark.parametrize(("rate", "power"), [(0.8, -0.3219), (0.9, -0.1520), (1.0, 0.0)])
def test_time_falls_with_the_power_of_wright(rate: float, power: float) -> None:
    assert exponent(rate) == pytest.approx(power, abs=1e-4)


# Unit form, 80 %, the first piece 1: the coefficient table of operations textbooks (from memory).
UNITS = {1: 1.0, 2: 0.8000, 4: 0.6400, 8: 0.5120, 10: 0.4765, 16: 0.4096}
UNIT_TOTALS = {0: 0.0, 1: 1.0, 10: 6.3154, 20: 10.4849}


@pytest.mark.parametrize(("number", "time"), UNITS.items())
def test_a_piece_takes_what_the_coefficient_table_says(number: int, time: float) -> None:
    assert unit(1, number, 0.8) == pytest.approx(time, abs=1e-4)


@pytest.mark.parametrize(("pieces", "time"), UNIT_TOTALS.items())
def test_pieces_together_take_what_the_coefficient_table_says(pieces: int, time: float) -> None:
    assert together(1, pieces, 0.8) == pytest.approx(time, abs=1e-3)


# Computed apart: at 85 % twelve pieces take 8.2444 times the first of 20 minutes.
def test_a_dozen_at_85_percent_takes_eight_and_a_quarter_times_the_first() -> None:
    assert together(20, 12, 0.85) == pytest.approx(164.89, abs=0.01)


# The same table's total to 20, at a rate that a hand may have who is never quicker than practised.
def test_a_hand_takes_the_sum_of_its_pieces() -> None:
    slow = Hand("slow", first=4.0, rate=0.8)
    assert slow.minutes_for(25, 20) == pytest.approx(100 * 10.4849, abs=0.1)


# Cumulative average form, 80 %, the first 100 hours: an accountancy text, chapter 15, read at
# online.flipbuilder.com. It is the unit form's curve, read as the average of all pieces so far.
AVERAGES = {1: (100, 100), 2: (80, 160), 4: (64, 256), 8: (51.2, 409.6), 16: (40.96, 655.36)}


@pytest.mark.parametrize(("pieces", "times"), AVERAGES.items())
def test_wrights_own_form_is_that_of_accountants(pieces: int, times: tuple[float, float]) -> None:
    mean, total = times
    assert unit(100, pieces, 0.8) == pytest.approx(mean, abs=0.01)
    assert pieces * unit(100, pieces, 0.8) == pytest.approx(total, abs=0.01)


# Computed apart: ten units at 80 %, the first 100. Unit form 631.54, cumulative average 476.51.
def test_the_two_forms_differ_and_plans_go_by_the_longer_one() -> None:
    assert together(100, 10, 0.8) == pytest.approx(631.54, abs=0.1)
    assert 10 * unit(100, 10, 0.8) == pytest.approx(476.51, abs=0.1)
    planned = ceil(together(20, 12, PRACTISED_RATE))
    assert making_minutes(20, 12) == planned > 12 * unit(20, 12, PRACTISED_RATE)
