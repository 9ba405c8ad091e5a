"""What goes with an arrangement is known to whoever reads it, and says why."""

from __future__ import annotations

from dataclasses import replace

import pytest

from corymb.trade.kinship import Kin
from corymb.views.compose.kin import why
from corymb.views.compose.recipes import recipe_view
from tests.views.making import catalogue_of, demo

CLIENTS = catalogue_of(demo())


@pytest.mark.parametrize(
    ("shared", "palette", "words"),
    [
        (("cosmos-white",), 4.0, "shares white cosmos; close in colour"),
        (
            ("cosmos-white", "burnet-wine", "zinnia-coral"),
            15.0,
            "shares white cosmos and 2 more; not far in colour",
        ),
        (("cosmos-white",), 25.0, "shares white cosmos"),
        ((), 8.0, "close in colour"),
    ],
    ids=["near", "middling", "far", "nothing-shared"],
)
def test_why_is_told_by_stems_and_colour(
    shared: tuple[str, ...], palette: float, words: str
) -> None:
    assert why(CLIENTS, Kin("hedgerow-jar", shared, palette, 0.0)) == words


def test_at_most_three_are_shown_and_never_the_recipe_itself() -> None:
    views = {known_as: recipe_view(CLIENTS, looks[""]) for known_as, looks in CLIENTS.looks.items()}
    assert max(len(view.goes_with) for view in views.values()) == 3
    assert not [
        view.name for view in views.values() if view.name in [k.name for k in view.goes_with]
    ]


def test_every_one_says_why() -> None:
    looks = (each[""] for each in CLIENTS.looks.values())
    kin = [other for look in looks for other in recipe_view(CLIENTS, look).goes_with]
    assert kin and all(other.why for other in kin)


def test_a_draft_goes_with_nothing_that_clients_see() -> None:
    jar = recipe_view(CLIENTS, CLIENTS.looks["rooks-wing-hand-tie"][""])
    nearest = jar.goes_with[0]
    studio = replace(demo())
    hidden = next(r for r in studio.recipes.values() if r.name == nearest.name)
    draft = hidden.model_copy(update={"draft": True})
    studio.recipes = {**studio.recipes, hidden.id: draft}
    for audience, shown in (("clients", False), ("staff", True)):
        catalogue = catalogue_of(studio, audience)  # type: ignore[arg-type]
        view = recipe_view(catalogue, catalogue.looks["rooks-wing-hand-tie"][""])
        assert (nearest.name in [other.name for other in view.goes_with]) == shown
