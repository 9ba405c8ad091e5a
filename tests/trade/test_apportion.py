"""What holds for every sharing out, whatever the weights."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.apportion import apportion

WEIGHTS = st.lists(st.integers(0, 500), min_size=1, max_size=20).filter(any)


@given(WEIGHTS, st.integers(0, 1000))
def test_the_parts_make_the_whole_and_stay_near_their_quota(weights: list[int], total: int) -> None:
    parts = apportion(total, weights)
    assert sum(parts) == total
    for part, weight in zip(parts, weights, strict=True):
        quota = Fraction(total * weight, sum(weights))
        assert abs(part - quota) < 1


@given(st.integers(1, 20), st.integers(0, 1000))
def test_equal_weights_get_parts_that_differ_by_one_at_most(members: int, total: int) -> None:
    parts = apportion(total, [1] * members)
    assert max(parts) - min(parts) <= 1
    assert parts == sorted(parts, reverse=True)  # ties go to the earlier in the list


@pytest.mark.parametrize(
    ("total", "weights"),
    [(-1, [1]), (3, [1, -1]), (3, [0, 0])],
    ids=["a total below nothing", "a weight below nothing", "nothing to share by"],
)
def test_what_cannot_be_shared_out_is_refused(total: int, weights: list[int]) -> None:
    with pytest.raises(ValueError, match=r"negative|nothing to share by"):
        apportion(total, weights)
