"""The plan from above is on the staff's site alone, beside its key."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.site.drawn.pictures import Pictures, draw_all
from corymb.studio.studio import Studio
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.recipes import recipe_view
from corymb.views.pieces import AUDIENCES, Audience
from corymb.views.recipe import ClientRecipe, StaffRecipe


@pytest.fixture(scope="module")
def pictures(studio: Studio, tmp_path_factory: pytest.TempPathFactory) -> Pictures:
    return draw_all(studio, tmp_path_factory.mktemp("drawn"), lambda what, done, total: None)


def catalogue(studio: Studio, pictures: Pictures, audience: Audience) -> Catalogue:
    return Catalogue(
        studio,
        audience,
        date(2026, 6, 1),
        drawings=pictures.drawings,
        heads=pictures.heads,
        plans=pictures.plans,
    )


@pytest.mark.parametrize(("audience", "shown"), [("staff", True), ("clients", False)])
def test_plans_are_published_for_staff_only(
    studio: Studio, pictures: Pictures, audience: Audience, shown: bool
) -> None:
    seen_by = catalogue(studio, pictures, audience)
    files = {href for href, _ in pictures.files_for(seen_by)}
    looks = [look for looks in seen_by.looks.values() for look in looks.values()]
    assert looks
    for look in looks:
        assert (f"assets/plans/{look.id}.svg" in files) is shown
        assert f"assets/pictures/{look.id}.svg" in files


def views(studio: Studio, pictures: Pictures, audience: Audience) -> list[ClientRecipe]:
    seen_by = catalogue(studio, pictures, audience)
    found = seen_by.looks.values()
    return [recipe_view(seen_by, look, "") for looks in found for look in looks.values()]


def test_every_staff_page_has_its_plan_and_a_key_of_all_its_stems(
    studio: Studio, pictures: Pictures
) -> None:
    for view in views(studio, pictures, "staff"):
        assert isinstance(view, StaffRecipe) and view.bench.plan
        assert view.bench.plan.href in pictures.drawn
        assert [line.number for line in view.bench.plan_key] == [
            number + 1 for number in range(len(view.lines))
        ]
        assert sum(line.count for line in view.bench.plan_key) == view.stems_total


def test_no_page_of_a_client_speaks_of_a_plan(studio: Studio, pictures: Pictures) -> None:
    assert "clients" in AUDIENCES
    assert "assets/plans" not in repr(views(studio, pictures, "clients"))
