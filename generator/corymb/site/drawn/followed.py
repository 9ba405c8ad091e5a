"""The pictures of a studio that is being edited: each drawn again when what it shows has changed.

A page needs to know no more of a picture than how large its sheet is, and for that the drawing
itself is enough; its pixels and its colours in other lights wait until someone asks for them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from corymb.ledger import AsAsked, Ledger, kept
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.pictured import picture_stem
from corymb.site.drawn.pictures import (
    Pictures,
    asked_of,
    drawing_of,
    drawing_of_sizes,
    look_to_draw,
    sheet_size,
    sizes_to_draw,
)
from corymb.site.drawn.plans import plan_drawing
from corymb.site.drawn.to_draw import LookToDraw, StemToDraw
from corymb.studio.studio import Studio
from corymb.trade.looks import Look, looks_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Drawing, PlanDrawing


class FollowedPictures:
    """Drawings by the ids of looks, recipes and stems, drawn when they are asked for."""

    known_as = "pictures"

    def __init__(self, studio: Studio, store: Kept) -> None:
        self.studio = studio
        self.store = store
        self.drawings: Mapping[str, Drawing] = AsAsked(self._look_ids, self._has, self._drawing)
        self.plans: Mapping[str, PlanDrawing] = AsAsked(self._look_ids, self._has, self._plan)
        self.sizes: Mapping[str, Drawing] = AsAsked(self._sized, self._is_sized, self._sizes)
        self.heads: Mapping[str, str] = AsAsked(
            lambda: studio.stems, studio.stems.__contains__, addresses.of_head
        )

    @property
    def ledger(self) -> Ledger:
        """Where it is kept which drawing was made of what."""
        return self.studio.ledger

    def all(self, breath: Callable[[], None] = lambda: None) -> Pictures:
        """Everything that is drawn for the sites, with its pixels and its colours in each light.

        `breath` is drawn before each recipe.
        """
        pictures = Pictures()
        for recipe_id in self.studio.recipes:
            breath()
            pictures.add(self._of_recipe(recipe_id))
        for stem_id in self.studio.stems:
            pictures.drawn[addresses.of_head(stem_id)] = self._head(stem_id)
            pictures.heads[stem_id] = addresses.of_head(stem_id)
        return pictures

    def at(self, address: str) -> str | None:
        """The drawing of a look at an address on the site; none where there is none."""
        return self.front(look_id) if (look_id := self._look_at(address)) else None

    def _look_at(self, address: str) -> str:
        look_id = addresses.look_drawn_at(address)
        return look_id if look_id and self._has(look_id) else ""

    @kept
    def front(self, look_id: str) -> str:
        """The drawing of a look, as SVG."""
        return self._asked(look_id).front(self.store)

    @kept
    def _of_recipe(self, recipe_id: str) -> Pictures:
        pictures = Pictures()
        for asked, laid_down in asked_of(self.studio, recipe_id, pictures):
            laid_down(asked.drawn(self.store))
        return pictures

    @kept
    def _head(self, stem_id: str) -> str:
        alone = StemToDraw(picture_stem(stem_id, self.studio.stems[stem_id]))
        return alone.drawn(self.store).svg

    @kept
    def _looks(self, recipe_id: str) -> dict[str, Look]:
        looks = looks_of(self.studio.recipes[recipe_id], self.studio.recipes)
        return {look.id: look for look in looks.values()}

    def _look(self, look_id: str) -> Look:
        return self._looks(look_id.partition("--")[0])[look_id]

    @kept
    def _asked(self, look_id: str) -> LookToDraw:
        look = self._look(look_id)
        return look_to_draw(self.studio, self.studio.recipes[look.recipe], look)

    @kept
    def _drawing(self, look_id: str) -> Drawing:
        return drawing_of(self._look(look_id), self._asked(look_id), self.front(look_id))

    @kept
    def _plan(self, look_id: str) -> PlanDrawing:
        asked = self._asked(look_id)
        return plan_drawing(
            self._look(look_id), asked.arrangement, sheet_size(asked.plan(self.store))
        )

    @kept
    def _sizes(self, recipe_id: str) -> Drawing:
        asked = sizes_to_draw(self.studio, self.studio.recipes[recipe_id], self._look(recipe_id))
        return drawing_of_sizes(recipe_id, asked.front(self.store))

    def _has(self, look_id: str) -> bool:
        recipe_id, _, variant_id = look_id.partition("--")
        recipe = self.studio.recipes.get(recipe_id)
        return recipe is not None and (not variant_id or variant_id in recipe.variants)

    def _look_ids(self) -> Iterator[str]:
        for recipe_id in self.studio.recipes:
            yield from self._looks(recipe_id)

    def _is_sized(self, recipe_id: str) -> bool:
        recipe = self.studio.recipes.get(recipe_id)
        return recipe is not None and bool(recipe.sizes)

    def _sized(self) -> Iterator[str]:
        return (recipe_id for recipe_id in self.studio.recipes if self._is_sized(recipe_id))
