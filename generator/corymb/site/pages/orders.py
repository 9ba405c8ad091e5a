"""For staff: all orders, and each on its day."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.orders.listed import orders_view
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.orders import OrderView
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Page]:
    """The list and every order on its day, on the staff's site alone."""
    if not making.catalogue.staff:
        return
    above = Link(_("Orders"), addresses.ORDERS)
    about = _("What is wanted when: this week and next, to come, past, and what comes round again.")
    frame = making.frame(above.href, "orders.html", SECTION, above.label, about)
    # L10N: what else the page is looked for by, in a search of the site.
    words = _("orders standing visits")
    yield Page(frame, orders_view(making.catalogue), _("Page"), words)
    for due in shown_dues(making.catalogue):
        view = order_view(making.catalogue, due)
        frame = making.frame(
            addresses.of_due(due.id),
            "order.html",
            SECTION,
            f"{view.name}, {view.when}",
            "; ".join(line.look.label for line in view.lines),
            crumbs=[above, *([view.standing] if view.standing else [])],
        )
        yield Page(frame, view, _("Order"), _words(view))


def _words(view: OrderView) -> str:
    """What else it is looked for by: where, whose, and what was written of it."""
    return " ".join(fact.value for fact in view.told)
