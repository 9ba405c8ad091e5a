"""Money is rounded exactly, each way for its own purpose."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.coins import places_of
from corymb.trade.money.rounding import half_up, up_to_multiple

AMOUNTS = st.decimals(0, 100_000, places=4)
STEPS = st.sampled_from(
    [Decimal("0.05"), Decimal("0.5"), Decimal(1), Decimal(5), Decimal("2.50"), Decimal(10)]
)

UP = {
    "to the next whole 5": ("31.01", "5", "35"),
    "a whole multiple stays": ("35.00", "5", "35"),
    "to the next half": ("31.20", "0.5", "31.5"),
    "nothing stays nothing": ("0", "5", "0"),
    "a step of nothing rounds nothing": ("31.01", "0", "31.01"),
}


@pytest.mark.parametrize(("amount", "step", "rounded"), UP.values(), ids=UP)
def test_a_price_goes_up_to_the_next_whole_multiple(amount: str, step: str, rounded: str) -> None:
    assert up_to_multiple(Decimal(amount), Decimal(step)) == Decimal(rounded)


@given(AMOUNTS, STEPS)
def test_rounding_up_adds_less_than_a_step(amount: Decimal, step: Decimal) -> None:
    rounded = up_to_multiple(amount, step)
    assert 0 <= rounded - amount < step
    assert rounded % step == 0
    assert up_to_multiple(rounded, step) == rounded


@pytest.mark.parametrize(
    ("amount", "places", "rounded"),
    [
        pytest.param("1.005", 2, "1.01", id="a half goes up"),
        pytest.param("1.0049", 2, "1.00", id="less than a half goes down"),
        pytest.param("12.5", 0, "13", id="yen have no decimals"),
        pytest.param("1.2345", 3, "1.235", id="dinars have three"),
        pytest.param("-0.125", 2, "-0.13", id="a half below nothing goes further down"),
    ],
)
def test_an_amount_has_as_many_decimals_as_its_currency(
    amount: str, places: int, rounded: str
) -> None:
    assert str(half_up(Decimal(amount), places)) == rounded


@pytest.mark.parametrize(
    ("currency", "places"),
    [("EUR", 2), ("GBP", 2), ("CHF", 2), ("DKK", 2), ("JPY", 0), ("KWD", 3)],
)
def test_a_currency_has_its_decimals(currency: str, places: int) -> None:
    assert places_of(currency) == places


def test_a_step_below_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="prices can't be rounded to -5: a step is 0 or more"):
        up_to_multiple(Decimal(1), Decimal(-5))
