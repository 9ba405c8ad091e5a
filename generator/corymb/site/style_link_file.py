"""A style link's page as one file to attach to a message, made without building the site.

Only what the page shows is drawn and made ready; what a build has kept already is taken from there.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date
from functools import partial

from corymb.language import in_language
from corymb.photos import PhotoCache, PhotoError, PreparedPhoto, prepare_many
from corymb.picture import draw
from corymb.site import assets
from corymb.site.drawn.for_links import draw_for_link, drawings_of, kept_for_links
from corymb.site.drawn.pictured import arrangement_of
from corymb.site.drawn.pictures import kept_pictures
from corymb.site.markdown_text import Writer
from corymb.site.one_file import one_file
from corymb.site.pages.links import link_page
from corymb.site.pages.page import Making
from corymb.site.render import render
from corymb.site.script_words import script_words
from corymb.site.settings import SiteSettings
from corymb.studio.models import Photo, Recipe
from corymb.studio.models.link import StyleLink
from corymb.studio.photographs import photo_path
from corymb.studio.studio import Studio
from corymb.trade.looks import Look
from corymb.trade.style_links import shown_looks
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.links import style_link_view
from corymb.views.compose.site_frame import site_frame
from corymb.views.frame import Tint

TEMPLATE = "style_link_file.html"


def link_file(
    studio: Studio, settings: SiteSettings, link: StyleLink, today: date, *, ends: bool = True
) -> bytes:
    """The page of a link as one file; with `ends` it hides itself after the link's last day.

    Raises PhotoError where a photo can't be used, and TooLargeError.
    """
    bare = Catalogue(studio, "clients", today)
    shown = shown_looks(link, studio.recipes, bare.looks, bare.makeable)
    looks = [each.best.look for each in shown]
    with PhotoCache(settings.cache_folder / "photos") as cache, in_language(studio.house.language):
        photos = _photos(studio, looks, cache)
        drawn = _drawn(studio, settings, looks)
        catalogue = replace(bare, photos=photos, drawings=_by_look(looks, drawn))
        return _made(catalogue, settings, link, drawn, ends=ends)


def _made(
    catalogue: Catalogue,
    settings: SiteSettings,
    link: StyleLink,
    drawn: Mapping[str, str],
    *,
    ends: bool,
) -> bytes:
    kept = kept_for_links(settings.cache_folder / "links")
    for_link = dict(draw_for_link(catalogue, drawn, kept, link))
    kept.use.end()
    frame = site_frame(catalogue, "/")
    making = Making(catalogue, frame, "", Writer((), {}), link_drawings=drawings_of(for_link))
    view = style_link_view(catalogue, link, making.link_drawings)
    page = link_page(making, view if ends else replace(view, expires="", last_day=""), TEMPLATE)
    files = {
        page.frame.path: render(frame, page.frame, page.view),
        **{address: svg.encode() for address, svg in {**drawn, **for_link}.items()},
        **_photo_files(catalogue.photos.values()),
        **_theme([page.frame.tint] if page.frame.tint else []),
    }
    return one_file(page.frame.path, files)


def _by_look(looks: Iterable[Look], drawn: Mapping[str, str]) -> dict[str, Drawing]:
    """What views need of the looks' own drawings."""
    of = drawings_of(drawn)
    return {look.id: of[addresses.of_drawing(look)] for look in looks}


def _drawn(studio: Studio, settings: SiteSettings, looks: Iterable[Look]) -> dict[str, str]:
    """The looks' own drawings by address, as a build keeps them."""
    kept = kept_pictures(settings.cache_folder / "pictures")
    drawn = {}
    for look in looks:
        made = arrangement_of(
            studio.recipes[look.recipe], look, studio.stems, studio.house.lengths_in
        )
        drawn[addresses.of_drawing(look)] = kept.or_drawn(repr(made), partial(draw, made))
    kept.use.end()
    return drawn


def _photos(studio: Studio, looks: Iterable[Look], cache: PhotoCache) -> dict[str, PreparedPhoto]:
    """The photos that clients may see of the looks' recipes and of what was made of them."""
    recipes = [studio.recipes[known_as] for known_as in {look.recipe for look in looks}]
    named = [photo for recipe in recipes for photo in _photos_of(recipe)]
    for made in studio.made.values():
        if made.recipe in {recipe.id for recipe in recipes}:
            named += made.photos
    files = {photo.file for photo in named if photo.may_be_shown_to == "clients"}
    sources = {file: photo_path(studio.folder, file) for file in sorted(files)}
    prepared = prepare_many(sources.values(), cache)
    photos = {}
    for file, source in sources.items():
        result = prepared[source]
        if isinstance(result, PhotoError):
            raise result
        photos[file] = result
    return photos


def _photos_of(recipe: Recipe) -> list[Photo]:
    """Those of a recipe and of its variants."""
    return [*recipe.photos, *(p for variant in recipe.variants.values() for p in variant.photos)]


def _photo_files(photos: Iterable[PreparedPhoto]) -> dict[str, bytes]:
    return {
        addresses.of_photo(file.name): file.path.read_bytes()
        for photo in photos
        for file in photo.of_format("jpeg")
    }


def _theme(tints: Iterable[Tint]) -> dict[str, bytes]:
    """The theme's files by their address."""
    return {
        **{address: file.read_bytes() for address, file in assets.theme_files()},
        f"{assets.PUBLISHED}/css/corymb.css": assets.stylesheet(),
        f"{assets.PUBLISHED}/js/messages.js": script_words(),
        "assets/tints.css": assets.tint_rules(tints),
    }
