"""One audience's whole site, before it is published: every address and what stands there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from corymb.photos import PreparedPhoto
from corymb.site import assets, finding
from corymb.site.bench_pictures import draw_for_benches
from corymb.site.calendars import calendar_files
from corymb.site.link_check import DeadLink, dead_links
from corymb.site.markdown_text import Writer
from corymb.site.offline import offline_files
from corymb.site.pages import Making, Page, all_pages
from corymb.site.pictures import Pictures
from corymb.site.render import render
from corymb.site.script_words import script_words
from corymb.site.settings import SiteSettings
from corymb.site.style_link_pictures import draw_for_links, drawings_of
from corymb.site.tables import csv_file
from corymb.studio.models import Photo
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.costs_table import costs_table
from corymb.views.compose.orders.calendar import calendars
from corymb.views.compose.orders.cut_table import cut_table
from corymb.views.compose.orders.field_table import field_table
from corymb.views.compose.site_frame import site_frame


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

    def dead_links(self, base_path: str) -> list[DeadLink]:
        """Every address on the site's pages that leads nowhere."""
        return dead_links(self.pages, {*self.files, *self.copies}, base_path)


def make_site(
    catalogue: Catalogue,
    settings: SiteSettings,
    pictures: Pictures,
    photos: Mapping[str, PreparedPhoto],
) -> Site:
    """The site of the catalogue's audience. Raises AddressTakenError."""
    writer = Writer(settings.markdown_extensions, settings.markdown_configs)
    frame = site_frame(catalogue, settings.base_path(catalogue.audience))
    frame = replace(frame, locked=catalogue.staff and settings.lock_staff)
    for_links = draw_for_links(catalogue, pictures, settings.cache_folder / "links")
    for_benches = draw_for_benches(catalogue, settings.cache_folder / "benches")
    making = Making(
        catalogue,
        frame,
        settings.site_url,
        writer,
        settings.codes_lead_to,
        drawings_of(for_links),
        for_benches.lines,
    )
    pages = list(all_pages(making))
    _one_each(pages)
    site = Site(pages={p.frame.path: render(frame, p.frame, p.view) for p in pages})
    site.files["search.json"] = finding.search_index(pages)
    site.files["robots.txt"] = finding.robots(catalogue.audience, settings.site_url)
    if not catalogue.staff and settings.site_url:
        site.files["sitemap.xml"] = finding.sitemap(pages)
    if catalogue.staff:
        costs = costs_table(catalogue)
        site.files[addresses.COSTS] = csv_file(costs, catalogue.studio.house.language)
        site.files.update(_cut_tables(catalogue))
    site.files["assets/theme/css/corymb.css"] = assets.stylesheet()
    site.files["assets/theme/js/messages.js"] = script_words()
    site.files["assets/tints.css"] = assets.tint_rules(
        page.frame.tint for page in pages if page.frame.tint
    )
    site.files.update(calendar_files(calendars(catalogue)))
    site.files.update(pictures.files_for(catalogue))
    drawn = {**for_links, **for_benches.drawn}
    site.files.update({address: svg.encode() for address, svg in drawn.items()})
    site.copies.update(assets.theme_files(catalogue.staff))
    site.copies.update(_photo_files(catalogue, photos))
    if catalogue.staff:  # last of all: a phone knows a build by everything in it
        made = offline_files(catalogue, frame, site.pages, site.files, site.copies)
        site.files.update(made)
    return site


def _cut_tables(catalogue: Catalogue) -> dict[str, bytes]:
    """The cut lists for spreadsheets, two files a cutting day: by stem and by order."""
    tables = {}
    for day in catalogue.cut_days:
        tables[addresses.of_cut_table(day.day)] = field_table(catalogue, day)
        tables[addresses.of_cut_orders(day.day)] = cut_table(catalogue, [day])
    language = catalogue.studio.house.language
    return {address: csv_file(table, language) for address, table in tables.items()}


def _one_each(pages: list[Page]) -> None:
    seen: dict[str, Page] = {}
    for page in pages:
        path = page.frame.path.casefold()
        if path in seen:
            raise AddressTakenError(
                f"two pages would stand at {page.frame.path}: ‘{seen[path].frame.title}’ and "
                f"‘{page.frame.title}’. Rename the file of one of them."
            )
        seen[path] = page


def _photo_files(catalogue: Catalogue, photos: Mapping[str, PreparedPhoto]) -> dict[str, Path]:
    """The files of the photos this audience may see, and of no others."""
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
