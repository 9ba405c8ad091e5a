"""The book as a page and the files it shows, before it is printed."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property
from pathlib import Path

from corymb.language import in_language
from corymb.site import assets
from corymb.site.book.asked import Asked, NothingInBookError
from corymb.site.book.leads import anchors_of, in_book, without_dead
from corymb.site.book.styles import book_styles
from corymb.site.drawn.pictures import Pictures
from corymb.site.markdown_text import Writer
from corymb.site.one_file import one_file
from corymb.site.raster.kept_pixels import kept_raster
from corymb.site.render import render
from corymb.site.settings import SiteSettings
from corymb.studio.studio import Studio
from corymb.views.book import BookView, PageNumber
from corymb.views.compose import addresses
from corymb.views.compose.book import book_view, lessons_in, recipes_in
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.prose import Prose
from corymb.views.compose.site_frame import site_frame
from corymb.views.frame import PageFrame, SiteFrame

PAGE = "book.html"
STYLES = f"{assets.PUBLISHED}/css/book.css"
SHOWN = re.compile(r'<img [^<>]*\bsrc="(?P<path>[^":]+)"')
VIEW_BOX = re.compile(r"<svg\b[^<>]*?\b(viewBox=\"[^\"]+\")")
PICTURES = "assets/pictures/"
WIDE_PX = 1300
"""Of an arrangement's picture: 280 to an inch on A4's title page, and more elsewhere. As paths it
would be drawn again at each place, and a book of thirty weighed 18 MB and took a minute."""
MOST_BYTES = 40_000_000
"""Of a book as one file: no message carries it, but every browser opens it."""


@dataclass(frozen=True)
class Book:
    """A book that can be put on paper; `numbers` are its pages as far as they are known."""

    language: str
    frame: SiteFrame
    view: BookView
    shared: Mapping[str, bytes]
    drawn: Mapping[str, str]
    kept: Path
    numbers: Mapping[str, int] = field(default_factory=dict)

    def with_numbers(self, numbers: Mapping[str, int]) -> Book:
        """The same book with these page numbers in its contents and index."""
        each = tuple(PageNumber(anchor, page) for anchor, page in numbers.items())
        return replace(self, view=replace(self.view, numbers=each), numbers=numbers)

    @cached_property
    def page(self) -> str:
        """The book's HTML."""
        title = self.view.title
        frame = PageFrame(PAGE, PAGE, "", title, "", indexed=False)
        with in_language(self.language):
            return without_dead(render(self.frame, frame, self.view).decode())

    @property
    def files(self) -> dict[str, bytes]:
        """The page and all that it shows, by path."""
        html, shown = self.page, {}
        for path in self._shown:
            if path.startswith(PICTURES):
                html = html.replace(f'"{path}"', f'"{path}.jpg"')
                shown[f"{path}.jpg"] = kept_raster(self.kept, self.drawn[path], WIDE_PX, "jpeg")
            else:
                shown[path] = self.drawn[path].encode()
        return {PAGE: html.encode(), **self.shared, **shown}

    @property
    def bare_files(self) -> dict[str, bytes]:
        """The same with empty drawings of the same size: enough to see what is on which page."""
        shown = {path: _emptied(self.drawn[path]) for path in self._shown}
        return {PAGE: self.page.encode(), **self.shared, **shown}

    @property
    def one_file(self) -> bytes:
        """The book as one file, for a browser to print by hand. Raises TooLargeError."""
        return one_file(PAGE, self.files, MOST_BYTES)

    @cached_property
    def _shown(self) -> list[str]:
        return list(dict.fromkeys(found["path"] for found in SHOWN.finditer(self.page)))


def _emptied(svg: str) -> bytes:
    found = VIEW_BOX.search(svg)
    box = found[1] if found else ""
    return f'<svg xmlns="http://www.w3.org/2000/svg" {box}/>'.encode()


def book_of(
    studio: Studio, settings: SiteSettings, pictures: Pictures, asked: Asked, today: date
) -> Book:
    """The book that is asked for. Raises NothingInBookError."""
    catalogue = Catalogue(
        studio,
        asked.audience,
        today,
        drawings=pictures.drawings,
        heads=pictures.heads,
        plans=pictures.plans,
        sizes=pictures.sizes,
    )
    if not recipes_in(catalogue, asked.styles):
        raise NothingInBookError(
            "There is no recipe for this book yet: begin one with `corymb new recipe`, or take "
            "`draft` out of one that is ready."
        )
    with in_language(studio.house.language):
        view = book_view(catalogue, _prose(catalogue, settings, asked), asked.styles)
        heads = [chapter.name for chapter in view.chapters]
        return Book(
            studio.house.language,
            site_frame(catalogue, "/"),
            view,
            _shared(view, book_styles(asked.paper, heads)),
            pictures.drawn,
            settings.cache_folder / "book",
        )


def _prose(catalogue: Catalogue, settings: SiteSettings, asked: Asked) -> dict[str, Prose]:
    """The lessons of the book, with their links within it."""
    writer = Writer(settings.markdown_extensions, settings.markdown_configs)
    anchors = anchors_of(catalogue)
    prose = {}
    for lesson in lessons_in(catalogue, recipes_in(catalogue, asked.styles)):
        path = addresses.of_lesson(lesson.id)
        prose[lesson.id] = in_book(writer.prose(lesson.markdown, path), path, anchors)
    return prose


def _shared(view: BookView, styles: bytes) -> dict[str, bytes]:
    recipes = [recipe for chapter in view.chapters for recipe in chapter.recipes]
    fonts = {
        address: file.read_bytes()
        for address, file in assets.theme_files()
        if file.suffix == ".woff2"
    }
    tints = assets.tint_rules(recipe.tint for recipe in recipes if recipe.tint)
    return {STYLES: styles, "assets/tints.css": tints, **fonts}
