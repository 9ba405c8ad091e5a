"""The studio's own pages of text."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.site.pages.page import Making, Page
from corymb.views.compose import addresses
from corymb.views.compose.prose import page_view, pages_shown


def pages(making: Making) -> Iterator[Page]:
    """Every page of text this audience may read."""
    for page in pages_shown(making.catalogue):
        path = addresses.of_page(page.id)
        view = page_view(page, making.writer.prose(page.markdown, path))
        frame = making.frame(path, "prose.html", page.id, view.title, view.summary)
        yield Page(frame, view, _("Page"), making.writer.words(page.markdown))
