"""Does a look keep to what its style allows: no heavy heads, no hazard near food or skin?

Only advice: what a style excludes is the studio's own judgement, and so is breaking it.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.checks.looks import is_certain
from corymb.ledger import kept
from corymb.studio.models import Recipe, Style
from corymb.studio.models.recipe import Changes
from corymb.studio.problems import Problem
from corymb.studio.studio import Step, Studio
from corymb.trade.changes import ChangeError
from corymb.trade.looks import looks_of
from corymb.trade.swaps.fitting import misfits


def against_the_style(studio: Studio) -> list[Problem]:
    """Each stem of a recipe or variant that its style would not have, once a recipe."""
    return [problem for recipe_id in studio.recipes for problem in _in_recipe(studio, recipe_id)]


@kept
def _in_recipe(studio: Studio, recipe_id: str) -> tuple[Problem, ...]:
    house, recipe = studio.sources.get(("studio", "studio")), studio.recipes[recipe_id]
    style = studio.house.styles.get(recipe.style)
    doubtful = house is not None and house.has_doubts("styles", recipe.style)
    if style is None or doubtful or not is_certain(studio, recipe):
        return ()
    return tuple(_of_recipe(studio, recipe, style))


def _of_recipe(studio: Studio, recipe: Recipe, style: Style) -> Iterator[Problem]:
    source = studio.sources["recipe", recipe.id]
    told: set[str] = set()
    try:
        looks = looks_of(recipe, studio.recipes)
    except ChangeError:
        return
    for variant_id, look in looks.items():
        for line in look.lines:
            stem = studio.stems.get(line.stem)
            if stem is None or line.stem in told or studio.sources["stem", line.stem].has_doubts():
                continue
            told.add(line.stem)
            place = _place(studio, recipe, variant_id, line.stem)
            for hurts, reason in misfits(stem, style) if place else ():
                message = f"‘{line.stem}’ {reason}"
                yield source.problem(message, *place, advice=True, word=line.stem, hurts=hurts)


def _place(studio: Studio, recipe: Recipe, variant_id: str, stem: str) -> tuple[Step, ...]:
    """The line of the file that brings the stem in; none when that is told at its base."""
    here: tuple[Step, ...] = ("variants", variant_id) if variant_id else ()
    changes: Changes = recipe.variants[variant_id] if variant_id else recipe
    own = {
        "stems": [line.stem for line in recipe.stems] if not variant_id else [],
        "swap": [swap.in_ for swap in changes.swap],
        "add": [line.stem for line in changes.add],
    }
    for key, stems in own.items():
        if stem in stems:
            return (*here, key, stems.index(stem))
    if variant_id:
        return here
    base = studio.recipes.get(recipe.based_on or "")
    return () if base is None or base.style == recipe.style else ("based on",)
