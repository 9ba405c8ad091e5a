"""What does a recipe based on another take over from it?

Every key but its own: its name, its stems and the changes to them, its photos, notes, variants
and whether it is a draft. The stems themselves are worked out in `corymb.trade.looks`.
"""

from __future__ import annotations

from typing import Any

from corymb.studio.models.recipe import inherited_keys
from corymb.studio.problems import Problem
from corymb.studio.studio import Source
from corymb.studio.suggest import did_you_mean

Written = dict[tuple[str, str], dict[str, Any]]
KEY = "based on"


def fill_in(written: Written, sources: dict[tuple[str, str], Source]) -> list[Problem]:
    """Give every recipe in `written` the keys it takes over; problems where a base is wrong."""
    recipes = {known_as: data for (kind, known_as), data in written.items() if kind == "recipe"}
    problems = []
    for known_as, data in recipes.items():
        chain = _chain(known_as, recipes)
        source = sources["recipe", known_as]
        if chain[-1] not in recipes:
            guess = did_you_mean(chain[-1], list(recipes))
            if len(chain) == 2:
                message = f"there is no recipe called ‘{chain[-1]}’.{guess}"
                problems.append(source.problem(message, KEY))
            continue
        if len(set(chain)) < len(chain):
            way = " → ".join(chain)
            message = f"this recipe comes back to itself: {way}. One of them must stand alone."
            problems.append(source.problem(message, KEY))
            data.pop(KEY)
    for known_as, data in recipes.items():
        for base in _chain(known_as, recipes)[1:]:
            taken = {k: v for k, v in recipes.get(base, {}).items() if k in inherited_keys()}
            data.update({k: v for k, v in taken.items() if k not in data})
    return problems


def _chain(known_as: str, recipes: dict[str, dict[str, Any]]) -> list[str]:
    """The recipe, its base, its base's base ... until one stands alone, is missing, or returns."""
    chain = [known_as]
    while (base := recipes.get(chain[-1], {}).get(KEY)) is not None:
        chain.append(str(base))
        if chain.count(str(base)) > 1:
            break
    return chain
