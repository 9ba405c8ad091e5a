"""Which recipes do the studio's orders name, and what are those based on?"""

from __future__ import annotations

from corymb.studio.models import Recipe
from corymb.studio.studio import Studio


def named_by_orders(studio: Studio) -> dict[str, Recipe]:
    """Every recipe that an order, a standing order or its rotation names, with all its bases."""
    found: dict[str, Recipe] = {}
    lines = [line for order in studio.orders.values() for line in order.lines]
    named = [line.recipe for line in lines]
    for standing in studio.standing_orders.values():
        named += [*(line.recipe for line in standing.lines), *standing.rotation]
    for known_as in named:
        waiting = [known_as]
        while waiting:
            recipe = studio.recipes.get(waiting.pop())
            if recipe is not None and recipe.id not in found:
                found[recipe.id] = recipe
                waiting += [recipe.based_on] if recipe.based_on else []
    return found
