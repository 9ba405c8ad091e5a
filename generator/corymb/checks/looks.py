"""Can every change that a variant, or a recipe based on another, asks for be made?"""

from __future__ import annotations

from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.trade.looks import ChangeError, looks_of


def broken_changes(studio: Studio) -> list[Problem]:
    """The first change of each recipe that can't be made."""
    problems = []
    for recipe_id, recipe in studio.recipes.items():
        source = studio.sources["recipe", recipe_id]
        try:
            looks = looks_of(recipe, studio.recipes)
        except ChangeError as error:
            problems.append(source.problem(str(error), *error.path))
            continue
        for variant_id, look in looks.items():
            if not look.lines and recipe.based_on in (None, *studio.recipes):
                path = ("variants", variant_id) if variant_id else ()
                problems.append(source.problem("nothing is left in it after its changes.", *path))
    return problems
