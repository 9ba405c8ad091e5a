"""What does the page of a standing order show: its year laid out, and its history?"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.studio.models import StandingOrder
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.order import order_facts
from corymb.views.compose.orders.repeats import repeats_words
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.compose.orders.thin import thin_views
from corymb.views.compose.orders.visits import months_of, sent_views
from corymb.views.compose.orders.when import day_span, hours_words
from corymb.views.orders import StandingView
from corymb.views.pieces import Fact, Link


def standing_view(catalogue: Catalogue, standing_id: str) -> StandingView:
    """The visits from the day of the build on, month by month; then those that are past."""
    order = catalogue.studio.standing_orders[standing_id]
    ahead = coming_visits(catalogue, standing_id)
    return StandingView(
        name=order.name,
        repeats=repeats_words(order.repeats),
        facts=_facts(order),
        told=order_facts(order),
        rotation=tuple(_recipe(catalogue, recipe_id) for recipe_id in order.rotation),
        visits=len(ahead),
        thin=tuple(thin_views(catalogue, standing_id, ahead)),
        months=tuple(months_of(catalogue, ahead)),
        sent=tuple(sent_views(catalogue, standing_id)),
    )


def coming_visits(catalogue: Catalogue, standing_id: str) -> list[Due]:
    """Its visits that are still to come, of those that have pages."""
    dues = shown_dues(catalogue)
    return [due for due in dues if due.standing == standing_id and due.day >= catalogue.today]


def _facts(order: StandingOrder) -> tuple[Fact, ...]:
    facts = (
        Fact(day_span(order.from_, order.until), _("Runs")),
        Fact(hours_words(order.hours) if order.hours else "", _("In use")),
    )
    return tuple(fact for fact in facts if fact.value)


def _recipe(catalogue: Catalogue, recipe_id: str) -> Link:
    look = catalogue.looks[recipe_id][""]
    return Link(catalogue.studio.recipes[recipe_id].name, addresses.of_look(look))
