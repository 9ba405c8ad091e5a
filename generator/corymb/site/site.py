"""One audience's whole site, before it is published: every address and what stands there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from corymb.ledger import Followed, kept
from corymb.site import assets, finding
from corymb.site.calendars import calendar_files
from corymb.site.drawn.for_benches import draw_for_benches
from corymb.site.drawn.for_links import draw_for_links, drawings_of
from corymb.site.drawn.pictures import Pictures
from corymb.site.link_check import DeadLink, Known, dead_links
from corymb.site.markdown_text import Writer
from corymb.site.offline import offline_files
from corymb.site.pages import Making, Page, Planned, planned_pages
from corymb.site.render import render
from corymb.site.script_words import script_words
from corymb.site.settings import SiteSettings
from corymb.site.tables import csv_file
from corymb.studio.models import Photo
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.costs_table import costs_table
from corymb.views.compose.orders.bench_drawn import DrawnLine
from corymb.views.compose.orders.calendar import calendars
from corymb.views.compose.orders.cut_table import cut_table
from corymb.views.compose.orders.field_table import field_table
from corymb.views.compose.site_frame import site_frame
from corymb.views.frame import SiteFrame


class AddressTakenError(Exception):
    """Two pages or files would stand at one address; the text names both."""


@dataclass
class Site:
    """What to publish: `pages` and `files` by their bytes, `copies` by where they lie."""

    pages: dict[str, bytes] = field(default_factory=dict)
    files: dict[str, bytes] = field(default_factory=dict)
    copies: dict[str, Path] = field(default_factory=dict)

    @property
    def written(self) -> dict[str, bytes]:
        """Everything that is made here, pages and files."""
        return {**self.pages, **self.files}

    def dead_links(self, base_path: str, known: Known | None = None) -> list[DeadLink]:
        """Every address on the site's pages that leads nowhere; `known` are pages read before."""
        return dead_links(self.pages, {*self.files, *self.copies}, base_path, known)


def no_breath() -> None:
    """Goes on at once."""


class SiteMaker:
    """Makes the site of a catalogue's audience, and makes it again when the studio has changed.

    What a ledger that follows says still holds isn't made again; without one, all is made once.
    """

    def __init__(self, catalogue: Catalogue, settings: SiteSettings) -> None:
        self.catalogue = catalogue
        self.settings = settings
        self._link_drawings: Followed[str, Drawing] = self._followed("links")
        self._bench_drawings: Followed[tuple[str, int], DrawnLine] = self._followed("benches")
        self.making = Making(
            catalogue,
            self.frame(),
            settings.site_url,
            Writer(settings.markdown_extensions, settings.markdown_configs),
            settings.codes_lead_to,
            self._link_drawings,
            self._bench_drawings,
        )
        self.planned: dict[str, Planned] = {}
        """The pages that the site had when it was last whole, by address."""

    def frame(self) -> SiteFrame:
        """What all pages have in common."""
        frame = site_frame(self.catalogue, self.settings.base_path(self.catalogue.audience))
        return replace(frame, locked=self.catalogue.staff and self.settings.lock_staff)

    def page(self, address: str) -> bytes | None:
        """A page as it is now, of those that the site had when it was last made whole."""
        planned = self.planned.get(address)
        try:
            return html_of(self.making, planned) if planned is not None else None
        except (KeyError, StopIteration):  # what the page was of is gone
            return None

    def whole(self, pictures: Pictures, breath: Callable[[], None] = no_breath) -> Site:
        """The whole site. `breath` is drawn before each page. Raises AddressTakenError."""
        drawn = self._drawn_besides(pictures)
        taken, pages, site = _Taken(), list[Page](), Site()
        all_planned: dict[str, Planned] = {}
        for planned in planned_pages(self.making):
            breath()
            page = planned.page(self.making)
            taken.by(page)
            pages.append(page)
            all_planned[page.frame.path] = planned
            site.pages[page.frame.path] = html_of(self.making, planned)
        self.planned = all_planned
        self._found_by(site, pages)
        self._tables(site)
        _theme(site, pages, self.catalogue.staff)
        site.files.update(pictures.files_for(self.catalogue))
        site.files.update({address: svg.encode() for address, svg in drawn.items()})
        site.copies.update(_photo_files(self.catalogue))
        if self.catalogue.staff:  # last of all: a phone knows a build by everything in it
            site.files.update(
                offline_files(self.catalogue, self.making.site, site.pages, site.files, site.copies)
            )
        return site

    def _drawn_besides(self, pictures: Pictures) -> dict[str, str]:
        """What style links and bench sheets alone need to have drawn, by address."""
        cache = self.settings.cache_folder
        for_links = draw_for_links(self.catalogue, pictures, cache / "links")
        for_benches = draw_for_benches(self.catalogue, cache / "benches")
        self._link_drawings.become(drawings_of(for_links))
        self._bench_drawings.become(for_benches.lines)
        return {**for_links, **for_benches.drawn}

    def _found_by(self, site: Site, pages: list[Page]) -> None:
        site.files["search.json"] = finding.search_index(pages)
        site.files["robots.txt"] = finding.robots(self.catalogue.audience, self.settings.site_url)
        if not self.catalogue.staff and self.settings.site_url:
            site.files["sitemap.xml"] = finding.sitemap(pages)

    def _tables(self, site: Site) -> None:
        if self.catalogue.staff:
            site.files[addresses.COSTS] = _costs(self.catalogue)
            site.files.update(_cut_tables(self.catalogue))
        site.files.update(_calendars(self.catalogue))

    def _followed(self, name: str) -> Followed[Any, Any]:
        return Followed(self.catalogue.ledger, f"drawn for {name} of {self.catalogue.audience}")


@kept
def html_of(making: Making, planned: Planned) -> bytes:
    """A page as it is published."""
    page = planned.page(making)
    return render(making.site, page.frame, page.view)


@kept
def _costs(catalogue: Catalogue) -> bytes:
    return csv_file(costs_table(catalogue), catalogue.studio.house.language)


@kept
def _calendars(catalogue: Catalogue) -> dict[str, bytes]:
    return calendar_files(calendars(catalogue))


def _theme(site: Site, pages: list[Page], staff: bool) -> None:
    tints = (page.frame.tint for page in pages if page.frame.tint)
    site.files["assets/theme/css/corymb.css"] = assets.stylesheet()
    site.files["assets/theme/js/messages.js"] = script_words()
    site.files["assets/tints.css"] = assets.tint_rules(tints)
    site.copies.update(assets.theme_files(staff))


@kept
def _cut_tables(catalogue: Catalogue) -> dict[str, bytes]:
    """The cut lists for spreadsheets, two files a cutting day: by stem and by order."""
    tables = {}
    for day in catalogue.cut_days:
        tables[addresses.of_cut_table(day.day)] = field_table(catalogue, day)
        tables[addresses.of_cut_orders(day.day)] = cut_table(catalogue, [day])
    language = catalogue.studio.house.language
    return {address: csv_file(table, language) for address, table in tables.items()}


class _Taken:
    """The addresses that pages stand at, whatever their letters' size."""

    def __init__(self) -> None:
        self._by_address: dict[str, Page] = {}

    def by(self, page: Page) -> None:
        """Give a page its address. Raises AddressTakenError."""
        path = page.frame.path.casefold()
        first = self._by_address.setdefault(path, page)
        if first is not page:
            raise AddressTakenError(
                f"two pages would stand at {page.frame.path}: ‘{first.frame.title}’ and "
                f"‘{page.frame.title}’. Rename the file of one of them."
            )


def _photo_files(catalogue: Catalogue) -> dict[str, Path]:
    """The files of the photos this audience may see, and of no others."""
    photos = catalogue.photos
    shown = [
        photo
        for recipe_id, looks in catalogue.looks.items()
        for photo in catalogue.shown(_photos_of(catalogue, recipe_id, set(looks)))
    ]
    shown += [photo for made in catalogue.made() for photo in catalogue.shown(made.photos)]
    return {
        addresses.of_photo(file.name): file.path
        for photo in shown
        if photo.file in photos
        for file in (*photos[photo.file].files, photos[photo.file].share_card)
    }


def _photos_of(catalogue: Catalogue, recipe_id: str, variants: set[str]) -> list[Photo]:
    recipe = catalogue.studio.recipes[recipe_id]
    return [
        *recipe.photos,
        *(photo for known_as in variants if known_as for photo in recipe.variants[known_as].photos),
    ]
