"""Which words go with a look, and which stems were they written for?

A variant may have a method, signs, cautions, care and a time of its own. What it leaves out is
taken from the variant it builds on, then from the recipe, and those words were written with the
stems of that one in mind. What has gone since is what a helper has to be told.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from corymb.studio.models import Recipe, Variant
from corymb.trade.changes import LookLine, changed
from corymb.trade.looks import base_lines, variant_path
from corymb.trade.step_notes import Gone


@dataclass(frozen=True)
class Stage:
    """A recipe or a variant on the way to a look, and its lines once its changes are made."""

    of: Recipe | Variant
    lines: tuple[LookLine, ...]


def stages_of(recipe: Recipe, variant_id: str, recipes: Mapping[str, Recipe]) -> tuple[Stage, ...]:
    """From the recipe that all starts from, by those based on it, to the look itself."""
    base = recipes.get(recipe.based_on or "")
    stages = stages_of(base, "", recipes) if base else ()
    lines = base_lines(recipe, recipes)
    lines = changed(lines, recipe) if recipe.based_on else lines
    stages = (*stages, Stage(recipe, lines))
    for step in variant_path(recipe, variant_id) if variant_id else ():
        lines = changed(lines, recipe.variants[step])
        stages = (*stages, Stage(recipe.variants[step], lines))
    return stages


def written(stages: tuple[Stage, ...], key: str) -> tuple[Any, int]:
    """What a look says under a key, and the stage that it was written for."""
    at = max(i for i, stage in enumerate(stages) if isinstance(stage.of, Recipe))
    for i in range(len(stages) - 1, at, -1):
        if own := getattr(stages[i].of, key):
            return own, i
    told = getattr(stages[at].of, key)
    while at and getattr(stages[at - 1].of, key) == told:
        at -= 1  # a recipe based on another holds a copy of the words that it took over
    return told, at


def gone_since(
    stages: tuple[Stage, ...], written_at: int, plants: Mapping[str, str]
) -> tuple[Gone, ...]:
    """The plants that a stage had and the look hasn't, each with what stands in for it.

    `plants` has each stem's name without its colour: another colour of a plant is no other plant.
    Where only some stems of a plant are swapped, it still stands for itself.
    """
    heirs = {line.stem: [line.stem] for line in stages[written_at].lines}
    for stage in stages[written_at + 1 :]:
        left = {line.stem for line in stage.lines}
        for swap in stage.of.swap:
            for line in heirs.values():
                if swap.out in line and swap.out not in left:
                    line.append(swap.in_)
    here = [plants[line.stem] for line in stages[-1].lines]
    gone: dict[str, list[str]] = {}
    for stem, line in heirs.items():
        if plants[stem] not in here:
            gone.setdefault(plants[stem], []).extend(_of(line, plants, here))
    return tuple(Gone(plant, tuple(dict.fromkeys(instead))) for plant, instead in gone.items())


def _of(stems: Iterable[str], plants: Mapping[str, str], here: list[str]) -> list[str]:
    return [plants[stem] for stem in stems if plants[stem] in here]
