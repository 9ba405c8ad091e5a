"""A draft shows through nowhere: neither by its name, nor by what hangs on it.

The demo's studio, with a recipe made a draft that another is based on and that made work followed,
and two variants of the jar made drafts, on one of which another builds.
"""

from __future__ import annotations

from collections import defaultdict
from datetime import date

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import Recipe
from corymb.views.compose.catalogue import Catalogue, Drawing
from corymb.views.compose.prose import Prose, lesson_view
from corymb.views.compose.recipes import card_of, recipe_view
from corymb.views.compose.stems import stem_view
from corymb.views.pieces import Audience
from corymb.views.recipe import ClientRecipe
from tests import conftest

BASE, BASED = "rooks-wing-hand-tie", "jackdaw-hand-tie"
JAR, DRAFTS, BUILT = "hedgerow-jar", ("june", "later"), "last-of-the-lane"
LESSON = "spiralling-a-hand-tie"  # the base names it
ONLY_IN_JUNE = "cornflower-plum"  # comes into the jar with that variant alone
UNWRITTEN = Prose("", ())


def with_drafts(recipes: dict[str, Recipe]) -> dict[str, Recipe]:
    base, jar = recipes[BASE], recipes[JAR]
    variants = {
        known_as: variant.model_copy(update={"draft": known_as in DRAFTS})
        for known_as, variant in jar.variants.items()
    }
    return {
        **recipes,
        BASE: base.model_copy(update={"draft": True}),
        JAR: jar.model_copy(update={"variants": variants}),
    }


def catalogue_for(audience: Audience) -> Catalogue:
    studio, _ = read_studio(conftest.STUDIO)
    assert studio
    studio.recipes = with_drafts(studio.recipes)
    no_picture: dict[str, Drawing] = defaultdict(lambda: Drawing("picture.svg", 1200, 1400))
    return Catalogue(studio, audience, date(2026, 9, 16), drawings=no_picture)


@pytest.fixture(scope="module")
def clients() -> Catalogue:
    return catalogue_for("clients")


@pytest.fixture(scope="module")
def staff() -> Catalogue:
    return catalogue_for("staff")


def view(catalogue: Catalogue, recipe: str, variant: str = "") -> ClientRecipe:
    return recipe_view(catalogue, catalogue.looks[recipe][variant])


def hrefs_to_stem(catalogue: Catalogue, stem: str) -> set[str]:
    return {link.href for link in stem_view(catalogue, catalogue.stem(stem)).used_in}


def test_a_recipe_based_on_a_draft_does_not_tell_clients_what_it_changes(
    clients: Catalogue, staff: Catalogue
) -> None:
    assert view(clients, BASED).changed_from is None
    assert view(clients, BASED).changes == ()
    told = view(staff, BASED)
    assert told.changed_from and told.changed_from.href == f"arrangements/{BASE}.html"
    assert told.changes


def test_a_variant_of_a_recipe_based_on_a_draft_still_tells_its_own_changes(
    clients: Catalogue,
) -> None:
    told = view(clients, BASED, "later")
    assert told.changed_from and told.changed_from.href == f"arrangements/{BASED}.html"
    assert "Without Burnet, wine" in [change.words for change in told.changes]


def test_a_variant_that_builds_on_a_draft_is_told_from_the_recipe_alone(
    clients: Catalogue, staff: Catalogue
) -> None:
    told = view(clients, JAR, BUILT)
    assert told.changed_from and told.changed_from.href == f"arrangements/{JAR}.html"
    known = {line.name for line in (*told.lines, *view(clients, JAR).lines)}
    assert {change.name for change in told.changes} <= known
    # The zinnia comes in with the draft and goes again: a client never hears of it.
    assert not [change for change in told.changes if change.name == "Zinnia, coral"]


def test_a_draft_variant_is_not_in_its_recipes_list(clients: Catalogue, staff: Catalogue) -> None:
    assert [v.name for v in view(clients, JAR).variants] == ["Last of the lane", "Cooler"]
    assert len(view(staff, JAR).variants) == 4


def test_a_draft_variants_weeks_are_not_in_its_recipes_season(
    clients: Catalogue, staff: Catalogue
) -> None:
    def weeks(catalogue: Catalogue) -> set[int]:
        card = card_of(catalogue, catalogue.studio.recipes[JAR])
        return {cell.week for cell in card.season.cells if cell.state != "none"}

    june = staff.makeable.weeks_pictured(staff.looks[JAR]["june"])
    shown = weeks(clients)
    assert june - shown and june <= weeks(staff)
    answers = [clients.makeable.answers(look) for look in clients.looks[JAR].values()]
    seen = {a.week for each in answers for a in each if a.state != "none"}
    assert shown == seen and not {"june", "later"} & set(clients.looks[JAR])


def test_a_stem_names_no_draft_that_it_goes_into(clients: Catalogue, staff: Catalogue) -> None:
    june, base = f"arrangements/{JAR}--june.html", f"arrangements/{BASE}.html"
    assert june in hrefs_to_stem(staff, ONLY_IN_JUNE)
    assert june not in hrefs_to_stem(clients, ONLY_IN_JUNE)
    assert base in hrefs_to_stem(staff, "dahlia-shell")
    assert base not in hrefs_to_stem(clients, "dahlia-shell")


def test_a_lesson_names_no_draft_that_asks_for_it(clients: Catalogue, staff: Catalogue) -> None:
    def asked_by(catalogue: Catalogue) -> set[str]:
        lesson = catalogue.studio.techniques[LESSON]
        return {link.href for link in lesson_view(catalogue, lesson, UNWRITTEN).used_in}

    assert f"arrangements/{BASE}.html" in asked_by(staff)
    assert f"arrangements/{BASE}.html" not in asked_by(clients)


def test_made_work_that_followed_a_draft_is_not_shown(clients: Catalogue, staff: Catalogue) -> None:
    def followed(catalogue: Catalogue) -> set[str]:
        return {piece.recipe for piece in catalogue.made()}

    assert BASE in followed(staff)
    assert BASE not in followed(clients)
