"""Pages that only lead on: the search, and those for what isn't there, or not on this phone."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses, lists


def pages(making: Making) -> Iterator[Page]:
    """Neither is to be found by a search, here or elsewhere."""
    frame = making.frame(addresses.SEARCH, "search.html", "", _("Search"), "", indexed=False)
    yield Page(frame, lists.search_view(), "")
    title = _("There is nothing here")
    frame = making.frame(addresses.NOT_FOUND, "404.html", "", title, "", indexed=False)
    yield Page(frame, lists.not_found_view(making.catalogue), "")
    if making.catalogue.staff:
        title = _("Not kept on this phone")
        frame = making.frame(addresses.NO_SIGNAL, "no_signal.html", "", title, "", indexed=False)
        yield Page(frame, lists.no_signal_view(), "")
