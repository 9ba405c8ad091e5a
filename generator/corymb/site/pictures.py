"""The drawn pictures of a studio: every look, and every stem by itself.

A picture depends on its arrangement and on nothing else, so it is kept by a digest of the
arrangement and of the code that draws, and drawn again when either changes.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path

import corymb.picture
import corymb.trade.light
from corymb.code_digest import code_digest
from corymb.picture import draw, draw_stem
from corymb.site import raster
from corymb.site.kept_pictures import Kept
from corymb.site.lit import colours_in_light
from corymb.site.pictured import arrangement_of, picture_stem
from corymb.site.plans import drawn_plan, plan_drawing, plans_shown
from corymb.site.share_cards import card_address, kept_card, kept_small, needs_card
from corymb.site.sized import arrangements_by_size, drawn_side_by_side
from corymb.studio.models import Recipe
from corymb.studio.studio import Studio
from corymb.trade.known_object import known_line_cm
from corymb.trade.looks import Look, looks_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue, Drawing, PlanDrawing
from corymb.views.compose.light_switch import OTHERS
from corymb.views.compose.sizes import side_by_side_words

VIEW_BOX = re.compile(r'viewBox="\S+ \S+ (\S+) (\S+)"')
Progress = Callable[[str, int, int], None]
DRAWS = Path(str(corymb.picture.__file__)).parent
LIGHTS = Path(str(corymb.trade.light.__file__)).parent


@dataclass
class Pictures:
    """Drawn pictures (SVG) by address, and where each look's and each stem's is.

    `lit` tells, by address too, what becomes of each look's colours in other lights; `cards` are
    what messages show beside a link to those looks that clients see no photo of, and `small` what
    a phone's lists show of them.
    """

    drawn: dict[str, str] = field(default_factory=dict)
    lit: dict[str, str] = field(default_factory=dict)
    drawings: dict[str, Drawing] = field(default_factory=dict)
    heads: dict[str, str] = field(default_factory=dict)
    plans: dict[str, PlanDrawing] = field(default_factory=dict)
    sizes: dict[str, Drawing] = field(default_factory=dict)
    cards: dict[str, bytes] = field(default_factory=dict)
    small: dict[str, bytes] = field(default_factory=dict)

    def files_for(self, catalogue: Catalogue) -> Iterator[tuple[str, bytes]]:
        """The pictures that an audience's site shows, and no others."""
        for looks in catalogue.looks.values():
            for look in looks.values():
                href = addresses.of_drawing(look)
                yield href, self.drawn[href].encode()
                href = addresses.of_colours_in_light(look)
                yield href, self.lit[href].encode()
                drawing = self.drawings[look.id]
                if drawing.card and not catalogue.staff:
                    yield drawing.card, self.cards[drawing.card]
                yield from self._small(drawing)
        sizes = [self.sizes[known_as] for known_as in catalogue.looks if known_as in self.sizes]
        for drawing in sizes:
            yield drawing.href, self.drawn[drawing.href].encode()
            yield from self._small(drawing)
        for href in (*self.heads.values(), *plans_shown(catalogue)):
            yield href, self.drawn[href].encode()

    def _small(self, drawing: Drawing) -> Iterator[tuple[str, bytes]]:
        for href in filter(None, (drawing.small, drawing.small_wide)):
            yield href, self.small[href]


def draw_all(studio: Studio, folder: Path, progress: Progress) -> Pictures:
    """Every look's and every stem's picture, drawn or found in `folder`."""
    kept = Kept(folder, code_digest(DRAWS))
    pictures = Pictures()
    looks = [
        (recipe, look)
        for recipe in studio.recipes.values()
        for look in looks_of(recipe, studio.recipes).values()
    ]
    whole = len(looks) + len(studio.stems)
    for done, (recipe, look) in enumerate(looks, 1):
        arrangement = arrangement_of(recipe, look, studio.stems, studio.house.lengths_in)
        href = addresses.of_drawing(look)
        svg = kept.or_drawn(repr(arrangement), partial(draw, arrangement))
        pictures.drawn[href] = svg
        pictures.lit[addresses.of_colours_in_light(look)] = _in_other_lights(kept, svg)
        drawing = Drawing(href, *sheet_size(svg))
        if needs_card(studio, look):
            drawing = _with_pixels(kept, pictures, look, drawing, svg)
        pictures.drawings[look.id] = drawing
        plan = kept.or_drawn(f"plan {arrangement}", partial(drawn_plan, arrangement))
        pictures.drawn[addresses.of_plan(look)] = plan
        pictures.plans[look.id] = plan_drawing(look, arrangement, sheet_size(plan))
        if recipe.sizes and not look.variant:
            pictures.sizes[recipe.id] = _sizes(kept, pictures, studio, recipe, look)
        progress("pictures", done, whole)
    for done, (stem_id, stem) in enumerate(studio.stems.items(), len(looks) + 1):
        alone = picture_stem(stem_id, stem)
        href = addresses.of_head(stem_id)
        pictures.drawn[href] = kept.or_drawn(repr(alone), partial(draw_stem, alone))
        pictures.heads[stem_id] = href
        progress("pictures", done, whole)
    kept.forget_the_rest()
    return pictures


def _sizes(kept: Kept, pictures: Pictures, studio: Studio, recipe: Recipe, look: Look) -> Drawing:
    """The picture of a recipe's sizes, once it is drawn."""
    each = arrangements_by_size(recipe, look, studio.stems)
    line_cm = known_line_cm(studio.house.styles[recipe.style].known_object, recipe)
    told = f"sizes {side_by_side_words(recipe)} {each} {line_cm}"
    svg = kept.or_drawn(told, lambda: drawn_side_by_side(recipe, each, line_cm))
    href = addresses.of_sizes(recipe.id)
    pictures.drawn[href] = svg
    small = addresses.of_small_sizes(recipe.id)
    pictures.small[small] = kept_small(kept, svg, raster.small_sizes)
    return Drawing(href, *sheet_size(svg), small=small)


def _with_pixels(kept: Kept, pictures: Pictures, look: Look, drawing: Drawing, svg: str) -> Drawing:
    """The drawing of a look that clients see no photo of, once its card and small ones are made."""
    card, small = _card(kept, pictures, look, svg), addresses.of_small(look)
    pictures.small[small] = kept_small(kept, svg, raster.small_look)
    wide = ""
    if drawing.width > drawing.height and not look.variant:
        wide = addresses.of_small(look, wide=True)
        pictures.small[wide] = kept_small(kept, svg, raster.small_wide_look)
    return replace(drawing, card=card, small=small, small_wide=wide)


def _card(kept: Kept, pictures: Pictures, look: Look, svg: str) -> str:
    """The address of a look's share card, once it is made."""
    card = kept_card(kept, svg)
    href = card_address(look, card)
    pictures.cards[href] = card
    return href


def _in_other_lights(kept: Kept, svg: str) -> str:
    """What becomes of a picture's colours in each light that its page can be switched to."""
    told = f"{code_digest(LIGHTS)} {OTHERS} {svg}"
    return kept.or_drawn(told, lambda: colours_in_light(svg, OTHERS), "json")


def sheet_size(svg: str) -> tuple[float, float]:
    """The width and height of a picture's sheet, from its viewBox."""
    found = VIEW_BOX.search(svg)
    if found is None:
        raise ValueError("a drawn picture has no viewBox")
    return float(found[1]), float(found[2])
