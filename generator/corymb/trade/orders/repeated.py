"""What becomes of an order on another day, or of a standing order's visit as an order of its own?

All that a studio wants to know before it says yes: what can be made and how, what it costs now,
what was sent lately, whether it keeps, what was learnt last time.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from corymb.studio.models import Order, StandingOrder
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.hours.visits import visits
from corymb.trade.looks import Look, look_by_id
from corymb.trade.orders.again import LineAgain, line_again
from corymb.trade.orders.due import Due, DueLine, Dues
from corymb.trade.orders.laid_out import coming_of
from corymb.trade.orders.lasting import Lasting, lasting
from corymb.trade.orders.pieces import Piece, piece_of
from corymb.trade.orders.repriced import Repriced, repriced
from corymb.trade.orders.sent_before import Sent, orders_before, visits_before
from corymb.trade.season.makeable import Makeable


@dataclass(frozen=True)
class Repeated:
    """An order on another day."""

    old: Order | StandingOrder
    day: date
    lines: tuple[LineAgain, ...]
    standing: str
    """The standing order whose visit it is, by id."""
    next_visit: date | None
    money: Repriced
    sent: tuple[Sent, ...]
    """The last four times, the latest first."""
    lasting: Lasting
    others: tuple[Due, ...] = ()
    """What else is due that day."""
    laid: Look | None = None
    """For a visit: the look that the rotation would send."""

    @property
    def week(self) -> IsoWeek:
        """The ISO week it is wanted in."""
        return IsoWeek.of(self.day)

    @property
    def running(self) -> tuple[str, ...]:
        """The looks, by id, that would be sent twice running."""
        last = self.sent[0].looks if self.sent else ()
        return tuple(dict.fromkeys(x.piece.look.id for x in self.lines if x.piece.look.id in last))


class Repeating:
    """Repeats orders of one studio."""

    def __init__(self, studio: Studio, makeable: Makeable) -> None:
        self.studio = studio
        self.makeable = makeable
        self.dues = Dues(studio, makeable)

    def order(self, old: Order, day: date) -> Repeated:
        """A one-off order on another day."""
        standing, week = self._visit_of(old, day), IsoWeek.of(day)
        lines = tuple(
            line_again(
                number,
                line.quantity,
                piece_of(line, self.studio.recipes),
                week,
                self.studio,
                self.makeable,
            )
            for number, line in enumerate(old.lines, 1)
        )
        before = [(line.quantity, line.old) for line in lines]
        return self._told(old, day, lines, before, standing)

    def visit(self, known_as: str, day: date) -> Repeated | None:
        """A standing order's visit on a day, with the look laid out for it; None without one."""
        order = self.studio.standing_orders[known_as]
        own = (due for due in self.dues.between(day, day) if due.id == f"{known_as}--{day}")
        due = next(own, None)
        if due is None:
            return None
        lines = tuple(self._line(due, number) for number in range(1, len(due.lines) + 1))
        return self._told(order, day, lines, self._last(known_as, order, day), known_as)

    def _line(self, due: Due, number: int) -> LineAgain:
        line = due.lines[number - 1]
        if due.laid is not None and number == len(due.lines):
            return LineAgain(number, line.quantity, line.piece, due.laid.best)
        return line_again(number, line.quantity, line.piece, due.week, self.studio, self.makeable)

    def _told(
        self,
        old: Order | StandingOrder,
        day: date,
        lines: tuple[LineAgain, ...],
        before: list[tuple[int, Piece]],
        standing: str,
    ) -> Repeated:
        after = self.dues.next_after(standing, day)
        if standing:
            sent = visits_before(self.dues, standing, day)
        else:
            assert isinstance(old, Order)
            sent = orders_before(self.studio, old, day)
        made = [(line.quantity, line.made) for line in lines]
        due = self.dues.between(day, day)
        own = next((each for each in due if each.id == f"{standing}--{day}"), None)
        return Repeated(
            old,
            day,
            lines,
            standing,
            after,
            repriced(old, day, before, made, self.studio),
            sent,
            lasting(self._as_due(old, day, lines, standing, after), self.studio, self.makeable),
            tuple(each for each in due if each is not own),
            own.laid.best.look if own and own.laid else None,
        )

    def _as_due(
        self,
        old: Order | StandingOrder,
        day: date,
        lines: tuple[LineAgain, ...],
        standing: str,
        after: date | None,
    ) -> Due:
        """As it will be due once it is written out."""
        due_lines = tuple(DueLine(line.number, line.quantity, line.piece) for line in lines)
        spare = self.dues.spare_of(old)
        return Due(f"{old.id}--{day}", old, day, due_lines, spare, standing, after)

    def _last(self, known_as: str, order: StandingOrder, day: date) -> list[tuple[int, Piece]]:
        """What the visit before got, in pieces."""
        sent = visits_before(self.dues, known_as, day)
        if not sent:
            return []
        fixed = [(x.quantity, piece_of(x, self.studio.recipes)) for x in order.lines]
        if not order.rotation:
            return fixed
        looks = [look_by_id(look, self.studio.recipes) for look in sent[0].looks]
        return [*fixed, *((1, Piece(self.studio.recipes[look.recipe], look)) for look in looks)]

    def _visit_of(self, old: Order, day: date) -> str:
        """The standing order whose visit a written-out one becomes on its new day."""
        if not old.visit_of:
            return ""
        client, orders = old.client.name, self.studio.standing_orders
        for known_as in (old.visit_of, *(k for k, o in orders.items() if o.client.name == client)):
            if known_as in orders and visits(coming_of(orders[known_as]), day, day):
                return known_as
        return ""
