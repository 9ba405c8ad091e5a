"""For staff: each standing order, with its year laid out."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.orders.standing import standing_view
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Planned]:
    """Every standing order, on the staff's site alone."""
    if making.catalogue.staff:
        for known_as in making.catalogue.studio.standing_orders:
            yield Planned.of(_standing, known_as)


@kept
def _standing(making: Making, known_as: str) -> Page:
    view = standing_view(making.catalogue, known_as)
    frame = making.frame(
        addresses.of_standing(known_as),
        "standing.html",
        SECTION,
        view.name,
        _("A standing order, {repeats}: its year laid out.").format(repeats=view.repeats),
        crumbs=[Link(_("Orders"), addresses.ORDERS)],
    )
    words = " ".join(fact.value for fact in view.told)
    return Page(frame, view, _("Standing order"), words)
