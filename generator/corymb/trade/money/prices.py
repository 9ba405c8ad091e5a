"""What is a piece's price, put together from its costs?

    without tax = grown stems with their waste  x mark-up grown
                + bought stems with their waste x mark-up bought
                + sundries                      x mark-up sundries
                + labour, at the hourly rate
                + overhead, the share of all costs that `costs` tells
    shown       = without tax, with the tax on top where the studio's prices hold it,
                  rounded up to the next whole multiple of `round prices to`

Labour and overhead bring back what they cost and no more; what the studio earns is in the
mark-ups and in the rounding. The tax is worked out once more from the price shown, so that
net + tax is what the client pays. A price that is a whole multiple already stays; it is looked
at in whole cents, so that nothing below a cent lifts it by a whole step.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from corymb.trade.money.costs import Costs
from corymb.trade.money.mark_up import margin_of, mark_up_of
from corymb.trade.money.rounding import half_up, up_to_multiple
from corymb.trade.money.tax import Taxed, TaxRule, on_top, taxed


@dataclass(frozen=True)
class MarkUps:
    """What costs are multiplied by, by where the thing came from."""

    grown: Decimal
    bought: Decimal
    sundries: Decimal

    def __post_init__(self) -> None:
        if min(self.grown, self.bought, self.sundries) < 0:
            raise ValueError("a mark-up is 0 or more: 1 asks what it cost, 2 twice that")


@dataclass(frozen=True)
class PriceRule:
    """How the studio makes a price of a cost."""

    mark_ups: MarkUps
    tax: TaxRule
    round_to: Decimal


@dataclass(frozen=True)
class Price:
    """A price and how it came about; its parts are without tax. For staff alone."""

    grown: Decimal
    bought: Decimal
    sundries: Decimal
    labour: Decimal
    overhead: Decimal
    unrounded: Decimal
    """As it would be shown if it weren't rounded up; without tax where prices don't hold it."""
    shown: Decimal
    """What the client is told for one piece."""
    taxed: Taxed
    """The price shown with its tax told apart."""
    cost: Decimal
    """What the piece costs the studio."""

    @property
    def without_tax(self) -> Decimal:
        """The sum of the parts, before tax and rounding."""
        return self.grown + self.bought + self.sundries + self.labour + self.overhead

    @property
    def rounding(self) -> Decimal:
        """How much the rounding up added."""
        return self.shown - self.unrounded

    @property
    def left(self) -> Decimal:
        """What stays of the price once tax and costs are paid."""
        return self.taxed.net - self.cost

    @property
    def margin(self) -> Decimal:
        """What part of the price without tax stays. Raises ValueError where it is nothing."""
        return margin_of(self.taxed.net, self.cost)

    @property
    def mark_up(self) -> Decimal:
        """How many times its cost the piece is sold for, tax aside. Raises ValueError as above."""
        return mark_up_of(self.taxed.net, self.cost)


def price_of(costs: Costs, rule: PriceRule) -> Price:
    """The price by the formula above."""
    places, ups = rule.tax.places, rule.mark_ups
    grown = half_up((costs.grown + costs.waste_grown) * ups.grown, places)
    bought = half_up((costs.bought + costs.waste_bought) * ups.bought, places)
    sundries = half_up(costs.sundries * ups.sundries, places)
    net = grown + bought + sundries + costs.labour + costs.overhead
    unrounded = on_top(net, rule.tax.rate, places).gross if rule.tax.in_prices else net
    shown = half_up(up_to_multiple(unrounded, rule.round_to), places)
    return Price(
        grown,
        bought,
        sundries,
        costs.labour,
        costs.overhead,
        unrounded,
        shown,
        taxed(shown, rule.tax),
        costs.total,
    )
