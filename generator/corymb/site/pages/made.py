"""The portfolio, and each piece of made work."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site import structured_data
from corymb.site.pages.page import Making, Page, Planned, Share
from corymb.views.compose import addresses
from corymb.views.compose.made import made_list_view, made_view
from corymb.views.compose.tint import tint_of
from corymb.views.pieces import Link

SECTION = "made"


def pages(making: Making) -> Iterator[Planned]:
    """The list and every piece this audience may see; nothing where there is none."""
    pieces = making.catalogue.made()
    if pieces:
        yield Planned.of(_all)
    for piece in pieces:
        yield Planned.of(_piece, piece.id)


@kept
def _all(making: Making) -> Page:
    above, about = _list(), _("Pieces we have made, each with the recipe it was made from.")
    frame = making.frame(above.href, "made_list.html", SECTION, above.label, about)
    return Page(frame, made_list_view(making.catalogue), _("Page"))


def _list() -> Link:
    return Link(_("Made here"), addresses.MADE)


@kept
def _piece(making: Making, made_id: str) -> Page:
    view = made_view(making.catalogue, making.catalogue.studio.made[made_id])
    path = addresses.of_made(made_id)
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
