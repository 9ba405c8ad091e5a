"""The studio's own pages of text."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site.pages.page import Making, Page, Planned
from corymb.views.compose import addresses
from corymb.views.compose.prose import page_view, pages_shown


def pages(making: Making) -> Iterator[Planned]:
    """Every page of text this audience may read."""
    for page in pages_shown(making.catalogue):
        yield Planned.of(_text, page.id)


@kept
def _text(making: Making, page_id: str) -> Page:
    page = making.catalogue.studio.pages[page_id]
    path = addresses.of_page(page_id)
    view = page_view(page, making.writer.prose(page.markdown, path))
    frame = making.frame(path, "prose.html", page_id, view.title, view.summary)
    return Page(frame, view, _("Page"), making.writer.words(page.markdown))
