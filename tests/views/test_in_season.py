"""The year at a glance: a row a recipe, over its stems; twelve months; nothing of drafts."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from corymb.studio.words import MONTHS
from corymb.trade.season.best import Best
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.in_season import in_season_view
from corymb.views.season import InSeasonView, MonthView
from tests.views.making import best, catalogue_of, demo, swap, year_of

CLIENTS = catalogue_of(demo())
JAR, LATER = (CLIENTS.looks["hedgerow-jar"][known_as] for known_as in ("", "later"))
NEVER = best(1, JAR, "none", 0.0, blocks=["scabious-plum"])


def with_year(bests: list[Best]) -> Catalogue:
    """The demo's catalogue with the jar alone, and a made-up year for it."""
    catalogue = catalogue_of(demo())
    catalogue.__dict__["looks"] = {"hedgerow-jar": CLIENTS.looks["hedgerow-jar"]}
    catalogue.__dict__["best"] = {"hedgerow-jar": tuple(year_of(bests, NEVER))}
    return catalogue


def month(view: InSeasonView, name: str) -> MonthView:
    return next(each for each in view.months if each.name == name)


def names(view: InSeasonView) -> list[str]:
    return [recipe.row.name for style in view.styles for recipe in style.recipes]


# The middle of week 30 is day 207 of a plain year, 26 July; of 35 30 August, of 36 6 September.
@pytest.mark.parametrize(
    ("bests", "pictured", "otherwise"),
    [
        ([best(30, JAR)], ["July"], []),
        ([best(35, JAR), best(36, LATER, "variant")], ["August"], ["September"]),
        ([best(33, LATER, "variant"), best(34, JAR)], ["August"], []),
        ([best(40, JAR, "swaps", swaps=[swap("cosmos-white", "zinnia-coral")])], [], ["October"]),
        ([best(40, LATER, "swaps", swaps=[swap("cosmos-white", "zinnia-coral")])], [], ["October"]),
        ([], [], []),
    ],
    ids=["one-week", "variant-after", "both-in-one-month", "swaps", "variant-swaps", "never"],
)
def test_a_month_has_a_recipe_once_by_its_best_week(
    bests: list[Best], pictured: list[str], otherwise: list[str]
) -> None:
    view = in_season_view(with_year(bests))
    assert [each.name for each in view.months if each.pictured] == pictured
    assert [each.name for each in view.months if each.otherwise] == otherwise


@pytest.mark.parametrize(
    ("name", "stem", "part"),
    [  # in the demo's own words: early July - mid October, at best early August - mid September
        ("August", "Dahlia, shell", "at_best"),
        ("October", "Dahlia, shell", "standing"),
        ("March", "Dahlia, shell", ""),
    ],
    ids=["at-its-best", "standing", "not-there"],
)
def test_a_flower_is_in_a_month_at_its_best_or_standing_or_not(
    name: str, stem: str, part: str
) -> None:
    told = month(in_season_view(CLIENTS), name)
    found = [p for p in ("at_best", "standing") if stem in [x.label for x in getattr(told, p)]]
    assert found == ([part] if part else [])


def test_the_months_are_the_years_twelve_with_their_anchors() -> None:
    view = in_season_view(CLIENTS)
    assert [each.name for each in view.months] == list(MONTHS)
    assert [each.id for each in view.months][:2] == ["january", "february"]


@pytest.mark.parametrize(
    ("day", "made_on", "month_of_it"),
    [
        (date(2026, 9, 16), "16 September 2026", "September"),
        (date(2027, 1, 1), "1 January 2027", "January"),  # though in week 53
        (date(2024, 12, 30), "30 December 2024", "December"),  # though in week 1 of 2025
    ],
    ids=["september", "week-53", "week-1"],
)
def test_the_page_opens_with_the_month_of_the_build(
    day: date, made_on: str, month_of_it: str
) -> None:
    view = in_season_view(replace(CLIENTS, today=day))
    assert (view.made_on, view.now.name) == (made_on, month_of_it)
    assert view.now in view.months


def test_a_recipes_row_opens_to_each_of_its_stems_once() -> None:
    view = in_season_view(CLIENTS)
    jar = next(r for s in view.styles for r in s.recipes if r.row.name == "Hedgerow jar")
    assert [stem.name for stem in jar.stems] == [CLIENTS.stem(s.stem).name for s in JAR.lines]
    assert jar.stems[0].href.startswith("flowers/")


def test_a_draft_has_no_row_for_clients_and_one_for_staff() -> None:
    studio = replace(demo(), recipes=dict(demo().recipes))
    studio.recipes["hedgerow-jar"] = (
        demo().recipes["hedgerow-jar"].model_copy(update={"draft": True})
    )
    assert "Hedgerow jar" not in names(in_season_view(catalogue_of(studio)))
    assert "Hedgerow jar" in names(in_season_view(catalogue_of(studio, "staff")))
