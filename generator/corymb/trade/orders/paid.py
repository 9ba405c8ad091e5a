"""What does an order on its day cost, what is asked for it, and what is left?

The price is the quote's, by the rule in `money.guide`, and stays as agreed. The cost is told in
stages, each nearer to what happened than the one before:

    as written   the recipes' stems, with the share of waste the studio reckons with
    with swaps   the stems that stand in, with the same share         } where the cut
    as cut       all that is cut and bought in for it, without one    } is known
    as made      the stems and minutes that the order says were used, where it says so;
                 what wasn't counted went in as written

Labour is the time of each recipe for so many pieces, each going a little faster than the one
before (`hours.learning`); what leaves in buckets isn't made up. As made it is the order's own
`minutes`. Everything here but the quote is for staff alone.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from decimal import Decimal

from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.trade.hours.learning import making_minutes
from corymb.trade.money.costs import Costs, Needs, Rates, StemsOf, costs_of
from corymb.trade.money.from_order import order_needs, order_quote
from corymb.trade.money.from_recipe import minutes_of, price_of_piece, rates_of, stems_of
from corymb.trade.money.guide import BesideGuide, beside_guide
from corymb.trade.money.margin import MarginChange, Standing, margin_change
from corymb.trade.money.prices import Price
from corymb.trade.money.quote import Quote, QuoteLine
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.pieces import counts_of


@dataclass(frozen=True)
class Gathered:
    """What the cut brought together for one order, in whole stems."""

    pieces: Mapping[str, int]
    """What goes into the pieces, stand-ins among it, without spare."""
    taken: Mapping[str, int]
    """All that was cut and bought in for it: pieces, spare, and what round bunches leave over."""
    bought: Mapping[str, int] = field(default_factory=dict)
    """How many of those taken were bought in."""


@dataclass(frozen=True)
class PaidLine:
    """One line of an order: what a piece works out at, and what is asked for it."""

    line: DueLine
    price: Price
    quoted: QuoteLine
    guide: BesideGuide | None
    """For a regular piece, made up, that has a guide price."""


@dataclass(frozen=True)
class Paid:
    """An order's money."""

    lines: tuple[PaidLine, ...]
    quote: Quote
    minutes: Decimal
    """Of making, as reckoned here or as the order tells."""
    costs: Costs
    """Head by head, at the last stage that is known."""
    written: Standing
    change: MarginChange | None
    """What swaps and spare did, where the cut is known."""
    made: Standing | None
    """With what was used, where the order tells."""

    @property
    def standing(self) -> Standing:
        """The price beside its cost, at the last stage that is known."""
        return self.made or (self.change.after if self.change else self.written)


def paid(due: Due, studio: Studio, gathered: Gathered | None = None) -> Paid:
    """What an order costs and brings. Raises ValueError when a bought stem has no `bought` price"""
    money = studio.house.money
    rates = rates_of(money)
    several = [(line.quantity, line.piece) for line in due.lines]
    quote = order_quote(several, studio.recipes, studio.stems, money)
    minutes = planned_minutes(due, studio)
    written = order_needs(several, studio.recipes, studio.stems, minutes=minutes)
    net = quote.taxed.net
    change = _change(net, written, gathered, studio, rates) if gathered else None
    really = _really(due, written, gathered, studio)
    last = really or (_as_cut(written, gathered, studio) if gathered else written)
    last_rates = rates.without_waste if gathered and not really else rates
    return Paid(
        tuple(_line(line, of, studio) for line, of in zip(due.lines, quote.lines, strict=True)),
        quote,
        last.minutes,
        costs_of(last, last_rates),
        Standing(net, costs_of(written, rates).total),
        change,
        Standing(net, costs_of(really, rates).total) if really else None,
    )


def planned_minutes(due: Due, studio: Studio) -> Decimal:
    """How long one pair of practised hands makes at it."""
    return Decimal(
        sum(
            making_minutes(float(minutes_of(line.piece, studio.recipes)), line.quantity)
            for line in due.lines
            if not line.piece.in_buckets
        )
    )


def _line(line: DueLine, quoted: QuoteLine, studio: Studio) -> PaidLine:
    piece = line.piece
    price = price_of_piece(piece, studio.recipes, studio.stems, studio.house.money)
    guide = beside_guide(piece.guide, price.shown) if piece == piece.regular else None
    return PaidLine(line, price, quoted, guide)


def _change(
    net: Decimal, written: Needs, gathered: Gathered, studio: Studio, rates: Rates
) -> MarginChange:
    cut = _as_cut(written, gathered, studio).stems
    return margin_change(net, written, _in_the_pieces(gathered, studio), cut, rates)


def _in_the_pieces(gathered: Gathered, studio: Studio) -> tuple[StemsOf, ...]:
    """What goes into the pieces; what was bought in goes in before what was cut."""
    bought = {
        stem: min(count, gathered.bought.get(stem, 0)) for stem, count in gathered.pieces.items()
    }
    return stems_of(gathered.pieces, studio.stems, bought)


def _as_cut(written: Needs, gathered: Gathered, studio: Studio) -> Needs:
    return replace(written, stems=stems_of(gathered.taken, studio.stems, gathered.bought))


def _really(due: Due, written: Needs, gathered: Gathered | None, studio: Studio) -> Needs | None:
    """What went in by the order's own word, stems or minutes or both; None without a word."""
    order = due.order
    if not isinstance(order, Order) or not (order.used or order.minutes):
        return None
    went_in = {**counts_of([(line.quantity, line.piece) for line in due.lines]), **order.used}
    bought = gathered.bought if gathered else {}
    few = {stem: min(count, bought.get(stem, 0)) for stem, count in went_in.items()}
    return replace(
        written,
        stems=stems_of(went_in, studio.stems, few),
        minutes=written.minutes if order.minutes is None else Decimal(order.minutes),
    )
