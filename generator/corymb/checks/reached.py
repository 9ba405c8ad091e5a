"""What can a page or a lesson lead to? The other texts, and the pages of the two sites."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from pathlib import PurePosixPath
from posixpath import dirname, relpath

from corymb.checks.references import known_names
from corymb.ledger import kept
from corymb.studio.leads import Leads, leads_of
from corymb.studio.models import Page, Technique
from corymb.studio.studio import Document, Source, Studio
from corymb.studio.suggest import nearest
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.reach import pages_of

FOLDERS: dict[str, Callable[[str], str]] = {
    "pages": addresses.of_page,
    "techniques": addresses.of_lesson,
}


@dataclass(frozen=True)
class Text:
    """A page or a lesson: its file in the studio's folder, its page, and what it leads to."""

    file: str
    address: str
    source: Source
    first_line: int
    leads: Leads
    reader: str
    """`everyone` or `staff`; neither while that can't be read."""


@dataclass(frozen=True)
class Reached:
    """Everything there is to lead to."""

    studio: Studio

    @cached_property
    def texts(self) -> dict[str, Text]:
        """Every page and lesson that could be read, by its file: `pages/care.md`."""
        pages, lessons = self.studio.pages.values(), self.studio.techniques.values()
        texts = [
            *(self._text(page, "page", addresses.of_page(page.id)) for page in pages),
            *(self._text(each, "technique", addresses.of_lesson(each.id)) for each in lessons),
        ]
        return {text.file: text for text in texts}

    def _text(self, document: Document[Page] | Document[Technique], kind: str, at: str) -> Text:
        source = self.studio.sources[kind, document.id]
        return Text(
            file=document.file.relative_to(self.studio.folder).as_posix(),
            address=at,
            source=source,
            first_line=len(source.lines) - document.markdown.count("\n"),
            leads=leads_of(document.markdown),
            reader="" if source.in_doubt("for") else document.heading.for_,
        )

    @cached_property
    def by_address(self) -> dict[str, Text]:
        """The same texts by their pages: `care.html`."""
        return {text.address: text for text in self.texts.values()}

    @cached_property
    def unread(self) -> frozenset[str]:
        """The pages of texts that couldn't be read: there, but nothing more is known of them."""
        pages = map(addresses.of_page, known_names(self.studio, "page"))
        lessons = map(addresses.of_lesson, known_names(self.studio, "technique"))
        return frozenset({*pages, *lessons} - self.by_address.keys())

    @property
    def sites(self) -> tuple[frozenset[str], frozenset[str]] | None:
        """The pages of the staff's site and of the clients'; none while a slip hides some."""
        return _sites(self.studio)

    def near(self, text: Text, path: str) -> str:
        """The page that was most likely meant, as it is written in `text`; empty if none is.

        A text for everyone is offered nothing that is for staff alone.
        """
        public = text.reader == "everyone"
        site = self.sites[public] if self.sites else ()
        here = {_name(page): relpath(page, dirname(text.address) or ".") for page in sorted(site)}
        texts = [each for each in self.texts.values() if not (public and each.reader == "staff")]
        for each in sorted(texts, key=lambda each: _is_beside(each, text)):
            here[_name(each.file)] = relpath(each.file, dirname(text.file))
        close = nearest(_name(path), here, limit=1)
        return here[close[0]] if close else ""


@kept
def _sites(studio: Studio) -> tuple[frozenset[str], frozenset[str]] | None:
    unknown = any(studio.heard_of.values()) or studio.stems_are_lost
    if unknown or has_doubts(studio):
        return None
    day = date.min  # no address depends on it
    staff = Catalogue(studio, "staff", day, ledger=studio.ledger)
    return pages_of(staff), pages_of(Catalogue(studio, "clients", day, ledger=studio.ledger))


@kept
def has_doubts(studio: Studio) -> bool:
    """Whether anything in the studio's files isn't known for certain."""
    return any(source.has_doubts() for source in studio.sources.values())


def page_of(file: str) -> str:
    """The page that is made of a Markdown file; empty when it lies in no folder of texts."""
    path = PurePosixPath(file)
    of = FOLDERS.get(path.parts[0]) if len(path.parts) > 1 else None
    return of(path.stem) if of else ""


def _is_beside(one: Text, other: Text) -> bool:
    return dirname(one.file) == dirname(other.file)


def _name(path: str) -> str:
    return PurePosixPath(path).stem
