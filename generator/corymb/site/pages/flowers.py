"""All flowers, and each."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses, lists
from corymb.views.compose.stems import stem_card, stem_view
from corymb.views.compose.trade_words import trade_word
from corymb.views.pieces import Link

SECTION = "flowers"


def pages(making: Making) -> Iterator[Page]:
    """The list and every stem."""
    above = Link(_("Flowers"), addresses.FLOWERS)
    about = _("What grows here, and when it can be cut.")
    frame = making.frame(above.href, "flowers.html", SECTION, above.label, about)
    yield Page(frame, lists.flowers_view(making.catalogue), _("Page"))
    for stem in making.catalogue.studio.stems.values():
        view = stem_view(making.catalogue, stem)
        about = view.about or f"{view.name}: {view.season.sentence}"
        path = addresses.of_stem(stem.id)
        frame = making.frame(path, "stem.html", SECTION, view.name, about, crumbs=[above])
        colours = stem_card(making.catalogue, stem).colour_words
        words = (view.botanical, view.group, *(trade_word("colour", each) for each in colours))
        yield Page(frame, view, _("Flower"), " ".join(words))
