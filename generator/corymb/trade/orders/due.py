"""What is due on which day: one-off orders, and the visits of standing ones?

A visit that was written out as an order of its own (`visit of`) is due as that order, and not a
second time.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from fractions import Fraction

from corymb.studio.models import Order, StandingOrder
from corymb.studio.models.order import OrderLine
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.hours.visits import Drawn
from corymb.trade.looks import sized
from corymb.trade.orders.laid_out import LaidOut, coming_of, laid_out
from corymb.trade.orders.pieces import Piece, Pieces
from corymb.trade.season.makeable import Makeable


@dataclass(frozen=True)
class DueLine:
    """So many of one piece."""

    number: int
    """Its place in the order, from 1."""
    quantity: int
    piece: Piece

    @property
    def counts(self) -> list[int]:
        """Whole stems of one piece, line by line of its look; for `from the mix` too."""
        return sized(self.piece.look, self.piece.recipe.sizes.get(self.piece.size))

    @property
    def wanted(self) -> dict[str, int]:
        """Whole stems to cut for all of them, by stem: nothing for what is `from the mix`."""
        return {stem: count * self.quantity for stem, count in self.piece.counts.items()}


@dataclass(frozen=True)
class Due:
    """An order on its day."""

    id: str
    """`barn-supper`, or `lantern-house--2026-09-22` for a visit."""
    order: Order | StandingOrder
    day: date
    lines: tuple[DueLine, ...]
    spare: Fraction
    standing: str = ""
    """The standing order it is a visit of, by id."""
    next_visit: date | None = None
    laid: LaidOut | None = None
    """For a visit of a rotation: how its look was chosen."""

    @property
    def name(self) -> str:
        """What the studio calls it."""
        return self.order.name

    @property
    def week(self) -> IsoWeek:
        """The ISO week it is wanted in."""
        return IsoWeek.of(self.day)


class Dues:
    """All that is due in a studio.

    A standing order is laid out from its first visit on, to the end of the year after the day
    that is asked for: what is asked for next is known then.
    """

    def __init__(self, studio: Studio, makeable: Makeable) -> None:
        self._studio = studio
        self._makeable = makeable
        self._pieces = Pieces(studio.recipes)
        self._drawn = {
            known_as: Drawn(coming_of(order)) for known_as, order in studio.standing_orders.items()
        }
        self._laid: dict[str, tuple[date, tuple[LaidOut, ...]]] = {}
        self._earlier: dict[str, dict[date, str]] = {}

    def between(self, first: date, last: date) -> tuple[Due, ...]:
        """What is due from a day to another, both included, by day and then by id."""
        found = [*self._orders(first, last), *self._visits(first, last)]
        return tuple(sorted(found, key=lambda due: (due.day, due.id)))

    def one_off(self) -> tuple[Due, ...]:
        """Every order that is no visit of a rule, by day and then by id."""
        return tuple(sorted(self._orders(date.min, date.max), key=lambda due: (due.day, due.id)))

    def laid_out(self, standing_id: str, until: date) -> tuple[LaidOut, ...]:
        """A standing order's visits until a day, each with its look; none without a rotation."""
        order = self._studio.standing_orders[standing_id]
        if not order.rotation:
            return ()
        known_until, laid = self._laid.get(standing_id, (date.min, ()))
        if known_until < until:
            sent = {**self._before(standing_id), **self.sent(standing_id)}
            ahead = date(min(until.year + 1, date.max.year), 12, 31)
            laid = laid_out(order, ahead, self._studio.recipes, self._makeable, sent)
            self._laid[standing_id] = (ahead, laid)
        return tuple(each for each in laid if each.visit.planned <= until)

    def sent(self, standing_id: str) -> dict[date, str]:
        """The looks that visits written out as orders of their own got, by day."""
        turns = self._studio.standing_orders[standing_id].rotation
        found = {}
        for order in self._written_out(standing_id):
            line = next((each for each in order.lines if each.recipe in turns), order.lines[0])
            found[order.date] = self._pieces.of(line).look.id
        return found

    def history(self, standing_id: str, until: date) -> dict[date, str]:
        """The looks of all visits before a day, really sent or laid out, the earliest first.

        Those of an earlier standing order for the same place are among them.
        """
        order = self._studio.standing_orders[standing_id]
        found = dict(self._before(standing_id))
        if order.rotation:
            laid = self.laid_out(standing_id, max([until, *order.moved]))
            found |= {each.visit.day: each.best.look.id for each in laid}
        else:
            look = self._pieces.of(order.lines[0]).look.id
            past = self._drawn[standing_id].between(order.from_, until)
            found |= dict.fromkeys((visit.day for visit in past), look)
        found |= self.sent(standing_id)
        return {day: look for day, look in sorted(found.items()) if day < until}

    def _before(self, standing_id: str) -> Mapping[date, str]:
        """What earlier standing orders of the same client sent to the same place, by day."""
        if standing_id not in self._earlier:
            start = self._studio.standing_orders[standing_id].from_
            found: dict[date, str] = {}
            for known_as, other in self._same_place(standing_id):
                if other.from_ < start:
                    found |= self.history(known_as, start)
            self._earlier[standing_id] = found
        return self._earlier[standing_id]

    def _same_place(self, standing_id: str) -> Iterator[tuple[str, StandingOrder]]:
        """The other standing orders of the same client for the same place, by id."""
        own = self._studio.standing_orders[standing_id]
        for known_as, other in self._studio.standing_orders.items():
            same = (other.client.name, other.where.place) == (own.client.name, own.where.place)
            if same and known_as != standing_id:
                yield known_as, other

    def _written_out(self, standing_id: str) -> list[Order]:
        orders = self._studio.orders.values()
        return [order for order in orders if order.visit_of == standing_id]

    def _orders(self, first: date, last: date) -> Iterator[Due]:
        for order in self._studio.orders.values():
            if first <= order.date <= last:
                lines = self._numbered(order.lines)
                known_as = order.visit_of or ""
                after = self.next_after(known_as, order.date)
                yield Due(order.id, order, order.date, lines, self.spare_of(order), known_as, after)

    def _visits(self, first: date, last: date) -> Iterator[Due]:
        for known_as, order in self._studio.standing_orders.items():
            out = {written.date for written in self._written_out(known_as)}
            # A visit planned after these days may be moved into them.
            planned_until = max([last, *order.moved])
            laid = {each.visit.day: each for each in self.laid_out(known_as, planned_until)}
            for visit in self._drawn[known_as].between(first, last):
                if visit.day not in out:
                    yield self._visit(known_as, order, visit.day, laid.get(visit.day))

    def _visit(self, known_as: str, order: StandingOrder, day: date, laid: LaidOut | None) -> Due:
        lines = self._numbered(order.lines)
        if laid is not None:
            piece = Piece(self._studio.recipes[laid.best.look.recipe], laid.best.look)
            lines = (*lines, DueLine(len(lines) + 1, 1, piece))
        after = self.next_after(known_as, day)
        return Due(
            f"{known_as}--{day}", order, day, lines, self.spare_of(order), known_as, after, laid
        )

    def next_after(self, standing_id: str, day: date) -> date | None:
        """The next visit of a standing order after a day; none where there is no such order.

        After its last one, it is the first of the standing order that follows it.
        """
        if standing_id not in self._drawn:
            return None
        visit = self._drawn[standing_id].after(day)
        if visit is not None:
            return visit.day
        start = self._studio.standing_orders[standing_id].from_
        following = [
            self._drawn[known_as].after(day)
            for known_as, other in self._same_place(standing_id)
            if other.from_ > start
        ]
        return min((each.day for each in following if each), default=None)

    def spare_of(self, order: Order | StandingOrder) -> Fraction:
        """The order's own share of spare, or the studio's habit."""
        spare = self._studio.house.cutting.spare if order.spare is None else order.spare
        return Fraction(spare.fraction)

    def _numbered(self, lines: Sequence[OrderLine]) -> tuple[DueLine, ...]:
        return tuple(
            DueLine(number, line.quantity, self._pieces.of(line))
            for number, line in enumerate(lines, 1)
        )
