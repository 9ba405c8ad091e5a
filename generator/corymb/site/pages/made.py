"""The portfolio, and each piece of made work."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site import structured_data
from corymb.site.pages.page import Making, Page, Share
from corymb.views.compose import addresses
from corymb.views.compose.made import made_list_view, made_view
from corymb.views.compose.tint import tint_of
from corymb.views.pages import MadeView
from corymb.views.pieces import Link

SECTION = "made"


def pages(making: Making) -> Iterator[Page]:
    """The list and every piece this audience may see; nothing where there is none."""
    pieces = making.catalogue.made()
    if not pieces:
        return
    above, about = _list(), _("Pieces we have made, each with the recipe it was made from.")
    frame = making.frame(above.href, "made_list.html", SECTION, above.label, about)
    yield Page(frame, made_list_view(making.catalogue), _("Page"))
    for made in pieces:
        view = made_view(making.catalogue, made)
        yield _page_of(making, addresses.of_made(made.id), view)


def _list() -> Link:
    return Link(_("Made here"), addresses.MADE)


def _page_of(making: Making, path: str, view: MadeView) -> Page:
    share = Share.of(view.photos[0])
    frame = making.frame(
        path,
        "made.html",
        SECTION,
        view.title,
        view.about or share.alt,
        crumbs=[_list()],
        data=[structured_data.made_work(view, making.absolute(share.href), making.absolute(path))],
        share=share,
        tint=tint_of(view.recipe.band),
    )
    return Page(frame, view, _("Made here"), f"{view.when} {view.about}")
