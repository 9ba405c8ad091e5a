"""What did swaps and spare stems do to an order's margin?

The price was agreed and stays. The cost moves, in two steps from what the recipes say:

    as written   the recipes' stems, with the share of waste the studio reckons with
    swapped      the stems that stand in, with the same share
    as cut       all that is cut and bought in, spare and round bunches too. What is lost is
                 counted in it already, so no share of waste comes on top

Less is lost than reckoned where the last step is cheaper than the one before. Sundries and
labour are those of the order throughout.
Everything here is for staff alone.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal

from corymb.trade.money.costs import Needs, Rates, StemsOf, costs_of
from corymb.trade.money.mark_up import margin_of


@dataclass(frozen=True)
class Standing:
    """An order's price without tax beside its cost."""

    net: Decimal
    cost: Decimal

    @property
    def left(self) -> Decimal:
        """What stays of the price; below 0 where it costs more than it brings."""
        return self.net - self.cost

    @property
    def margin(self) -> Decimal | None:
        """What part of the price stays; None where nothing is asked for the order."""
        return margin_of(self.net, self.cost) if self.net > 0 else None


@dataclass(frozen=True)
class MarginChange:
    """An order's standing as written, with its swaps, and as cut."""

    before: Standing
    swapped: Standing
    after: Standing

    @property
    def by_swaps(self) -> Decimal:
        """What the swaps left over; below 0 where they cost."""
        return self.swapped.left - self.before.left

    @property
    def by_spare(self) -> Decimal:
        """What the spare and round bunches left over, against the waste reckoned with."""
        return self.after.left - self.swapped.left

    @property
    def altogether(self) -> Decimal:
        """Both together."""
        return self.after.left - self.before.left


def margin_change(
    net: Decimal,
    written: Needs,
    swapped: Iterable[StemsOf],
    cut: Iterable[StemsOf],
    rates: Rates,
) -> MarginChange:
    """What an agreed price without tax leaves over, as written, swapped and cut."""
    with_swaps = replace(written, stems=tuple(swapped))
    as_cut = replace(written, stems=tuple(cut))
    return MarginChange(
        Standing(net, costs_of(written, rates).total),
        Standing(net, costs_of(with_swaps, rates).total),
        Standing(net, costs_of(as_cut, rates.without_waste).total),
    )
