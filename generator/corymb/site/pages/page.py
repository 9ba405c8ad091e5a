"""What is a page before it is rendered, and what is said in its head?"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from corymb.language import gettext as _
from corymb.ledger import Ledger
from corymb.site import structured_data
from corymb.site.markdown_text import Writer
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.orders.bench_drawn import DrawnLine
from corymb.views.frame import PageFrame, SiteFrame, Tint
from corymb.views.pieces import ImagePair, Link, PhotoView


@dataclass(frozen=True)
class Page:
    """A page before it is rendered.

    A search of the site finds it by title and description, and by the other words in `text`.
    A page without a `kind` is not to be found by a search.
    """

    frame: PageFrame
    view: object
    kind: str
    text: str = ""


PageMaker = Callable[..., Page]
"""Makes a page of a `Making` and of what it is told by name; as `ledger.kept` leaves it."""


@dataclass(frozen=True)
class Planned:
    """A page that is going to be made: how, and of what. So it can be made when it is asked for."""

    make: PageMaker
    names: tuple[str, ...] = ()

    @classmethod
    def of(cls, make: PageMaker, *names: str) -> Planned:
        """Made by `make`, which is kept in the ledger, of things with these ids."""
        return cls(make, names)

    def page(self, making: Making) -> Page:
        """The page, made now or as it was made before."""
        return self.make(making, *self.names)


@dataclass(frozen=True)
class Share:
    """The image that a message shows beside a link to the page: an address on the site."""

    href: str = ""
    alt: str = ""

    @classmethod
    def of(cls, photo: PhotoView | None) -> Share:
        """A photo's card; nothing where there is no photo."""
        return cls(photo.share_card, photo.alt) if photo else cls()

    @classmethod
    def of_image(cls, image: ImagePair) -> Share:
        """The card of an arrangement's photo, or else of its picture."""
        if image.photo or not image.picture.share_card:
            return cls.of(image.photo)
        return cls(image.picture.share_card, image.picture.alt)


@dataclass(frozen=True)
class Making:
    """What pages are made from, and how their frames are made alike.

    `link_drawings` are those of style links, by their address; `bench_drawings` those of bench
    sheets, by order and line.
    """

    catalogue: Catalogue
    site: SiteFrame
    site_url: str
    writer: Writer
    staff_url: str = ""
    link_drawings: Mapping[str, Drawing] = field(default_factory=dict)
    bench_drawings: Mapping[tuple[str, int], DrawnLine] = field(default_factory=dict)

    @property
    def ledger(self) -> Ledger:
        """Where pages are kept beside what they are made from."""
        return self.catalogue.ledger

    @property
    def known_as(self) -> str:
        """Whose pages these are, as in the catalogue."""
        return self.catalogue.known_as

    def absolute(self, path: str) -> str:
        """An address on the web; empty where the studio gave no `site_url`, or for no path."""
        return f"{self.site_url}{path}" if self.site_url and path else ""

    def frame(
        self,
        path: str,
        template: str,
        section: str,
        title: str,
        description: str,
        *,
        crumbs: Sequence[Link] = (),
        data: Sequence[dict[str, Any]] = (),
        share: Share = Share(),
        tint: Tint | None = None,
        indexed: bool = True,
    ) -> PageFrame:
        """The frame of a page; the staff's pages tell search engines and messages nothing."""
        way = (Link(_("Home"), addresses.HOME), *crumbs) if path != addresses.HOME else ()
        public = not self.catalogue.staff and bool(self.site_url)
        told = [*data, structured_data.path_back(way, title, self.canonical)]
        return PageFrame(
            path=path,
            template=template,
            section=section,
            title=title,
            description=" ".join(description.split()),
            crumbs=way,
            canonical=self.canonical(path) if public and indexed else "",
            share_image=self.absolute(share.href) if public else "",
            share_alt=share.alt,
            tint=tint,
            structured_data=structured_data.written(*told) if public and indexed else "",
            indexed=indexed and not self.catalogue.staff,
        )

    def canonical(self, path: str) -> str:
        """The one address a page is known by; home is the site's own address."""
        return self.site_url if path == addresses.HOME else self.absolute(path)
