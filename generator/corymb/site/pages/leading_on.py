"""Pages that only lead on: the search, and those for what isn't there, or not on this phone."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses, lists


def pages(making: Making) -> Iterator[Planned]:
    """None is to be found by a search, here or elsewhere."""
    yield Planned.of(_search)
    yield Planned.of(_not_found)
    if making.catalogue.staff:
        yield Planned.of(_no_signal)


@kept
def _search(making: Making) -> Page:
    frame = making.frame(addresses.SEARCH, "search.html", "", _("Search"), "", indexed=False)
    return Page(frame, lists.search_view(), "")


@kept
def _not_found(making: Making) -> Page:
    title = _("There is nothing here")
    frame = making.frame(addresses.NOT_FOUND, "404.html", "", title, "", indexed=False)
    return Page(frame, lists.not_found_view(making.catalogue), "")


@kept
def _no_signal(making: Making) -> Page:
    title = _("Not kept on this phone")
    frame = making.frame(addresses.NO_SIGNAL, "no_signal.html", "", title, "", indexed=False)
    return Page(frame, lists.no_signal_view(), "")
