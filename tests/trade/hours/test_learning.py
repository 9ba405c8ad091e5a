"""Making time: a practised hand, a helper who catches up, and what can't be."""

import pytest

from corymb.trade.hours.learning import (
    EXPERIENCED,
    HELPER,
    exponent,
    making_minutes,
    unit,
)


# 20 minutes each. Practised: 20 + 19 = 39; with 18.44 and 18.05, 75.5. Helper: 30 + 25.5 = 55.5;
# with 23.19 and 21.68, 100.4. Rounded up.
@pytest.mark.parametrize(
    ("pieces", "practised", "helper"), [(0, 0, 0), (1, 20, 30), (2, 39, 56), (4, 76, 101)]
)
def test_a_helper_takes_longer_and_learns_faster(pieces: int, practised: int, helper: int) -> None:
    assert making_minutes(20, pieces) == practised
    assert making_minutes(20, pieces, HELPER) == helper


@pytest.mark.parametrize("number", [1, 5, 12, 13, 40, 400])
def test_a_helper_is_never_quicker_than_a_practised_hand(number: int) -> None:
    assert HELPER.piece_minutes(20, number) >= EXPERIENCED.piece_minutes(20, number)


# 1.5 n^-0.2345 falls below n^-0.0740 at n = 12.5, by hand.
def test_a_helper_has_caught_up_by_the_thirteenth_piece() -> None:
    assert HELPER.piece_minutes(20, 12) > EXPERIENCED.piece_minutes(20, 12)
    assert HELPER.piece_minutes(20, 13) == EXPERIENCED.piece_minutes(20, 13)


@pytest.mark.parametrize("rate", [0, -0.5, 1.01, 85])
def test_a_rate_is_a_share_of_the_time_before(rate: float) -> None:
    with pytest.raises(ValueError, match=r"like 0\.85"):
        exponent(rate)


def test_pieces_are_counted_from_one_and_none_take_no_time() -> None:
    with pytest.raises(ValueError, match="numbered from 1"):
        unit(20, 0, 0.9)
    assert making_minutes(20, 0) == 0
    with pytest.raises(ValueError, match="fewer than 0"):
        making_minutes(20, -1)
