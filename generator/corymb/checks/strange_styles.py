"""Does every recipe lie in the folder of a style that the studio has?"""

from __future__ import annotations

from collections import defaultdict

from corymb.studio.models import Recipe
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean, nearest


def strange_styles(studio: Studio) -> list[Problem]:
    """Each folder that no style has, told at the first recipe in it."""
    if studio.sources["studio", "studio"].has_doubts("styles"):
        return []
    strange: dict[str, list[Recipe]] = defaultdict(list)
    for recipe in studio.recipes.values():
        if recipe.style not in studio.house.styles:
            strange[recipe.style].append(recipe)
    return [_told(studio, style, recipes) for style, recipes in strange.items()]


def _told(studio: Studio, style: str, recipes: list[Recipe]) -> Problem:
    source = studio.sources["recipe", recipes[0].id]
    styles = list(studio.house.styles)
    near = nearest(style, styles, limit=1)
    right = f"recipes/{near[0] if near else styles[0] if styles else 'posy'}/"
    if source.file.parent == studio.folder / "recipes":
        message = f"This recipe lies in no style's folder: move it, for instance to {right}."
        return Problem(source.file, 1, 1, message, source.line_of(1))
    what = "This recipe lies" if len(recipes) == 1 else f"{len(recipes)} recipes lie"
    there = f" It has {and_list(styles)}." if styles else ""
    message = (
        f"{what} in the folder ‘{style}’, but `styles` in studio.yml has none of that name."
        f"{did_you_mean(style, styles) or there} Rename the folder, or add the style."
    )
    return Problem(source.file, 1, 1, message, source.line_of(1))
