"""For staff: all orders, and each on its day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.orders.listed import orders_view
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.orders import OrderView
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Planned]:
    """The list and every order on its day, on the staff's site alone."""
    if not making.catalogue.staff:
        return
    yield Planned.of(_all)
    for due in shown_dues(making.catalogue):
        yield Planned.of(_order, due.id)


def _list() -> Link:
    return Link(_("Orders"), addresses.ORDERS)


@kept
def _all(making: Making) -> Page:
    above = _list()
    about = _("What is wanted when: this week and next, to come, past, and what comes round again.")
    frame = making.frame(above.href, "orders.html", SECTION, above.label, about)
    # L10N: what else the page is looked for by, in a search of the site.
    words = _("orders standing visits")
    return Page(frame, orders_view(making.catalogue), _("Page"), words)


@kept
def _order(making: Making, due_id: str) -> Page:
    due = next(each for each in shown_dues(making.catalogue) if each.id == due_id)
    view = order_view(making.catalogue, due)
    frame = making.frame(
        addresses.of_due(due_id),
        "order.html",
        SECTION,
        f"{view.name}, {view.when}",
        "; ".join(line.look.label for line in view.lines),
        crumbs=[_list(), *([view.standing] if view.standing else [])],
    )
    return Page(frame, view, _("Order"), _words(view))


def _words(view: OrderView) -> str:
    """What else it is looked for by: where, whose, and what was written of it."""
    return " ".join(fact.value for fact in view.told)
