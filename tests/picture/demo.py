"""Every look of the demo studio as an arrangement, and its picture, drawn once a run."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from corymb.picture import Arrangement, draw
from corymb.site.drawn.pictured import arrangement_of
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio
from corymb.trade.looks import Look, looks_of

CONTENT = Path(__file__).parents[2] / "content"


@cache
def demo() -> Studio:
    """The demo studio; its problems are another test's matter."""
    studio, _ = read_studio(CONTENT)
    assert studio is not None
    return studio


@cache
def demo_looks() -> dict[str, Look]:
    """Recipes and their variants, by id."""
    recipes = demo().recipes
    looks = [look for recipe in recipes.values() for look in looks_of(recipe, recipes).values()]
    return {look.id: look for look in looks}


@cache
def arrangement(look_id: str) -> Arrangement:
    look = demo_looks()[look_id]
    return arrangement_of(demo().recipes[look.recipe], look, demo().stems)


@cache
def picture(look_id: str) -> str:
    return draw(arrangement(look_id))
