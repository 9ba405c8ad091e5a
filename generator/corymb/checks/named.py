"""Which names of other things do the studio's files give, and where?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from corymb.studio.models.order import Order, StandingOrder
from corymb.studio.models.recipe import Changes, Recipe
from corymb.studio.shape import Steps
from corymb.studio.studio import Source, Studio


@dataclass(frozen=True)
class Named:
    """A name that one file gives for something of another kind, and where it stands."""

    source: Source
    path: Steps
    kind: str
    name: str
    at_key: bool = False


@dataclass(frozen=True)
class NamedLook:
    """A recipe that is named, with one of its variants or sizes."""

    source: Source
    path: Steps
    recipe: str
    variant: str | None
    size: str | None = None
    has_size: bool = True
    """Whether a size may be named as well."""


def names_in_recipe(studio: Studio, recipe_id: str) -> Iterator[Named]:
    """Every name that a recipe gives and that doesn't stand in doubt itself."""
    source = studio.sources["recipe", recipe_id]
    yield from _certain(_of_recipe(source, studio.recipes[recipe_id]))


def names_elsewhere(studio: Studio) -> Iterator[Named]:
    """Every such name in all other files."""
    yield from _certain(_beside_recipes(studio))


def _certain(names: Iterable[Named]) -> Iterator[Named]:
    return (named for named in names if not named.source.in_doubt(*named.path))


def looks_in(studio: Studio) -> Iterator[NamedLook]:
    """Every recipe, with its variant and size, that is ordered, shown or was made."""
    for look in _all_looks(studio):
        if not look.source.in_doubt(*look.path):
            yield look


def _beside_recipes(studio: Studio) -> Iterator[Named]:
    for look in _all_looks(studio):
        yield Named(look.source, (*look.path, "recipe"), "recipe", look.recipe)
    for kind, known_as, order in _orders(studio):
        source = studio.sources[kind, known_as]
        if order.vehicle:
            yield Named(source, ("vehicle",), "vehicle", order.vehicle)
        if isinstance(order, Order) and order.visit_of:
            yield Named(source, ("visit of",), "standing", order.visit_of)
        if isinstance(order, StandingOrder):
            for i, rotated in enumerate(order.rotation):
                yield Named(source, ("rotation", i), "recipe", rotated)
    for technique_id, technique in studio.techniques.items():
        source = studio.sources["technique", technique_id]
        for i, need in enumerate(technique.heading.needs):
            yield Named(source, ("needs", i), "technique", need)
    yield from _stems_as_keys(studio)


def _stems_as_keys(studio: Studio) -> Iterator[Named]:
    lists: list[tuple[str, str, str, Iterable[str]]] = [
        *(("walk", known_as, "counts", w.counts) for known_as, w in studio.walks.items()),
        *(("log", known_as, "cuts", log.cuts) for known_as, log in studio.logs.items()),
        *(("order", known_as, "used", o.used) for known_as, o in studio.orders.items()),
    ]
    for kind, known_as, key, stems in lists:
        for stem in stems:
            yield Named(studio.sources[kind, known_as], (key, stem), "stem", stem, at_key=True)


def _of_recipe(source: Source, recipe: Recipe) -> Iterator[Named]:
    for i, technique in enumerate(recipe.techniques):
        if "techniques" in source.tree.data:  # not those taken over, which are told once
            yield Named(source, ("techniques", i), "technique", technique)
    for i, line in enumerate(recipe.stems):
        yield Named(source, ("stems", i, "stem"), "stem", line.stem)
    yield from _of_changes(source, (), recipe)
    for variant_id, variant in recipe.variants.items():
        yield from _of_changes(source, ("variants", variant_id), variant)


def _of_changes(source: Source, path: Steps, changes: Changes) -> Iterator[Named]:
    for i, swap in enumerate(changes.swap):
        yield Named(source, (*path, "swap", i, "in"), "stem", swap.in_)
    for i, line in enumerate(changes.add):
        yield Named(source, (*path, "add", i, "stem"), "stem", line.stem)


def _all_looks(studio: Studio) -> Iterator[NamedLook]:
    for made_id, made in studio.made.items():
        source = studio.sources["made", made_id]
        yield NamedLook(source, (), made.recipe, made.variant, has_size=False)
    for link_id, link in studio.links.items():
        source = studio.sources["link", link_id]
        for i, item in enumerate(link.show):
            yield NamedLook(source, ("show", i), item.recipe, item.variant, item.size)
    for kind, known_as, order in _orders(studio):
        source = studio.sources[kind, known_as]
        for i, line in enumerate(order.lines):
            yield NamedLook(source, ("lines", i), line.recipe, line.variant, line.size)


def _orders(studio: Studio) -> Iterator[tuple[str, str, Order | StandingOrder]]:
    for known_as, order in studio.orders.items():
        yield "order", known_as, order
    for known_as, standing in studio.standing_orders.items():
        yield "standing", known_as, standing
