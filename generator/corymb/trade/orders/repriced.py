"""What does an order cost and bring in its new week, beside what it did?

Both at today's costs and guide prices: what they were last year isn't kept in the studio's files.
So the difference is what the variants and swaps make. What was really used or took longer is left
out; see `trade.reality` for that.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from fractions import Fraction

from corymb.studio.models import Order, StandingOrder
from corymb.studio.studio import Studio
from corymb.trade.money.costs import costs_of
from corymb.trade.money.from_recipe import needs_of, rates_of
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.paid import paid, planned_minutes
from corymb.trade.orders.pieces import Piece

Several = Sequence[tuple[int, Piece]]


@dataclass(frozen=True)
class Sums:
    """What so many pieces come to. Costs are for staff alone."""

    stems: tuple[Decimal, ...]
    """What the stems of each line cost, with their waste."""
    asked: tuple[Decimal, ...]
    """What each line is quoted at."""
    cost: Decimal
    """Of all of it, with sundries, labour and overhead."""
    quote: Decimal
    """What the client pays, tax and all."""
    minutes: Decimal
    """Of making, as the recipes reckon."""


@dataclass(frozen=True)
class Repriced:
    """The same order before and now; `before` is None where nothing was sent before."""

    before: Sums | None
    now: Sums


def repriced(
    order: Order | StandingOrder, day: date, before: Several, now: Several, studio: Studio
) -> Repriced:
    """The sums of both."""
    return Repriced(
        _sums(order, day, before, studio) if before else None, _sums(order, day, now, studio)
    )


def _sums(order: Order | StandingOrder, day: date, several: Several, studio: Studio) -> Sums:
    lines = tuple(DueLine(number, *each) for number, each in enumerate(several, 1))
    due = Due(order.id, order, day, lines, Fraction(0))
    of_all = paid(due, studio)
    rates = rates_of(studio.house.money)
    return Sums(
        tuple(
            costs_of(needs_of(piece, studio.recipes, studio.stems).times(quantity), rates).stems
            for quantity, piece in several
        ),
        tuple(line.quoted.total for line in of_all.lines),
        of_all.written.cost,
        of_all.quote.to_pay,
        planned_minutes(due, studio),
    )
