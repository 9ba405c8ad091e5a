"""For staff: all orders, and each on its day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.orders.listed import orders_view
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.orders import OrderView
from corymb.views.pieces import Link

SECTION = "orders"
LIST = Link("Orders", addresses.ORDERS)
ABOUT = "What is wanted when: this week and next, to come, past, and what comes round again."


def pages(making: Making) -> Iterator[Page]:
    """The list and every order on its day, on the staff's site alone."""
    if not making.catalogue.staff:
        return
    frame = making.frame(LIST.href, "orders.html", SECTION, LIST.label, ABOUT)
    yield Page(frame, orders_view(making.catalogue), "Page", "orders standing visits")
    for due in shown_dues(making.catalogue):
        view = order_view(making.catalogue, due)
        above = [LIST, *([view.standing] if view.standing else [])]
        frame = making.frame(
            addresses.of_due(due.id),
            "order.html",
            SECTION,
            f"{view.name}, {view.when}",
            "; ".join(line.look.label for line in view.lines),
            crumbs=above,
        )
        yield Page(frame, view, "Order", _words(view))


def _words(view: OrderView) -> str:
    """What else it is looked for by: where, whose, and what was written of it."""
    return " ".join(fact.value for fact in view.told)
