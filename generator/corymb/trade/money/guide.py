"""What is the client asked for a piece, and how far is it from what it works out at?

The guide price on a recipe is what clients read: for the regular size, made up. Staff see beside
it what the same piece works out at, and the difference. In a quote (house rule):

- a guide price without `from` was a promise, and is kept, even where more is worked out;
- with `from` it is the least, and the worked-out price goes above it where that is more;
- another size, in buckets, or from the mix has no guide price of its own. It stands to the price
  of the regular piece as what the two work out at stand to each other, and is rounded up again:

    asked = asked for the regular piece x worked out for this / worked out for the regular one

  So a large piece is never cheaper than a regular one, whatever the guide price is, and rounding
  up never makes a small one dearer.
- without a guide price the worked-out price stands.

Clients read the guide price itself in proportion for another size, by the same rule, so that the
sizes on one page or list belong together; what is asked in a quote is never below it.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from corymb.studio.values.money import PriceGuide
from corymb.trade.money.prices import Price, PriceRule
from corymb.trade.money.rounding import half_up, up_to_multiple


@dataclass(frozen=True)
class BesideGuide:
    """A guide price, what the piece works out at, and the difference. For staff alone."""

    guide: PriceGuide
    worked_out: Decimal

    @property
    def difference(self) -> Decimal:
        """How much more it works out at than clients read; below 0 where it is less."""
        return self.worked_out - self.guide.amount


def beside_guide(guide: PriceGuide | None, worked_out: Decimal) -> BesideGuide | None:
    """The two side by side; None without a guide price."""
    return BesideGuide(guide, worked_out) if guide is not None else None


def asked_for_regular(guide: PriceGuide | None, worked_out: Decimal) -> Decimal:
    """What a regular piece, made up, is quoted at."""
    if guide is None:
        return worked_out
    return max(guide.amount, worked_out) if guide.from_ else guide.amount


def asked_in_proportion(asked: Decimal, regular: Price, piece: Price, rule: PriceRule) -> Decimal:
    """What a piece is quoted at when its regular size, made up, is quoted at `asked`."""
    if not regular.unrounded:
        return piece.shown
    places = rule.tax.places
    exact = half_up(asked * piece.unrounded / regular.unrounded, places)
    rounded = half_up(up_to_multiple(exact, rule.round_to), places)
    # A guide price needn't be a round one: what is no dearer to make stays no dearer.
    return min(rounded, asked) if piece.unrounded <= regular.unrounded else rounded
