"""How is an amount of money rounded? Exactly, in Decimal, and halves up.

Two ways, each for its own purpose: to the smallest coin (costs and tax), and up to the next whole
multiple (prices that look like prices). A half goes away from nothing: 0.125 is 0.13, not 0.12 as
with rounding to even.
"""

from __future__ import annotations

from decimal import ROUND_CEILING, ROUND_HALF_UP, Decimal

CENTS = 2
"""Decimals of most currencies; `coins` knows the others."""


def half_up(amount: Decimal, places: int = CENTS) -> Decimal:
    """The nearest amount with so many decimals; a half goes up."""
    return amount.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP)


def up_to_multiple(amount: Decimal, step: Decimal) -> Decimal:
    """The next whole multiple of `step`, or `amount` itself where it is one already.

    A step of 0 rounds nothing. Raises ValueError on a step below 0.
    """
    if step < 0:
        raise ValueError(f"prices can't be rounded to {step}: a step is 0 or more")
    return (amount / step).to_integral_value(ROUND_CEILING) * step if step else amount
