"""What does an order come to for the client, line by line?

    total of a line  = quantity x each
    total of all     = the sum of the lines, and its tax, worked out once (`tax.per_invoice`)

Where the studio's prices hold the tax, the sum of the lines is what the client pays; where they
don't, the tax comes on top of it. There is no cost in a quote and nothing to work one out from:
it may be shown to the client as it is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from corymb.trade.money.tax import Taxed, TaxRule, per_invoice


@dataclass(frozen=True)
class QuoteLine:
    """So many of one thing, in words, at so much each."""

    quantity: int
    words: str
    each: Decimal

    @property
    def total(self) -> Decimal:
        """What the line comes to."""
        return self.quantity * self.each


@dataclass(frozen=True)
class Quote:
    """All lines, their sum with its tax told apart, and whether the prices hold the tax."""

    lines: tuple[QuoteLine, ...]
    taxed: Taxed
    tax_in_prices: bool

    @property
    def to_pay(self) -> Decimal:
        """What the client pays, tax and all."""
        return self.taxed.gross


def quote_of(lines: Sequence[QuoteLine], rule: TaxRule) -> Quote:
    """A quote of these lines."""
    return Quote(tuple(lines), per_invoice((line.total for line in lines), rule), rule.in_prices)
