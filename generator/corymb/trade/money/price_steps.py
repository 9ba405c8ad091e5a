"""Up to which prices is a list worth narrowing down? Round amounts that part it about evenly."""

from __future__ import annotations

from collections.abc import Iterable
from decimal import ROUND_CEILING, Decimal

MOST_STEPS = 4
"""As many as are taken in at one look: our own choice, no source."""
ROUND = tuple(map(Decimal, ("1", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10")))
"""What an amount begins with that people name when they say how much they would spend: our own
choice, no source."""


def price_steps(prices: Iterable[Decimal]) -> tuple[Decimal, ...]:
    """Amounts from small to large; each lets more through than the one before, and none lets all.

    Every price is above 0.
    """
    each = sorted(prices)
    steps: list[Decimal] = []
    through = 0
    for part in range(1, MOST_STEPS + 1):
        at = len(each) * part // (MOST_STEPS + 1)
        if not at:
            continue
        step = round_up(each[at - 1])
        lets_through = sum(price <= step for price in each)
        if through < lets_through < len(each):
            steps.append(step)
            through = lets_through
    return tuple(steps)


def round_up(amount: Decimal) -> Decimal:
    """The next amount that is round in the way of `ROUND`, in whole units of money."""
    if amount <= 1:
        return Decimal(1)
    ten = Decimal(1).scaleb(amount.adjusted())
    found = next(first * ten for first in ROUND if first * ten >= amount)
    return found.to_integral_value(ROUND_CEILING)
