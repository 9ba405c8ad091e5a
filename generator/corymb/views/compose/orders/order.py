"""What does the page of an order on its day show?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext, pgettext
from corymb.studio.models import Order
from corymb.studio.models.order import OrderBase
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given
from corymb.trade.orders.timed import Timed
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import time_words
from corymb.views.compose.light_told import order_light
from corymb.views.compose.money import money_view
from corymb.views.compose.orders.cautions import cautions_for, hot_advice
from corymb.views.compose.orders.cuts import cut_for, has_papers
from corymb.views.compose.orders.cutting import cut_share_view
from corymb.views.compose.orders.lines import line_view
from corymb.views.compose.orders.ordering import order_in
from corymb.views.compose.orders.packing import load_view, papers_of
from corymb.views.compose.orders.shown import timed_due
from corymb.views.compose.orders.timeline import timeline_view, work_view
from corymb.views.compose.orders.when import day_in_full, days_away, hours_words
from corymb.views.compose.reality import reality_view
from corymb.views.compose.trade_words import trade_word
from corymb.views.orders import OrderView
from corymb.views.pieces import Fact, Link


def order_view(catalogue: Catalogue, due: Due) -> OrderView:
    """Everything that staff must know of it, from the hour of use back to the cut."""
    of_due = timed_due(catalogue, due)
    return OrderView(
        name=due.name,
        when=day_in_full(due.day),
        days=days_away(due.day, catalogue.today),
        week=week_link(due),
        facts=_facts(catalogue, due, of_due),
        order_in=order_in(catalogue, due),
        told=(*order_facts(due.order), *_afterwards(due)),
        standing=_standing(catalogue, due),
        lines=tuple(line_view(catalogue, due, each) for each in of_due.lines),
        timeline=timeline_view(catalogue, due, of_due),
        work=work_view(catalogue, due, of_due),
        light=order_light(catalogue, due),
        cautions=cautions_for(catalogue, due, of_due),
        hot=hot_advice(catalogue, due, of_due),
        papers=papers_of(catalogue, due),
        load=load_view(catalogue, due) if has_papers(catalogue, due) else None,
        cut=cut_share_view(catalogue, due),
        money=money_view(catalogue, due),
        reality=reality_view(catalogue, due),
    )


def week_link(due: Due) -> Link:
    """The week it is wanted in."""
    return Link(_("week {week}").format(week=due.week.week), addresses.of_week(str(due.week)))


def order_facts(order: OrderBase) -> tuple[Fact, ...]:
    """What was written down of an order: where, how it gets there, whose it is, notes."""
    client = order.client
    facts = (
        Fact(order.where.place, _("Where")),
        Fact(_setting(order), _("Setting and light")),
        Fact(_handover(order), _("Handing over")),
        Fact(client.name, _("Client")),
        Fact(client.email or "", _("Write to")),
        Fact(client.phone, _("Call")),
        Fact(order.notes, _("Notes")),
        Fact(order.learnt, _("Learnt")),
    )
    return tuple(fact for fact in facts if fact.value)


def _facts(catalogue: Catalogue, due: Due, of_due: Timed) -> tuple[Fact, ...]:
    pieces = sum(line.quantity for line in due.lines)
    # L10N: a label below a number of pieces.
    label = ngettext("piece", "pieces", pieces)
    facts = [
        Fact(hours_words(of_due.hours) if due.order.hours else "", _("in use")),
        Fact(f"{pieces}", label),
        Fact(f"{stems_for(catalogue, due, of_due)}", _("stems, spare among them")),
        Fact(time_words(of_due.minutes) if of_due.minutes else "", _("to make, by one")),
    ]
    return tuple(fact for fact in facts if fact.value)


def stems_for(catalogue: Catalogue, due: Due, of_due: Timed) -> int:
    """What an order gets by its cut; before that is planned, what will have to be cut."""
    if not has_papers(catalogue, due):
        return of_due.stems
    return sum(given(cut_for(catalogue, due), due.id).values())


def _setting(order: OrderBase) -> str:
    """`indoors, by candle`."""
    where = order.where
    light = trade_word("light", where.light)
    if where.light == "candle":
        light = pgettext("light", "by candle")
    return f"{trade_word('setting', where.setting)}, {light}"


def _handover(order: OrderBase) -> str:
    words = _("The client collects") if order.handover == "collection" else _("We deliver")
    return f"{words}, {order.vehicle}" if order.vehicle else words


def _afterwards(due: Due) -> tuple[Fact, ...]:
    if not isinstance(due.order, Order) or due.order.minutes is None:
        return ()
    return (Fact(time_words(due.order.minutes), _("Making really took")),)


def _standing(catalogue: Catalogue, due: Due) -> Link | None:
    standing = catalogue.studio.standing_orders.get(due.standing)
    return Link(standing.name, addresses.of_standing(due.standing)) if standing else None
