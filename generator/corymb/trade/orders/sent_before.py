"""What did a client get the last four times?

For a visit of a standing order: its visits before, laid out or really sent. For any other order:
the earlier orders of the same client, by name.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.trade.orders.due import Dues
from corymb.trade.orders.laid_out import LATELY
from corymb.trade.orders.pieces import piece_of


@dataclass(frozen=True)
class Sent:
    """What was sent on a day: looks by id, and the order's name where it was one of its own."""

    day: date
    looks: tuple[str, ...]
    name: str = ""


def visits_before(dues: Dues, standing: str, day: date) -> tuple[Sent, ...]:
    """The last four visits of a standing order before a day, the latest first."""
    past = list(dues.history(standing, day).items())[-LATELY:]
    return tuple(Sent(when, (look,)) for when, look in reversed(past))


def orders_before(studio: Studio, order: Order, day: date) -> tuple[Sent, ...]:
    """The last four orders of the same client before a day, the latest first."""
    past = sorted(_of_client(studio, order, day), key=lambda sent: sent.day)[-LATELY:]
    return tuple(reversed(past))


def _of_client(studio: Studio, order: Order, day: date) -> Iterator[Sent]:
    client = order.client.name.casefold()
    for other in studio.orders.values():
        if other.date < day and other.client.name.casefold() == client:
            looks = (piece_of(line, studio.recipes).look.id for line in other.lines)
            yield Sent(other.date, tuple(dict.fromkeys(looks)), other.name)
