"""What becomes of an order on another day, or of a standing order's visit as an order of its own?

All that a studio wants to know before it says yes: what can be made and how, what it costs now,
what was sent lately, whether it keeps, what was learnt last time. Like the order's own page it
asks what stands on the day of the cut, which may lie in the week before that of the order's day.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
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
from corymb.trade.orders.timed import timed
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.watch import cell_of


@dataclass(frozen=True)
class Repeated:
    """An order on another day."""

    old: Order | StandingOrder
    day: date
    cut: date
    """The day of its cut, whose week its lines are asked for; its own where nothing is cut."""
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
    def cut_week(self) -> IsoWeek:
        """The ISO week it is cut in."""
        return IsoWeek.of(self.cut)

    @property
    def able(self) -> tuple[LineAgain, ...]:
        """The lines that can be made."""
        return tuple(line for line in self.lines if line.can)

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
        standing = self._visit_of(old, day)
        before = [(line.quantity, piece_of(line, self.studio.recipes)) for line in old.lines]
        due_lines = tuple(DueLine(number, *each) for number, each in enumerate(before, 1))
        cut = self._cut(self._as_due(old, day, due_lines, standing))
        lines = tuple(self._again(line, cut) for line in due_lines)
        laid = self._laid(standing, day)
        if laid and self._best(laid, cut).state != "none":
            turns = self.studio.standing_orders[standing].rotation
            lines = tuple(_with_turn(line, turns, laid) for line in lines)
        return self._told(old, day, cut, lines, before, standing)

    def visit(self, known_as: str, day: date) -> Repeated | None:
        """A standing order's visit on a day, with the look laid out for it; None without one."""
        order = self.studio.standing_orders[known_as]
        own = (due for due in self.dues.between(day, day) if due.id == f"{known_as}--{day}")
        due = next(own, None)
        if due is None:
            return None
        cut = self._cut(due)
        turn = len(due.lines) if due.laid else 0
        lines = tuple(
            self._turn(line, cut) if line.number == turn else self._again(line, cut)
            for line in due.lines
        )
        return self._told(order, day, cut, lines, self._last(known_as, order, day), known_as)

    def _cut(self, due: Due) -> date:
        """The day on which its cut begins; its own where nothing is cut."""
        cut = timed(due, self.studio, self.makeable).cut_from
        return cut.date() if cut else due.day

    def _again(self, line: DueLine, cut: date) -> LineAgain:
        week = IsoWeek.of(cut)
        return line_again(line.number, line.quantity, line.piece, week, self.studio, self.makeable)

    def _turn(self, line: DueLine, cut: date) -> LineAgain:
        """The line of a rotation: its look was chosen already."""
        best = self._best(line.piece.look, cut)
        found = LineAgain(line.number, line.quantity, line.piece, best)
        return found if found.can else self._again(line, cut)

    def _best(self, look: Look, cut: date) -> Best:
        return best_of({"": look}, self.makeable)[cell_of(IsoWeek.of(cut)) - 1]

    def _laid(self, standing: str, day: date) -> Look | None:
        """The look that a rotation would send on a day."""
        due = self.dues.between(day, day) if standing else ()
        own = next((each for each in due if each.id == f"{standing}--{day}"), None)
        return own.laid.best.look if own and own.laid else None

    def _told(
        self,
        old: Order | StandingOrder,
        day: date,
        cut: date,
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
        made = [(line.quantity, line.made) for line in lines if line.can]
        due_lines = tuple(DueLine(line.number, line.quantity, line.piece) for line in lines)
        as_due = self._as_due(old, day, due_lines, standing)
        return Repeated(
            old,
            day,
            cut,
            lines,
            standing,
            after,
            repriced(old, day, before, made, self.studio),
            sent,
            lasting(as_due, self.studio, self.makeable),
            tuple(x for x in self.dues.between(day, day) if x.id != f"{standing}--{day}"),
            self._laid(standing, day),
        )

    def _as_due(
        self,
        old: Order | StandingOrder,
        day: date,
        lines: tuple[DueLine, ...],
        standing: str,
    ) -> Due:
        """As it will be due once it is written out."""
        spare, after = self.dues.spare_of(old), self.dues.next_after(standing, day)
        return Due(f"{old.id}--{day}", old, day, lines, spare, standing, after)

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


def _with_turn(line: LineAgain, turns: Sequence[str], laid: Look) -> LineAgain:
    """With what the rotation would send, where a line of it can't be made."""
    ours = not line.can and line.old.recipe.id in turns
    return replace(line, put=laid) if ours else line
