"""The front page."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site import structured_data
from corymb.site.pages.page import Making, Page, Share
from corymb.views.compose import addresses, lists
from corymb.views.compose.tint import tint_of


def pages(making: Making) -> Iterator[Page]:
    """The page that opens the site."""
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
    yield Page(frame, view, _("Page"), site.tagline)
