"""For staff: the cut list of each cutting day that is looked at."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.orders.cutting import cut_list_view
from corymb.views.pieces import Link

SECTION = "orders"


def pages(making: Making) -> Iterator[Planned]:
    """Every cutting day that is looked at, on the staff's site alone."""
    for day in making.catalogue.cut_days:
        yield Planned.of(_day, str(day.day))


@kept
def _day(making: Making, on: str) -> Page:
    day = next(each for each in making.catalogue.cut_days if str(each.day) == on)
    view = cut_list_view(making.catalogue, day)
    frame = making.frame(
        addresses.of_cut(day.day),
        "cut.html",
        SECTION,
        _("Cut list, {day}").format(day=view.when),
        "; ".join(share.name for share in view.shares),
        crumbs=[Link(_("Orders"), addresses.ORDERS)],
    )
    # L10N: what else a cut list is looked for by, in a search of the site.
    words = _("cut list beds buckets swaps to buy missing")
    return Page(frame, view, _("Cut list"), words)
