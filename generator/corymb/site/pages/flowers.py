"""All flowers, and each."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses, lists
from corymb.views.compose.stems import stem_card, stem_view
from corymb.views.pieces import Link

SECTION = "flowers"
LIST = Link("Flowers", addresses.FLOWERS)
ABOUT = "What grows here, and when it can be cut."


def pages(making: Making) -> Iterator[Page]:
    """The list and every stem."""
    frame = making.frame(LIST.href, "flowers.html", SECTION, LIST.label, ABOUT)
    yield Page(frame, lists.flowers_view(making.catalogue), "Page")
    for stem in making.catalogue.studio.stems.values():
        view = stem_view(making.catalogue, stem)
        about = view.about or f"{view.name}: {view.season.sentence}"
        path = addresses.of_stem(stem.id)
        frame = making.frame(path, "stem.html", SECTION, view.name, about, crumbs=[LIST])
        words = " ".join(
            (view.botanical, view.group, *stem_card(making.catalogue, stem).colour_words)
        )
        yield Page(frame, view, "Flower", words)
