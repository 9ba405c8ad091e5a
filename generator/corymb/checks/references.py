"""Does everything that one file says of another exist?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from corymb.studio.models.order import Order, StandingOrder
from corymb.studio.models.recipe import Changes, Recipe
from corymb.studio.problems import Problem
from corymb.studio.studio import Source, Step, Studio
from corymb.studio.suggest import did_you_mean
from corymb.trade.order_lines import sizes_of, variant_and_size


@dataclass(frozen=True)
class Reference:
    """A name one file gives for something of another kind, and where it stands."""

    source: Source
    path: tuple[Step, ...]
    kind: str
    name: str
    at_key: bool = False


def broken_references(studio: Studio) -> list[Problem]:
    """Every name that leads nowhere, with the nearest names that do."""
    return [p for r in _references(studio) if (p := _broken(r, studio)) is not None]


def _broken(reference: Reference, studio: Studio) -> Problem | None:
    known = known_names(studio, reference.kind)
    if reference.name in known:
        return None
    what = reference.kind.split(":")[0]
    guess = did_you_mean(reference.name, known)
    message = f"there is no {what} called ‘{reference.name}’.{guess}"
    if what in ("stem", "recipe") and not guess:
        message += f" Write it first: `corymb new {what}`."
    return reference.source.problem(message, *reference.path, at_key=reference.at_key)


def known_names(studio: Studio, kind: str) -> set[str]:
    """The names there are of a kind, those in files with faults of their own included.

    `variant:RECIPE` and `size:RECIPE` are the variants and sizes of one recipe.
    """
    what, _, recipe_id = kind.partition(":")
    if what in ("variant", "size"):
        recipe = studio.recipes.get(recipe_id)
        return _names_in(recipe, what)
    named = {name for source_kind, name in studio.sources if source_kind == what}
    match what:
        case "stem":
            return named | _raw_stems(studio)
        case "style":
            return set(studio.house.styles)
        case "vehicle":
            return {vehicle.name for vehicle in studio.house.vehicles}
        case "technique":
            return named | set(studio.techniques)
    return named


def _names_in(recipe: Recipe | None, what: str) -> set[str]:
    if recipe is None:
        return set()
    return set(recipe.variants if what == "variant" else sizes_of(recipe))


def _raw_stems(studio: Studio) -> set[str]:
    names: set[str] = set()
    for (kind, _), source in studio.sources.items():
        data = source.tree.data
        if kind == "stems" and isinstance(data, dict) and isinstance(data.get("stems"), dict):
            names |= set(data["stems"])
    return names


def _references(studio: Studio) -> Iterator[Reference]:
    for recipe_id, recipe in studio.recipes.items():
        yield from _of_recipe(studio.sources["recipe", recipe_id], recipe)
    for made_id, made in studio.made.items():
        yield from _of_look(
            studio.sources["made", made_id], (), made.recipe, made.variant, None, studio
        )
    for link_id, link in studio.links.items():
        source = studio.sources["link", link_id]
        for i, item in enumerate(link.show):
            path: tuple[Step, ...] = ("show", i)
            yield from _of_look(source, path, item.recipe, item.variant, item.size, studio)
    yield from _of_orders(studio)
    for kind, key, files in (
        ("walk", "counts", {k: w.counts for k, w in studio.walks.items()}),
        ("log", "cuts", {k: log.cuts for k, log in studio.logs.items()}),
        ("order", "used", {k: order.used for k, order in studio.orders.items()}),
    ):
        for known_as, stems in files.items():
            yield from _stems(studio.sources[kind, known_as], key, stems)
    for technique_id, technique in studio.techniques.items():
        source = studio.sources["technique", technique_id]
        for i, need in enumerate(technique.heading.needs):
            yield Reference(source, ("needs", i), "technique", need)


def _stems(source: Source, key: str, stems: Iterable[str]) -> Iterator[Reference]:
    for stem in stems:
        yield Reference(source, (key, stem), "stem", stem, at_key=True)


def _of_recipe(source: Source, recipe: Recipe) -> Iterator[Reference]:
    yield Reference(source, (), "style", recipe.style)
    for i, technique in enumerate(recipe.techniques):
        yield Reference(source, ("techniques", i), "technique", technique)
    for i, line in enumerate(recipe.stems):
        yield Reference(source, ("stems", i), "stem", line.stem)
    yield from _of_changes(source, (), recipe)
    for variant_id, variant in recipe.variants.items():
        yield from _of_changes(source, ("variants", variant_id), variant)


def _of_changes(source: Source, path: tuple[Step, ...], changes: Changes) -> Iterator[Reference]:
    for i, swap in enumerate(changes.swap):
        yield Reference(source, (*path, "swap", i), "stem", swap.in_)
    for i, line in enumerate(changes.add):
        yield Reference(source, (*path, "add", i), "stem", line.stem)


def _of_look(
    source: Source,
    path: tuple[Step, ...],
    recipe: str,
    variant: str | None,
    size: str | None,
    studio: Studio,
) -> Iterator[Reference]:
    yield Reference(source, (*path, "recipe"), "recipe", recipe)
    if recipe not in studio.recipes:
        return
    variant_id, size_name = variant_and_size(studio.recipes[recipe], variant, size)
    if variant_id:
        yield Reference(source, (*path, "variant"), f"variant:{recipe}", variant_id)
    yield Reference(source, (*path, "size"), f"size:{recipe}", size_name)


def _of_orders(studio: Studio) -> Iterator[Reference]:
    orders: list[tuple[str, str, Order | StandingOrder]] = [
        *(("order", known_as, order) for known_as, order in studio.orders.items()),
        *(("standing", known_as, order) for known_as, order in studio.standing_orders.items()),
    ]
    for kind, known_as, order in orders:
        source = studio.sources[kind, known_as]
        for i, line in enumerate(order.lines):
            path: tuple[Step, ...] = ("lines", i)
            yield from _of_look(source, path, line.recipe, line.variant, line.size, studio)
        if isinstance(order, StandingOrder):
            for i, recipe in enumerate(order.rotation):
                yield Reference(source, ("rotation", i), "recipe", recipe)
        if order.vehicle:
            yield Reference(source, ("vehicle",), "vehicle", order.vehicle)
