"""Does every recipe lie in the folder of a style that the studio has?"""

from __future__ import annotations

from collections import defaultdict

from corymb.studio.models import Recipe
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.suggest import did_you_mean, nearest, or_list


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
        message = (
            f"A recipe lies in the folder of its style: move this one, for instance to {right}."
        )
        return Problem(source.file, 1, 1, message, source.line_of(1))
    there = f" The styles there are: {or_list(styles)}." if styles else ""
    more = f" {len(recipes) - 1} more of its recipes wait for it too." if len(recipes) > 1 else ""
    message = (
        f"This recipe lies in the folder ‘{style}’, and `styles` in studio.yml has no such style."
        f"{did_you_mean(style, styles) or there} Rename the folder, or add the style.{more}"
    )
    return Problem(source.file, 1, 1, message, source.line_of(1))
