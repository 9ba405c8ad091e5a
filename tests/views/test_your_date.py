"""A recipe's few answers, and which of them each of the 52 weeks has."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from corymb.studio.values.money import PriceGuide
from corymb.trade.season.best import Best
from corymb.trade.season.sureness import AT_LEAST
from corymb.views.compose.your_date import dated, your_date_view
from corymb.views.season import DatedRecipe
from tests.views.making import best, catalogue_of, demo, swap, year_of

CLIENTS = catalogue_of(demo())
JAR, LATER = (CLIENTS.looks["hedgerow-jar"][known_as] for known_as in ("", "later"))
NEVER = best(1, JAR, "none", 0.0, blocks=["scabious-plum"], nearest=30)
ZINNIAS = [swap("cosmos-white", "zinnia-coral")]


def jar(bests: list[Best], otherwise: Best = NEVER) -> DatedRecipe:
    """The demo's jar with a made-up year."""
    catalogue = catalogue_of(demo())
    catalogue.__dict__["best"] = {"hedgerow-jar": tuple(year_of(bests, otherwise))}
    return dated(catalogue, demo().recipes["hedgerow-jar"])


def states(recipe: DatedRecipe) -> list[str]:
    return [answer.state for answer in recipe.answers]


@pytest.mark.parametrize(
    ("bests", "found"),
    [
        ([best(30, JAR), best(31, JAR)], ["none", "pictured"]),
        ([best(30, JAR), best(31, JAR, chance=0.7)], ["none", "pictured"]),
        ([best(1, JAR), best(30, JAR)], ["pictured", "none"]),
        ([best(30, JAR), best(31, LATER, "variant")], ["none", "pictured", "variant"]),
        ([best(30, JAR), best(31, JAR, "swaps", swaps=ZINNIAS)], ["none", "pictured", "swaps"]),
        ([best(30, JAR, "none", blocks=["cosmos-white"])], ["none", "none"]),
        ([best(2, JAR, "none", blocks=["scabious-plum"], nearest=40)], ["none"]),
        ([], ["none"]),
    ],
    ids=[
        "alike",
        "less-sure",
        "from-january",
        "variant",
        "swaps",
        "another-block",
        "nearer-to-another-week",
        "never",
    ],
)
def test_answers_that_are_alike_are_one_in_the_order_of_the_year(
    bests: list[Best], found: list[str]
) -> None:
    assert states(jar(bests)) == found


def test_each_week_names_its_own_answer() -> None:
    told = jar([best(30, JAR), best(31, LATER, "variant"), best(32, JAR)])
    assert len(told.weeks) == len(told.sure) == 52
    assert [told.weeks[week - 1] for week in (1, 30, 31, 32, 33)] == [0, 1, 2, 1, 0]


@pytest.mark.parametrize(
    ("asked", "sure"),
    [
        (best(30, JAR, chance=0.95), "sure"),
        (best(30, JAR, chance=0.7), "likely"),
        (best(30, JAR, chance=0.4), "touch and go"),
        (best(30, JAR, chance=0.2), "touch and go"),
        (best(30, JAR, "none", 0.0, blocks=["scabious-plum"]), "not then"),
    ],
    ids=["sure", "likely", "touch-and-go", "doubted-by-the-log", "none"],
)
def test_how_sure_is_said_of_each_week(asked: Best, sure: str) -> None:
    assert jar([asked]).sure[29] == sure


def test_a_look_is_shown_once_for_all_answers_it_goes_with() -> None:
    told = jar([best(30, JAR), best(31, JAR, "swaps", swaps=ZINNIAS)])
    assert [shown.answers for shown in told.images] == [(1, 2)]
    assert told.answers[0].image is None


def test_a_variants_answer_has_its_own_price_where_one_is_written() -> None:
    recipe = demo().recipes["hedgerow-jar"]
    dear = recipe.variants["later"].model_copy(update={"price": PriceGuide(Decimal(99), True)})
    changed = recipe.model_copy(update={"variants": {**recipe.variants, "later": dear}})
    catalogue = catalogue_of(replace(demo(), recipes={**demo().recipes, recipe.id: changed}))
    bests = year_of([best(30, JAR), best(31, LATER, "variant")], NEVER)
    catalogue.__dict__["best"] = {recipe.id: tuple(bests)}
    assert dated(catalogue, changed).prices[1:] == ("from €28", "from €99")


def test_every_recipe_of_every_style_is_asked_once() -> None:
    view = your_date_view(CLIENTS)
    hrefs = [recipe.href for style in view.styles for recipe in style.recipes]
    assert sorted(hrefs) == sorted(f"arrangements/{recipe}.html" for recipe in CLIENTS.looks)
    assert view.today == "2026-09-16"
    assert view.months[8].href == "in-season.html#september"


def test_what_is_lacking_is_that_of_the_look_of_the_nearest_day_or_of_the_next() -> None:
    never = best(1, JAR, "none", 0.0, blocks=["crocosmia-ember"], nearest=20)
    told = jar([best(20, LATER, "variant"), best(40, JAR)], never)
    near, next_ = told.answers[told.weeks[20]], told.answers[told.next[20]]
    assert "crocosmia" not in near.blocks  # the variant of week 20 has none
    assert "crocosmia" in next_.blocks  # the recipe itself stands in week 40
    assert told.weeks[19] == told.next[19] and told.weeks[39] == told.next[39]


def test_how_sure_is_explained_in_years_that_hold_by_the_borders() -> None:
    borders = {word: least for least, word in AT_LEAST}
    means = {fact.value: fact.label for fact in your_date_view(CLIENTS).sure_means}
    assert means["Sure"] == "at least nine years in ten" and borders["sure"] == 9 / 10
    assert means["Likely"] == "about two years in three, or more"
    assert borders["likely"] == pytest.approx(2 / 3, abs=0.02)
    assert means["Touch and go"] == "in some years and not in others"


@pytest.mark.parametrize(("latitude", "doubted"), [(52.3, False), (42.9, True)])
def test_clients_are_told_where_the_dates_are_brought_from_too_far(
    latitude: float, doubted: bool
) -> None:
    house = demo().house
    place = house.place.model_copy(update={"latitude": latitude})
    studio = replace(demo(), house=house.model_copy(update={"place": place}))
    assert bool(your_date_view(catalogue_of(studio)).doubt) == doubted
