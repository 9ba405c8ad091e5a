"""The drawings that style links alone need: a look with its swaps, and looks in the light of hours.

Each stands in a folder of its link's own, under the code that nobody can guess. What the
catalogue shows already isn't drawn again.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import partial
from pathlib import Path

import corymb.picture
import corymb.trade.light
from corymb.code_digest import code_digest
from corymb.picture import Arrangement, draw
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.lit import in_light
from corymb.site.drawn.pictured import arrangement_of
from corymb.site.drawn.pictures import Pictures, sheet_size
from corymb.site.drawn.sized import arrangement_in_size
from corymb.studio.models.link import StyleLink
from corymb.studio.studio import Studio
from corymb.trade.light.sun import Site
from corymb.trade.order_lines import REGULAR
from corymb.trade.style_links import ShownLook, light_of, shown_looks
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.link_light import OtherLight, other_lights
from corymb.views.compose.links import standing_links

CODE = (Path(str(corymb.picture.__file__)).parent, Path(str(corymb.trade.light.__file__)).parent)


def draw_for_links(catalogue: Catalogue, pictures: Pictures, folder: Path) -> dict[str, str]:
    """The drawings (SVG) of all links that stand, by address; kept between builds in `folder`."""
    links = standing_links(catalogue)
    if catalogue.staff or not links:
        return {}
    kept = kept_for_links(folder)
    drawn = {
        address: svg
        for link in links
        for address, svg in draw_for_link(catalogue, pictures.drawn, kept, link)
    }
    kept.forget_the_rest()
    return drawn


def kept_for_links(folder: Path) -> Kept:
    """Where they are kept between builds."""
    return Kept(folder, " ".join(code_digest(code) for code in CODE))


def draw_for_link(
    catalogue: Catalogue, drawn: Mapping[str, str], kept: Kept, link: StyleLink
) -> Iterator[tuple[str, str]]:
    """Those of one link by address; `drawn` are the pictures of the catalogue's looks."""
    looks = shown_looks(link, catalogue.studio.recipes, catalogue.looks, catalogue.makeable)
    for shown in looks:
        yield from _drawn(catalogue, drawn, kept, link, shown)


def drawings_of(drawn: Mapping[str, str]) -> dict[str, Drawing]:
    """What views need of drawings: where each is, and how large its sheet."""
    return {address: Drawing(address, *sheet_size(svg)) for address, svg in drawn.items()}


def _drawn(
    catalogue: Catalogue,
    drawn: Mapping[str, str],
    kept: Kept,
    link: StyleLink,
    shown: ShownLook,
) -> Iterator[tuple[str, str]]:
    svg = drawn[addresses.of_drawing(shown.best.look)]
    if shown.drawn_anew:
        made = _arrangement(catalogue.studio, shown)
        svg = kept.or_drawn(repr(made), partial(draw, made))
        yield addresses.of_link_picture(link.code, shown.number), svg
    if shown.can:
        for light in _lights(catalogue, link):
            lit = kept.or_drawn(f"{light.light} {svg}", partial(in_light, svg, light.light))
            yield addresses.of_link_picture(link.code, shown.number, light.id), lit


def _arrangement(studio: Studio, shown: ShownLook) -> Arrangement:
    """A look with its swaps and in its size, ready to be drawn."""
    recipe, size, told_in = shown.asked.recipe, shown.asked.size, studio.house.lengths_in
    if size == REGULAR:
        return arrangement_of(recipe, shown.to_draw, studio.stems, told_in)
    return arrangement_in_size(recipe, shown.to_draw, size, studio.stems, told_in)


def _lights(catalogue: Catalogue, link: StyleLink) -> tuple[OtherLight, ...]:
    return other_lights(light_of(link, Site.of(catalogue.studio.house.place)))
