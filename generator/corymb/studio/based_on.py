"""What does a recipe based on another take over from it?

Every key but its own: its name, its stems and the changes to them, its photos, notes, variants
and whether it is a draft. The stems themselves are worked out in `corymb.trade.looks`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from corymb.studio.circles import ARROW, circles
from corymb.studio.mending import Doubts
from corymb.studio.models.recipe import Recipe, inherited_keys
from corymb.studio.problems import Problem
from corymb.studio.shape import keys_of
from corymb.studio.studio import Source
from corymb.studio.suggest import did_you_mean, nearest

KEY = "based on"


@dataclass
class RecipeKeys:
    """A recipe's keys, those taken over among them."""

    data: dict[str, Any]
    doubts: Doubts = frozenset()
    """Where its base is wrong, which has been told."""
    elsewhere: Doubts = frozenset()
    """The keys that it leaves to its base; mistakes in them are told there."""


@dataclass
class Filled:
    """All recipes by id, and what is wrong with their bases."""

    recipes: dict[str, RecipeKeys] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)


def fill_in(sources: Mapping[str, Source], named: frozenset[str]) -> Filled:
    """Every recipe with the keys it takes over.

    `named` has the names of all recipes, those whose files couldn't be read among them.
    """
    filled = Filled({known_as: _written(source) for known_as, source in sources.items()})
    filled.problems += _cut_circles(filled.recipes, sources)
    for known_as, recipe in filled.recipes.items():
        base = _base(recipe.data)
        if base is None or base in named:
            continue
        recipe.doubts |= {(KEY,)}
        guess = did_you_mean(base, sorted(named - {known_as}))
        message = f"There is no recipe called ‘{base}’ to start from.{guess}"
        filled.problems.append(sources[known_as].problem(message, KEY))
    for known_as, recipe in filled.recipes.items():
        _take_over(recipe, list(_bases(known_as, filled.recipes)))
    return filled


def _written(source: Source) -> RecipeKeys:
    told = (KEY,) in source.tree.left_out or _is_one_misspelt(tuple(source.tree.data))
    return RecipeKeys(dict(source.tree.data), frozenset({(KEY,)}) if told else frozenset())


@lru_cache(maxsize=1024)
def _is_one_misspelt(written: tuple[str, ...]) -> bool:
    """Most recipes have the same keys, and all are asked at every save."""
    return any(_is_misspelt(key) for key in written)


def _is_misspelt(key: str) -> bool:
    """Whether a key that no recipe has was most likely meant to be `based on`."""
    keys = keys_of(Recipe)
    return key not in keys and nearest(key, keys, limit=1) == [KEY]


def _take_over(recipe: RecipeKeys, bases: list[RecipeKeys]) -> None:
    if KEY not in recipe.data and not recipe.doubts:
        return
    recipe.elsewhere = frozenset({(key,) for key in inherited_keys() if key not in recipe.data})
    for base in bases:
        taken = {k: v for k, v in base.data.items() if k in inherited_keys()}
        recipe.data = {**taken, **recipe.data}


def _base(data: Mapping[str, Any]) -> str | None:
    base = data.get(KEY)
    return base if isinstance(base, str) else None


def _bases(known_as: str, recipes: Mapping[str, RecipeKeys]) -> Iterator[RecipeKeys]:
    """The recipe's base, its base's base and so on, as far as they are there."""
    base = _base(recipes[known_as].data)
    while base is not None and base in recipes:
        yield recipes[base]
        base = _base(recipes[base].data)


def _cut_circles(
    recipes: Mapping[str, RecipeKeys], sources: Mapping[str, Source]
) -> Iterator[Problem]:
    """Tell each circle once, and let each recipe in it stand alone from here on."""
    bases = {known_as: _base(recipe.data) for known_as, recipe in recipes.items()}
    for way in circles({known_as: [base] if base else [] for known_as, base in bases.items()}):
        message = (
            f"These recipes are based on each other: {ARROW.join(way)}. "
            "One of them must have stems of its own, and no `based on`."
            if len(way) > 2
            else "This recipe is based on itself: name another one, or give it stems of its own."
        )
        yield sources[way[0]].problem(message, KEY)
        for known_as in way:
            recipes[known_as].data.pop(KEY, None)
            recipes[known_as].doubts |= {(KEY,)}
