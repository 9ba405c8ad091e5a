"""A printed book with bookmarks beside it: its chapters, and their recipes and lessons below them.

Chromium would make some of all headings, so that every recipe had a dozen, and says those at the
top of a page twice; ours are those of the contents.
"""

from __future__ import annotations

import io
import logging
from collections.abc import Iterator, Mapping

from pypdf import PdfReader, PdfWriter
from pypdf.generic import IndirectObject

from corymb.language import gettext as _
from corymb.site.quick_templates import typeset
from corymb.views.book import BookView

MADE_BY = {"/Creator": "Corymb", "/Producer": "Corymb"}
"""In place of the browser's version and the system that it ran on, which no reader need know."""

Mark = IndirectObject
Marks = Iterator[tuple[str, str, list[tuple[str, str]]]]


def with_bookmarks(pdf: bytes, view: BookView, begins: Mapping[str, int]) -> bytes:
    """The book with bookmarks; `begins` tells the page of each place, counted from 1."""
    logging.getLogger("pypdf").setLevel(logging.ERROR)  # it wonders how Chromium counts objects
    writer = PdfWriter(clone_from=PdfReader(io.BytesIO(pdf)))
    writer.add_metadata(MADE_BY)
    for anchor, name, below in _marks(view):
        if anchor in begins:
            chapter = _mark(writer, name, begins[anchor])
            for place, words in below:
                if place in begins:
                    _mark(writer, words, begins[place], chapter)
    output = io.BytesIO()
    writer.write(output)
    return output.getvalue()


def _mark(writer: PdfWriter, name: str, page: int, above: Mark | None = None) -> Mark:
    title = str(typeset(name))
    return writer.add_outline_item(title=title, page_number=page - 1, parent=above, is_open=False)


def _marks(view: BookView) -> Marks:
    for chapter in view.chapters:
        recipes = [(recipe.anchor, recipe.view.name) for recipe in chapter.recipes]
        yield chapter.anchor, chapter.name, recipes
    lessons = [(lesson.anchor, lesson.view.title) for lesson in view.lessons]
    yield view.lessons_anchor, _("Lessons"), lessons
    yield view.index_anchor, _("Stems, and where they are used"), []
