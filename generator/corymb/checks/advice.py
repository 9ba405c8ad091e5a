"""What would the studio rather know before a client finds it?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.checks.looks import is_certain
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.trade.changes import ChangeError
from corymb.trade.looks import looks_of
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import weeks_of_look


def overlooked(studio: Studio) -> list[Problem]:
    """Recipes whose stems never stand together, so that they can't be made as pictured."""
    return list(_never_together(studio))


def _never_together(studio: Studio) -> Iterator[Problem]:
    beds = Beds.of(studio)
    for recipe in studio.recipes.values():
        if not is_certain(studio, recipe):
            continue
        try:
            look = looks_of(recipe, studio.recipes)[""]
        except ChangeError:
            continue
        known = all(_is_known(studio, line.stem) for line in look.lines)
        if known and look.lines and not weeks_of_look(look, beds):
            message = (
                "Its stems are never in season together, so it can't be made as pictured: "
                "swap one of them for another."
            )
            source = studio.sources["recipe", recipe.id]
            place = "stems" if recipe.stems else "based on"
            yield source.problem(message, place, advice=True, at_key=True)


def _is_known(studio: Studio, stem: str) -> bool:
    return stem in studio.stems and not studio.sources["stem", stem].has_doubts()
