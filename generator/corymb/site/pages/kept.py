"""What a client kept: a page for clients alone, which every phone fills by itself."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.kept import kept_view


def pages(making: Making) -> Iterator[Planned]:
    """On the clients' site alone."""
    if not making.catalogue.staff:
        yield Planned.of(_page)


@kept
def _page(making: Making) -> Page:
    """Not to be found by a search: without a list it is empty."""
    title = _("What you kept")
    frame = making.frame(addresses.KEPT, "kept.html", "", title, "", indexed=False)
    return Page(frame, kept_view(making.catalogue), "")
