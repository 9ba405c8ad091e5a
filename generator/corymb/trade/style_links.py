"""What does a style link show on its date: which looks, how they are made then, in what light?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from corymb.studio.models import Recipe
from corymb.studio.models.link import LinkItem, StyleLink
from corymb.studio.values.dates import IsoWeek
from corymb.trade.light.sun import Site
from corymb.trade.light.which_light import Occasion, Spell, spells
from corymb.trade.looks import Look, sized
from corymb.trade.order_lines import REGULAR, variant_and_size
from corymb.trade.orders.pieces import Piece
from corymb.trade.season.best import Best, best_of
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.watch import cell_of
from corymb.trade.swaps.made import with_swaps

Looks = Mapping[str, Mapping[str, Look]]
"""By recipe and variant."""


@dataclass(frozen=True)
class ShownLook:
    """One look of a link, as it was asked for and as it will be."""

    number: int
    """Its line in the link, from 1."""
    asked: Piece
    year: tuple[Best, ...]
    """The 52 weeks of the look that was asked for."""
    best: Best
    """How it can be made in the week of the date: as asked for, or else its recipe otherwise."""

    @property
    def is_draft(self) -> bool:
        """Whether the look that was asked for is hidden from clients as yet."""
        recipe, variant = self.asked.recipe, self.asked.look.variant
        return recipe.draft or bool(variant and recipe.variants[variant].draft)

    @property
    def can(self) -> bool:
        """Whether it, or its recipe in another look, can be made then."""
        return self.best.state != "none"

    @property
    def swapped(self) -> bool:
        """Whether it is made with swaps, and so looks otherwise than it is drawn."""
        return bool(self.best.answer.swaps)

    @property
    def drawn_anew(self) -> bool:
        """Whether it is another picture than the catalogue's: with swaps, or in another size."""
        return self.swapped or (self.can and self.asked.size != REGULAR)

    @property
    def to_draw(self) -> Look:
        """What is made, with the counts of its size."""
        look = self.piece.look
        counts = sized(look, self.asked.recipe.sizes.get(self.asked.size))
        lines = [replace(line, count=count) for line, count in zip(look.lines, counts, strict=True)]
        return replace(look, lines=tuple(line for line in lines if line.count), unswapped=())

    @property
    def instead(self) -> bool:
        """Whether another look of its recipe is made, since this one can't be."""
        return self.can and self.best.look != self.asked.look

    @property
    def piece(self) -> Piece:
        """What is made: with its swaps, in the size that was asked for."""
        return replace(self.asked, look=with_swaps(self.best.look, self.best.answer.swaps))


def stands(link: StyleLink, today: date) -> bool:
    """Whether a link's page is still there: its last day is the one written."""
    return today <= link.expires


def shown_looks(
    link: StyleLink, recipes: Mapping[str, Recipe], looks: Looks, makeable: Makeable
) -> tuple[ShownLook, ...]:
    """The looks of a link, of those that may be shown; what isn't among `looks` is left out.

    Where one can't be made, its recipe's best other look stands in, unless the link has that too.
    """
    week = cell_of(IsoWeek.of(link.date)) - 1
    asked = {
        number: piece
        for number, item in enumerate(link.show, 1)
        if (piece := _asked(item, recipes, looks))
    }
    taken = {piece.look.id for piece in asked.values()}
    shown = []
    for number, piece in asked.items():
        year = best_of({"": piece.look}, makeable)
        others = {v: look for v, look in looks[piece.recipe.id].items() if look.id not in taken}
        best = year[week]
        if best.state == "none" and others:
            other = best_of(others, makeable)[week]
            best = other if other.state != "none" else best
        shown.append(ShownLook(number, piece, year, best))
    return tuple(shown)


def _asked(item: LinkItem, recipes: Mapping[str, Recipe], looks: Looks) -> Piece | None:
    recipe = recipes.get(item.recipe)
    if recipe is None:
        return None
    variant, size = variant_and_size(recipe, item.variant, item.size)
    look = looks.get(item.recipe, {}).get(variant)
    return Piece(recipe, look, size) if look else None


def light_of(link: StyleLink, site: Site) -> tuple[Spell, ...]:
    """The lights of a link's hours, in order; none where it says neither hours nor place."""
    if link.hours is None and link.where is None:
        return ()
    setting, light = (
        (link.where.setting, link.where.light) if link.where else ("outdoors", "daylight")
    )
    return spells(Occasion(site, link.date, link.hours, setting, light))
