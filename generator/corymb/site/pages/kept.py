"""What a client kept: a page for clients alone, which every phone fills by itself."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.kept import kept_view


def pages(making: Making) -> Iterator[Page]:
    """Not to be found by a search: without a list it is empty."""
    if making.catalogue.staff:
        return
    title = _("What you kept")
    frame = making.frame(addresses.KEPT, "kept.html", "", title, "", indexed=False)
    yield Page(frame, kept_view(making.catalogue), "")
