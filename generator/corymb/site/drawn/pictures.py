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
from corymb.code_digest import code_digest
from corymb.site.drawn.hands import all_drawn
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.pictured import arrangement_of, picture_stem
from corymb.site.drawn.plans import plan_drawing, plans_shown
from corymb.site.drawn.share_cards import card_address, needs_card
from corymb.site.drawn.sized import arrangements_by_size
from corymb.site.drawn.to_draw import Drawn, LookToDraw, SizesToDraw, StemToDraw, ToDraw
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
Asked = tuple[ToDraw, Callable[[Drawn], None]]


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

    def add(self, others: Pictures) -> None:
        """Take in what was drawn by itself."""
        for shelf, more in vars(others).items():
            getattr(self, shelf).update(more)

    def _small(self, drawing: Drawing) -> Iterator[tuple[str, bytes]]:
        for href in filter(None, (drawing.small, drawing.small_wide)):
            yield href, self.small[href]


def draw_all(studio: Studio, folder: Path, progress: Progress) -> Pictures:
    """Every look's and every stem's picture, drawn or found in `folder`."""
    kept = kept_pictures(folder)
    pictures = Pictures()
    asked = [*_arrangements(studio, pictures), *_alone(studio, pictures)]
    drawn = all_drawn(kept, [one for one, _ in asked], partial(progress, "pictures"))
    for (_, laid_down), one in zip(asked, drawn, strict=True):
        laid_down(one)
    kept.forget_the_rest()
    return pictures


def kept_pictures(folder: Path) -> Kept:
    """Where they are kept between builds."""
    return Kept(folder, code_digest(DRAWS))


def _arrangements(studio: Studio, pictures: Pictures) -> Iterator[Asked]:
    for recipe_id in studio.recipes:
        yield from asked_of(studio, recipe_id, pictures)


def asked_of(studio: Studio, recipe_id: str, pictures: Pictures) -> Iterator[Asked]:
    """What is to be drawn of a recipe, and where each drawing goes when it is there."""
    recipe = studio.recipes[recipe_id]
    for look in looks_of(recipe, studio.recipes).values():
        yield from _of_look(studio, recipe, look, pictures)


def _of_look(studio: Studio, recipe: Recipe, look: Look, pictures: Pictures) -> Iterator[Asked]:
    asked = look_to_draw(studio, recipe, look)
    yield asked, partial(_look_drawn, pictures, look, asked)
    if recipe.sizes and not look.variant:
        yield sizes_to_draw(studio, recipe, look), partial(_sizes_drawn, pictures, recipe.id)


def look_to_draw(studio: Studio, recipe: Recipe, look: Look) -> LookToDraw:
    """A look, with all that its pages show of it."""
    arrangement = arrangement_of(recipe, look, studio.stems, studio.house.lengths_in)
    small = needs_card(studio, look)
    return LookToDraw(arrangement, OTHERS, small, listed_wide=not look.variant)


def sizes_to_draw(studio: Studio, recipe: Recipe, look: Look) -> SizesToDraw:
    """A recipe's own look in all its sizes."""
    line_cm = known_line_cm(studio.house.styles[recipe.style].known_object, recipe)
    each = arrangements_by_size(recipe, look, studio.stems)
    return SizesToDraw(each, side_by_side_words(recipe), line_cm)


def drawing_of(look: Look, asked: LookToDraw, svg: str) -> Drawing:
    """Where a look's drawing is published, and what is made of it for those who see no photo."""
    drawing = Drawing(addresses.of_drawing(look), *sheet_size(svg))
    if not asked.small:
        return drawing
    wide = asked.listed_wide and drawing.width > drawing.height
    return replace(
        drawing,
        card=card_address(look, svg),
        small=addresses.of_small(look),
        small_wide=addresses.of_small(look, wide=True) if wide else "",
    )


def drawing_of_sizes(recipe_id: str, svg: str) -> Drawing:
    """Where the picture of a recipe's sizes is published."""
    small = addresses.of_small_sizes(recipe_id)
    return Drawing(addresses.of_sizes(recipe_id), *sheet_size(svg), small=small)


def _look_drawn(pictures: Pictures, look: Look, asked: LookToDraw, drawn: Drawn) -> None:
    drawing = drawing_of(look, asked, drawn.svg)
    pictures.drawn[drawing.href] = drawn.svg
    pictures.lit[addresses.of_colours_in_light(look)] = drawn.lit
    pictures.drawn[addresses.of_plan(look)] = drawn.plan
    pictures.plans[look.id] = plan_drawing(look, asked.arrangement, sheet_size(drawn.plan))
    pictures.drawings[look.id] = drawing
    if drawing.card:
        pictures.cards[drawing.card] = drawn.card
        pictures.small[drawing.small] = drawn.small
    if drawing.small_wide:
        pictures.small[drawing.small_wide] = drawn.small_wide


def _sizes_drawn(pictures: Pictures, recipe_id: str, drawn: Drawn) -> None:
    drawing = drawing_of_sizes(recipe_id, drawn.svg)
    pictures.drawn[drawing.href] = drawn.svg
    pictures.small[drawing.small] = drawn.small
    pictures.sizes[recipe_id] = drawing


def _alone(studio: Studio, pictures: Pictures) -> Iterator[Asked]:
    """Every stem by itself."""
    for stem_id, stem in studio.stems.items():
        yield StemToDraw(picture_stem(stem_id, stem)), partial(_head_drawn, pictures, stem_id)


def _head_drawn(pictures: Pictures, stem_id: str, drawn: Drawn) -> None:
    href = addresses.of_head(stem_id)
    pictures.drawn[href] = drawn.svg
    pictures.heads[stem_id] = href


def sheet_size(svg: str) -> tuple[float, float]:
    """The width and height of a picture's sheet, from its viewBox."""
    found = VIEW_BOX.search(svg)
    if found is None:
        raise ValueError("a drawn picture has no viewBox")
    return float(found[1]), float(found[2])
