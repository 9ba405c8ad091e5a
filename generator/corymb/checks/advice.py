"""What would the studio rather know before a client finds it?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.trade.looks import ChangeError, looks_of
from corymb.trade.weeks import weeks_of_look


def overlooked(studio: Studio) -> list[Problem]:
    """Recipes whose stems never stand together, so that they can't be made as pictured."""
    return list(_never_together(studio))


def _never_together(studio: Studio) -> Iterator[Problem]:
    for recipe in studio.recipes.values():
        try:
            look = looks_of(recipe, studio.recipes)[""]
        except ChangeError:
            continue
        known = all(line.stem in studio.stems for line in look.lines)
        if known and look.lines and not weeks_of_look(look, studio.stems):
            message = "its stems are never in season together, so it can't be made as pictured."
            source = studio.sources["recipe", recipe.id]
            yield source.problem(message, "stems", advice=True)

