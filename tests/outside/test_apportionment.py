"""Shares in whole stems, against worked examples that no one here made."""

from fractions import Fraction

import pytest

from corymb.trade.apportion import apportion

VIRGINIA_TO_DELAWARE = [
    630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835,
    68705, 68446, 55540,
]  # fmt: skip

CASES = {
    # The usual textbook example of the largest remainder method with Hare's quota (from memory;
    # also computed with the package `apportionment`).
    "six parties to ten seats": ([47000, 16000, 15900, 12000, 6000, 3100], 10, [5, 2, 1, 1, 1, 0]),
    # electowiki, "Hamilton method": fifteen states of the census of 1790 to sixty seats.
    "fifteen states to sixty seats": (
        VIRGINIA_TO_DELAWARE,
        60,
        [11, 8, 7, 6, 6, 5, 4, 3, 3, 2, 1, 1, 1, 1, 1],
    ),
    # Balinski and Young, Fair Representation (1982), the Alabama paradox (from memory).
    "Alabama paradox, ten": ([6, 6, 2], 10, [4, 4, 2]),
    "Alabama paradox, eleven": ([6, 6, 2], 11, [5, 5, 1]),
    # Mixes by ratio, computed with the package `apportionment`; ties in the order of the list.
    "a mix of 3:2:2:1 to twenty": ([3, 2, 2, 1], 20, [8, 5, 5, 2]),
    "a mix by percent to twenty-five": ([40, 35, 15, 10], 25, [10, 9, 4, 2]),
}


@pytest.mark.parametrize(("weights", "total", "parts"), CASES.values(), ids=CASES)
def test_whole_shares_are_those_published(weights: list[int], total: int, parts: list[int]) -> None:
    assert apportion(total, [Fraction(weight) for weight in weights]) == parts
