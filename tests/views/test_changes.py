"""What differs is told from the recipe that a visitor knows, what comes in before what goes."""

from __future__ import annotations

from collections import defaultdict
from datetime import date

import pytest

from corymb.studio.load import read_studio
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.recipes import recipe_view
from corymb.views.recipe import ClientRecipe
from tests import conftest


@pytest.fixture(scope="module")
def catalogue() -> Catalogue:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    no_picture = defaultdict(lambda: Drawing("picture.svg", 1200, 1400))
    return Catalogue(studio, "clients", date(2026, 9, 16), drawings=no_picture)


def view(catalogue: Catalogue, recipe: str, variant: str = "") -> ClientRecipe:
    return recipe_view(catalogue, catalogue.looks[recipe][variant])


def test_a_variants_changes_are_told_in_few_words(catalogue: Catalogue) -> None:
    words = [change.words for change in view(catalogue, "hedgerow-jar", "later").changes]
    assert words == [
        "With 2 Tall verbena, violet",
        "With 2 Zinnia, coral",
        "Without Marjoram, mauve",
        "Without Crocosmia, ember",
    ]


def test_a_variant_on_a_variant_is_told_from_the_recipe_itself(catalogue: Catalogue) -> None:
    recipe = catalogue.studio.recipes["hedgerow-jar"]
    assert recipe.variants["last-of-the-lane"].builds_on == "later"
    changed = view(catalogue, "hedgerow-jar", "last-of-the-lane")
    own = {line.name for line in view(catalogue, "hedgerow-jar").lines}
    gone = {change.name for change in changed.changes if change.kind == "dropped"}
    assert gone and gone <= own
    assert changed.changed_from and changed.changed_from.label == "Hedgerow jar"


def test_a_recipe_based_on_another_says_which(catalogue: Catalogue) -> None:
    changed = view(catalogue, "jackdaw-hand-tie")
    assert changed.changed_from
    assert changed.changed_from.href == "arrangements/rooks-wing-hand-tie.html"
    assert changed.changes


def test_a_recipe_of_its_own_has_no_changes(catalogue: Catalogue) -> None:
    assert view(catalogue, "hedgerow-jar").changed_from is None
    assert view(catalogue, "hedgerow-jar").changes == ()
