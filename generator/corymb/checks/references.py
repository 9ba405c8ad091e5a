"""Does everything that one file says of another exist?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from pathlib import Path

from corymb.checks.named import Named, NamedLook, looks_in, names_elsewhere, names_in_recipe
from corymb.ledger import kept
from corymb.studio.models import Recipe
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import FEW, did_you_mean
from corymb.studio.words import NOUNS
from corymb.trade.order_lines import sizes_of

NAMED = ("stem", "recipe", "technique", "vehicle", "standing")
MOST_TOLD = 100
"""So many lost names of one file are told one by one."""
WRITE_FIRST = {
    "stem": " Write it first, with `corymb new stem`.",
    "recipe": " Write it first, with `corymb new recipe`.",
    "technique": " Write it first, in techniques/{name}.md.",
    "standing": " Write it first, in orders/standing/{name}.yml.",
}


def broken_references(studio: Studio) -> list[Problem]:
    """Every name that leads nowhere, with the nearest names that do."""
    return [
        *(problem for recipe_id in studio.recipes for problem in _in_recipe(studio, recipe_id)),
        *_elsewhere(studio),
        *(problem for look in looks_in(studio) for problem in _strange_look(studio, look)),
    ]


@kept
def _in_recipe(studio: Studio, recipe_id: str) -> tuple[Problem, ...]:
    return tuple(_lost_of(studio, names_in_recipe(studio, recipe_id)))


@kept
def _elsewhere(studio: Studio) -> tuple[Problem, ...]:
    return tuple(_lost_of(studio, names_elsewhere(studio)))


@kept
def known_names(studio: Studio, kind: str) -> frozenset[str]:
    """The names there are of a kind, those in files that couldn't be read among them."""
    if kind == "vehicle":
        return frozenset(vehicle.name for vehicle in studio.house.vehicles)
    named = frozenset(name for source_kind, name in studio.sources if source_kind == kind)
    return named | studio.heard_of.get(kind, frozenset())


def _lost_of(studio: Studio, names: Iterable[Named]) -> Iterator[Problem]:
    known = {kind: known_names(studio, kind) for kind in NAMED}
    by_file: dict[Path, list[Named]] = {}
    for named in names:
        if named.name not in known[named.kind] and not _in_doubt(studio, named):
            by_file.setdefault(named.source.file, []).append(named)
    for lost in by_file.values():
        yield from (_lost(named, known[named.kind]) for named in lost[:MOST_TOLD])
        if len(lost) > MOST_TOLD:
            yield _and_more(lost[MOST_TOLD], len(lost) - MOST_TOLD)


def _in_doubt(studio: Studio, named: Named) -> bool:
    """Whether the name may well stand in what couldn't be read."""
    if named.kind == "stem":
        return studio.stems_are_lost
    house = studio.sources.get(("studio", "studio"))
    return named.kind == "vehicle" and house is not None and house.has_doubts("vehicles")


def _and_more(first: Named, number: int) -> Problem:
    names = f"{number:,} more names lead" if number > 1 else "One more name leads"
    message = f"{names} nowhere in this file, from here on. Mend those above first."
    return first.source.problem(message, *first.path, at_key=first.at_key, word=first.name)


def _lost(named: Named, known: frozenset[str]) -> Problem:
    where = " in studio.yml" if named.kind == "vehicle" else ""
    first = WRITE_FIRST.get(named.kind, "").format(name=named.name)
    hint = did_you_mean(named.name, sorted(known)) or first or _there_are(known)
    message = f"There is no {NOUNS.get(named.kind, named.kind)} called ‘{named.name}’{where}.{hint}"
    return named.source.problem(message, *named.path, at_key=named.at_key, word=named.name)


def _there_are(known: Iterable[str]) -> str:
    names = sorted(known)
    if not names:
        return " It has none at all; write one there."
    return f" It has {and_list(names)}." if len(names) <= FEW else ""


def _strange_look(studio: Studio, look: NamedLook) -> Iterator[Problem]:
    """A variant or a size that the recipe hasn't got."""
    recipe = studio.recipes.get(look.recipe)
    if recipe is None or _is_unclear(studio, recipe):
        return
    variants = list(recipe.variants)
    sizes = list(sizes_of(recipe)) if look.has_size else []
    if look.variant in sizes and look.size in variants:
        message = (
            f"The variant goes before the size: write ‘{look.recipe}, {look.size}, {look.variant}’."
        )
        yield look.source.problem(message, *look.path, word=look.variant or "")
        return
    if look.variant is not None and look.variant not in variants:
        if look.size is not None or not sizes:
            yield _none_called(look, "variant", look.variant, variants)
        elif look.variant not in sizes:  # a single word may be either
            yield _none_called(look, "variant or size", look.variant, [*variants, *sizes])
    if look.size is not None and look.size not in sizes:
        yield _none_called(look, "size", look.size, sizes)


def _is_unclear(studio: Studio, recipe: Recipe) -> bool:
    source = studio.sources["recipe", recipe.id]
    return source.in_doubt("variants") or source.in_doubt("sizes")


def _none_called(look: NamedLook, what: str, name: str, known: list[str]) -> Problem:
    there = f" It has {and_list(known)}." if known else " It has none; take the word out."
    message = f"‘{look.recipe}’ has no {what} called ‘{name}’.{did_you_mean(name, known) or there}"
    return look.source.problem(message, *look.path, what.split()[0], word=name)
