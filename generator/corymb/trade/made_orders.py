"""What did the recipes ask for the orders that have been made? What `reality` learns from.

A piece from the mix has its flowers from the other pieces, so it asks for no stems of its own.
Sizes of a look count as the look. An order of which some went in buckets tells of its stems, but
not of its time: packing and unpacking stand in no recipe, and nobody wrote them down apart.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

from corymb.studio.models import Order, Recipe
from corymb.studio.models.order import OrderLine
from corymb.trade.hours.learning import making_minutes
from corymb.trade.money.from_recipe import minutes_of
from corymb.trade.orders.pieces import piece_of
from corymb.trade.reality import Correction, MadeLine, MadeOrder, corrections
from corymb.trade.written_places import Place, entries_of

Making = Callable[[float, int], int]
"""The minutes for so many pieces, from those of one."""


def made_orders(
    orders: Iterable[Order], recipes: Mapping[str, Recipe], making: Making = making_minutes
) -> tuple[MadeOrder, ...]:
    """The orders that carry what really went in, or how long it took."""
    return tuple(
        MadeOrder(
            order.id,
            tuple(_made_line(line, recipes, making) for line in order.lines),
            order.used,
            None if any(line.in_buckets for line in order.lines) else order.minutes,
        )
        for order in orders
        if order.used or order.minutes
    )


def learnt(
    orders: Iterable[Order], recipes: Mapping[str, Recipe]
) -> tuple[tuple[Correction, Place | None], ...]:
    """What the orders speak against, each with where it is written; None for no one place."""
    entries = {entry.written: entry.place for entry in entries_of(recipes)}
    found = corrections(made_orders(orders, recipes), entries)
    return tuple((each, entries[each.written]) for each in found)


def _made_line(line: OrderLine, recipes: Mapping[str, Recipe], making: Making) -> MadeLine:
    piece = piece_of(line, recipes)
    counts = {known_as: count * line.quantity for known_as, count in piece.counts.items()}
    minutes = making(float(minutes_of(piece, recipes)), line.quantity)
    return MadeLine(piece.look.id, line.quantity, counts, minutes)
