"""Which orders does the list show: this week and next, coming, past, and standing?"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.studio.models import StandingOrder
from corymb.studio.values.dates import IsoWeek
from corymb.trade.orders.due import Due
from corymb.trade.orders.laid_out import thin_weeks
from corymb.trade.orders.looked_at import DAYS_AHEAD, WEEKS_BACK
from corymb.trade.orders.timed import Timed
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.lines import line_words
from corymb.views.compose.orders.order import week_link
from corymb.views.compose.orders.repeats import repeats_words
from corymb.views.compose.orders.shown import shown_dues, timed_due
from corymb.views.compose.orders.when import day_in_full, day_span
from corymb.views.compose.trade_words import trade_word
from corymb.views.orders import OrderRow, OrdersView, StandingRow
from corymb.views.pieces import Link


def orders_view(catalogue: Catalogue) -> OrdersView:
    """One-off orders all; of standing ones the visits of a few weeks, the rest on their pages."""
    this_week = IsoWeek.of(catalogue.today)
    next_week = this_week.plus(1)
    dues = [due for due in shown_dues(catalogue) if _is_near(catalogue, due)]
    later = [due for due in dues if due.week > next_week]
    before = [due for due in dues if due.week < this_week]
    return OrdersView(
        this_week=tuple(order_row(catalogue, due) for due in dues if due.week == this_week),
        next_week=tuple(order_row(catalogue, due) for due in dues if due.week == next_week),
        coming=tuple(order_row(catalogue, due) for due in later),
        past=tuple(order_row(catalogue, due) for due in reversed(before)),
        standing=tuple(
            _standing_row(catalogue, known_as, order)
            for known_as, order in catalogue.studio.standing_orders.items()
        ),
    )


def order_row(catalogue: Catalogue, due: Due) -> OrderRow:
    """An order on its day, in a list."""
    return OrderRow(
        order=Link(due.name, addresses.of_due(due.id)),
        when=day_in_full(due.day),
        week=week_link(due),
        what=tuple(line_words(catalogue, line) for line in due.lines),
        place=due.order.where.place,
        handover=trade_word("handover", due.order.handover),
        warns=warns_of(catalogue, due),
    )


def warns_of(catalogue: Catalogue, due: Due) -> tuple[str, ...]:
    """What to look at before it is too late; nothing for what is past."""
    if due.day < catalogue.today:
        return ()
    return tuple(_warns(timed_due(catalogue, due)))


def _warns(of_due: Timed) -> Iterator[str]:
    states = [line.answer.state for line in of_due.lines]
    never, swapped = states.count("none"), states.count("swaps")
    if never:
        told = ngettext(
            "{number} look can't be made then", "{number} looks can't be made then", never
        )
        yield told.format(number=never)
    if swapped:
        told = ngettext("{number} look with swaps", "{number} looks with swaps", swapped)
        yield told.format(number=swapped)
    kinds = {flag.kind for flag in of_due.timeline.flags}
    if "too late" in kinds:
        yield _("late")
    if "vase life" in kinds:
        yield _("some stems don't keep so long")


def _is_near(catalogue: Catalogue, due: Due) -> bool:
    """One-off orders always are; visits so many weeks before and after the day of the build."""
    apart = abs(due.day - catalogue.today)
    return due.id in catalogue.studio.orders or apart <= timedelta(weeks=WEEKS_BACK)


def _standing_row(catalogue: Catalogue, known_as: str, order: StandingOrder) -> StandingRow:
    after = catalogue.dues.next_after(known_as, catalogue.today - timedelta(days=1))
    until = catalogue.today + timedelta(days=DAYS_AHEAD)
    ahead = [
        each
        for each in catalogue.dues.laid_out(known_as, until)
        if catalogue.today <= each.visit.day <= until
    ]
    return StandingRow(
        order=Link(order.name, addresses.of_standing(known_as)),
        repeats=repeats_words(order.repeats),
        runs=day_span(order.from_, order.until),
        next_visit=_next_link(catalogue, known_as) if after else None,
        thin=len(thin_weeks(ahead)),
    )


def _next_link(catalogue: Catalogue, known_as: str) -> Link | None:
    """The page of the next visit that has one."""
    dues = shown_dues(catalogue)
    coming = (due for due in dues if due.standing == known_as and due.day >= catalogue.today)
    due = next(coming, None)
    return Link(day_in_full(due.day), addresses.of_due(due.id)) if due else None
