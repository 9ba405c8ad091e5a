"""Margin or mark-up? Both tell price from cost, and they are not the same.

    margin  = (price - cost) / price     what part of the price stays: 60 % of 31.00 over 12.40
    mark-up = price / cost               how many times the cost: the same 31.00 is 2.5 times

A margin of 60 % is always a mark-up of 2.5, whatever the cost; one of 65 % is 2.857. Taking the
one for the other gives away money, so each has its own name here. Prices are meant without tax:
the tax is never the studio's.
"""

from __future__ import annotations

from decimal import Decimal


def margin_of(price: Decimal, cost: Decimal) -> Decimal:
    """The part of the price that stays, below 0 where it costs more than it brings.

    Raises ValueError when the price is nothing.
    """
    if price <= 0:
        raise ValueError("a price of nothing has no margin")
    return (price - cost) / price


def mark_up_of(price: Decimal, cost: Decimal) -> Decimal:
    """How many times the cost the price is. Raises ValueError when the cost is nothing."""
    if cost <= 0:
        raise ValueError("a cost of nothing has no mark-up")
    return price / cost
