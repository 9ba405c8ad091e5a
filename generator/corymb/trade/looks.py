"""What does a recipe come to, and each of its variants, once all changes are made?

A *look* is one of them worked out: its lines in whole stems, and what changed from its parent.
How each change is made is in `changes`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from corymb.studio.models import Recipe
from corymb.studio.suggest import did_you_mean
from corymb.studio.values.money import PriceGuide
from corymb.studio.values.share import Scale
from corymb.trade.changes import ChangeError, LookLine, changed, line_of
from corymb.trade.counts import Counted, in_proportion, scaled
from corymb.trade.room import room_in


@dataclass(frozen=True)
class Look:
    """A recipe (variant is '') or one of its variants, worked out."""

    recipe: str
    variant: str
    lines: tuple[LookLine, ...]
    parent_lines: tuple[LookLine, ...]
    unswapped: tuple[LookLine, ...] = ()
    """Where swaps are made: the lines before them, each in the place of what stands in for it."""

    @property
    def id(self) -> str:
        """`hedgerow-jar`, or `hedgerow-jar--later` for a variant."""
        return look_id(self.recipe, self.variant)

    @property
    def in_a_line(self) -> str:
        """`hedgerow-jar, later`, as a line of an order has it."""
        return f"{self.recipe}, {self.variant}" if self.variant else self.recipe

    @property
    def stems_total(self) -> int:
        """Whole stems in one piece."""
        return sum(line.count for line in self.lines)


def look_id(recipe: str, variant: str = "") -> str:
    """The id of a look, by the ids of its recipe and its variant."""
    return f"{recipe}--{variant}" if variant else recipe


def sized(look: Look, scale: Scale | None) -> list[int]:
    """Whole stems of each line in one of the recipe's sizes; as written without one.

    What stands in for another comes in for what that size would have had of it, in proportion.
    """
    if scale is None:
        return [line.count for line in look.lines]
    written = look.unswapped or look.lines
    lines = [Counted(line.count, line.role, line.essential) for line in written]
    counts = scaled(lines, Fraction(scale.factor))
    if not look.unswapped:
        return counts
    return [
        count if line.stem == was.stem else in_proportion(count, was.count, line.count)
        for count, was, line in zip(counts, written, look.lines, strict=True)
    ]


def name_of(recipe: Recipe, variant_id: str) -> str:
    """`Hedgerow jar`, or `Hedgerow jar: Later in the year`."""
    variant = recipe.variants.get(variant_id)
    return f"{recipe.name}: {variant.name}" if variant else recipe.name


def guide_of(recipe: Recipe, variant_id: str) -> PriceGuide | None:
    """A variant's own guide price where it has one, or else its recipe's."""
    variant = recipe.variants.get(variant_id)
    return (variant.price if variant else None) or recipe.price


def looks_of(recipe: Recipe, recipes: Mapping[str, Recipe]) -> dict[str, Look]:
    """The recipe's own look under '', and one for each variant.

    `recipes` holds those it may be based on. Raises ChangeError; its path starts at the
    recipe's file.
    """
    room = room_in(recipe)
    start = tuple(replace(line, room=room) for line in base_lines(recipe, recipes))
    own = changed(start, recipe) if recipe.based_on else start
    looks = {"": Look(recipe.id, "", own, start)}
    for variant_id in recipe.variants:
        lines, parent = _variant_lines(recipe, variant_id, own)
        looks[variant_id] = Look(recipe.id, variant_id, lines, parent)
    return looks


def base_lines(recipe: Recipe, recipes: Mapping[str, Recipe]) -> tuple[LookLine, ...]:
    """The lines a recipe starts from: its own, or the whole of the recipe it is based on."""
    if recipe.stems or recipe.based_on is None:
        return tuple(line_of(line) for line in recipe.stems)
    base = recipes.get(recipe.based_on)
    if base is None:
        return ()
    start = base_lines(base, recipes)
    return changed(start, base) if base.based_on else start


def _variant_lines(
    recipe: Recipe, variant_id: str, own: tuple[LookLine, ...]
) -> tuple[tuple[LookLine, ...], tuple[LookLine, ...]]:
    parent = own
    way = variant_path(recipe, variant_id)
    for step in way[:-1]:
        parent = changed(parent, recipe.variants[step], "variants", step)
    return changed(parent, recipe.variants[variant_id], "variants", variant_id), parent


def variant_path(recipe: Recipe, variant_id: str) -> list[str]:
    """From the first variant that stands on the recipe itself to `variant_id`.

    Raises ChangeError when one builds on a variant that isn't there, or on itself.
    """
    way = [variant_id]
    while (below := recipe.variants[way[0]].builds_on) is not None:
        here = ("variants", way[0], "builds on")
        if below not in recipe.variants:
            guess = did_you_mean(below, list(recipe.variants))
            raise ChangeError(f"This recipe has no variant called ‘{below}’.{guess}", *here)
        if below in way:
            circle = " → ".join([*way, below][way.index(below) :])
            raise ChangeError(f"These variants build on each other: {circle}.", *here)
        way.insert(0, below)
    return way


def look_by_id(known_as: str, recipes: Mapping[str, Recipe]) -> Look:
    """The look of an id like `hedgerow-jar--later`. Raises KeyError when there is none."""
    recipe, _, variant = known_as.partition("--")
    return looks_of(recipes[recipe], recipes)[variant]
