"""All flowers, and each."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses, lists
from corymb.views.compose.stems import stem_card, stem_view
from corymb.views.compose.trade_words import trade_word
from corymb.views.pieces import Link

SECTION = "flowers"


def pages(making: Making) -> Iterator[Planned]:
    """The list and every stem."""
    yield Planned.of(_all)
    for stem_id in making.catalogue.studio.stems:
        yield Planned.of(_stem, stem_id)


def _list() -> Link:
    return Link(_("Flowers"), addresses.FLOWERS)


@kept
def _all(making: Making) -> Page:
    above = _list()
    about = _("What grows here, and when it can be cut.")
    frame = making.frame(above.href, "flowers.html", SECTION, above.label, about)
    return Page(frame, lists.flowers_view(making.catalogue), _("Page"))


@kept
def _stem(making: Making, stem_id: str) -> Page:
    stem = making.catalogue.stem(stem_id)
    view = stem_view(making.catalogue, stem)
    about = view.about or f"{view.name}: {view.season.sentence}"
    path = addresses.of_stem(stem_id)
    frame = making.frame(path, "stem.html", SECTION, view.name, about, crumbs=[_list()])
    colours = stem_card(making.catalogue, stem).colour_words
    words = (view.botanical, view.group, *(trade_word("colour", each) for each in colours))
    return Page(frame, view, _("Flower"), " ".join(words))
