"""Does the price list hold what clients may see, and all of it?"""

from __future__ import annotations

import pytest

from corymb.trade.money.from_order import asked_for
from corymb.trade.orders.pieces import Piece
from corymb.views.compose.prices import price_list_view, tax_words
from corymb.views.compose.wording import money
from tests.views.making import catalogue_of, demo


def test_it_is_the_same_whoever_prints_it_and_holds_no_draft() -> None:
    staff, clients = (price_list_view(catalogue_of(demo(), who)) for who in ("staff", "clients"))
    assert staff == clients
    names = [recipe.look.label for style in staff.styles for recipe in style.recipes]
    assert sorted(names) == sorted(r.name for r in demo().recipes.values() if not r.draft)


def test_every_size_has_its_price_and_the_regular_one_the_guide_price() -> None:
    studio = demo()
    view = price_list_view(catalogue_of(studio, "staff"))
    jar = next(r for s in view.styles for r in s.recipes if r.look.label == "Hedgerow jar")
    recipe = studio.recipes["hedgerow-jar"]
    look = catalogue_of(studio).looks["hedgerow-jar"][""]
    large = asked_for(
        Piece(recipe, look, "large"), studio.recipes, studio.stems, studio.house.money
    )
    assert [size.name for size in jar.sizes] == ["small", "regular", "large"]
    assert jar.sizes[1].price == "from €28"
    assert jar.sizes[2].price == f"from {money(large, studio.house)}"
    assert "July" in jar.season


@pytest.mark.parametrize(
    ("in_prices", "rate", "says"),
    [
        (True, "13.5 %", "Tax is in the prices (13.5 %)."),
        (True, "", "Tax is in the prices."),
        (False, "13.5 %", "Tax (13.5 %) comes on top."),
        (False, "", "Tax comes on top."),
    ],
)
def test_it_says_whether_tax_is_in_the_prices(in_prices: bool, rate: str, says: str) -> None:
    house = demo().house
    changed = house.model_copy(
        update={"money": house.money.model_copy(update={"tax_in_prices": in_prices})}
    )
    assert tax_words(changed, rate) == says
