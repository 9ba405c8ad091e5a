"""The front page."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site import structured_data
from corymb.site.pages.page import Making, Page, Planned, Share
from corymb.views.compose import addresses, lists
from corymb.views.compose.tint import tint_of


def pages(making: Making) -> Iterator[Planned]:
    """The page that opens the site."""
    yield Planned.of(_page)


@kept
def _page(making: Making) -> Page:
    site = making.site
    view = lists.home_view(making.catalogue)
    frame = making.frame(
        addresses.HOME,
        "home.html",
        "home",
        site.name,
        view.about or site.tagline,
        data=[structured_data.studio(site, view, making.canonical(addresses.HOME))],
        share=Share.of_image(view.lead.image) if view.lead else Share(),
        tint=tint_of(view.lead.band) if view.lead else None,
    )
    return Page(frame, view, _("Page"), site.tagline)
