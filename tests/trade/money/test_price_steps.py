"""A list of prices is narrowed down by round amounts that part it."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.price_steps import price_steps, round_up

# Each by hand: a fifth of the list is 28, two fifths 55, three 75, four 170; then rounded up.
STEPS = {
    "a list in fifths": ([12, 28, 30, 55, 60, 75, 95, 170, 190, 220], [30, 60, 80, 200]),
    "two prices are parted by the lower": ([28, 90], [30]),
    "one price parts nothing": ([28], []),
    "the same price for all parts nothing": ([28, 28, 28], []),
    "an amount that lets all through is no step": ([41, 42, 43, 44, 45], []),
    "no prices": ([], []),
}


@pytest.mark.parametrize(("prices", "steps"), STEPS.values(), ids=STEPS)
def test_a_list_of_prices_has_its_steps(prices: list[int], steps: list[int]) -> None:
    assert price_steps(map(Decimal, prices)) == tuple(map(Decimal, steps))


@pytest.mark.parametrize(
    ("amount", "rounded"),
    [("0.40", 1), ("1.20", 2), ("12", 15), ("28", 30), ("30", 30), ("81", 100), ("1700", 2000)],
)
def test_an_amount_is_rounded_up_to_one_that_people_name(amount: str, rounded: int) -> None:
    assert round_up(Decimal(amount)) == rounded


@given(st.lists(st.decimals("0.01", 9999, places=2), max_size=60))
def test_each_step_lets_more_through_than_the_one_before(prices: list[Decimal]) -> None:
    through = [sum(price <= step for price in prices) for step in price_steps(prices)]
    assert through == sorted(set(through))
    assert not through or 0 < through[0] <= through[-1] < len(prices)
