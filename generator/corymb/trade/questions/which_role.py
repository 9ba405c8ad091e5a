"""Which of these plays depth in this recipe (or light, or accent)?

About: the role. Choices: stems of the recipe, of which one plays that role and no other, and the
others never play it there.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice

from corymb.studio.words import ROLES
from corymb.trade.questions.question import Known, Question, dealt, put

KIND = "which role"
AT_MOST = 2
"""So many roles are asked for in one recipe."""


def questions(known: Known) -> Iterator[Question]:
    """For each recipe one role or two."""
    for recipe in known.looks:
        asked = (each for role in dealt(ROLES, recipe) for each in _of_role(known, recipe, role))
        yield from islice(asked, AT_MOST)


def roles_in(known: Known, recipe: str) -> dict[str, set[str]]:
    """The roles that each stem plays in a recipe as written."""
    roles: dict[str, set[str]] = {}
    for line in known.own(recipe).lines:
        roles.setdefault(line.stem, set()).add(line.role)
    return roles


def _of_role(known: Known, recipe: str, role: str) -> Iterator[Question]:
    roles = roles_in(known, recipe)
    seed = f"{KIND} {recipe} {role}"
    rights = dealt((stem for stem, played in roles.items() if played == {role}), seed)
    others = dealt((stem for stem, played in roles.items() if role not in played), seed)
    if not rights:
        return
    wrong = known.apart(rights[0], others)
    style = known.recipes[recipe].style
    yield from put(KIND, style, recipe, (role,), rights[0], wrong)
