"""How much of a price is tax, and what stays with the studio?

Tax stands outside the amount (it comes on top: net x rate) or inside it (the price holds it
already: gross x rate / (1 + rate)). It is rounded half up to the smallest coin, and the other
part is what is left, so that net + tax is the gross always.

Several lines may be taxed one by one or all together, and the two can differ by a cent. Both are
allowed if one keeps to it (HMRC Notice 700, 17.5, and VATREC12010, on gov.uk). Corymb's quotes
are taxed **all together**, once, on their total (`per_invoice`): it is nearest to the rate.
Rounding every tax down is allowed to some traders only (VATREC12020), so it is never done here.
Rates and rules differ and change: the studio's accountant knows today's.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from corymb.trade.money.rounding import CENTS, half_up


@dataclass(frozen=True)
class TaxRule:
    """The rate (0.135 is 13.5 %), and whether the studio's prices hold the tax already."""

    rate: Decimal
    in_prices: bool
    places: int = CENTS

    def __post_init__(self) -> None:
        if self.rate < 0:
            raise ValueError(f"a rate of tax is 0 or more, not {self.rate}")


@dataclass(frozen=True)
class Taxed:
    """An amount with its tax told apart."""

    net: Decimal
    tax: Decimal

    @property
    def gross(self) -> Decimal:
        """With the tax: what the client pays."""
        return self.net + self.tax


def on_top(net: Decimal, rate: Decimal, places: int = CENTS) -> Taxed:
    """Tax outside the amount: tax = net x rate."""
    net = half_up(net, places)
    return Taxed(net, half_up(net * rate, places))


def inside(gross: Decimal, rate: Decimal, places: int = CENTS) -> Taxed:
    """Tax inside the amount: tax = gross x rate / (1 + rate)."""
    gross = half_up(gross, places)
    tax = half_up(gross * rate / (1 + rate), places)
    return Taxed(gross - tax, tax)


def taxed(shown: Decimal, rule: TaxRule) -> Taxed:
    """A price as the studio shows it, with its tax told apart."""
    return (inside if rule.in_prices else on_top)(shown, rule.rate, rule.places)


def per_invoice(shown: Iterable[Decimal], rule: TaxRule) -> Taxed:
    """All lines together, taxed once: the way of Corymb's quotes."""
    return taxed(sum(shown, Decimal(0)), rule)
