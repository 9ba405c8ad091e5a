"""Does the price list hold what clients may see, and all of it?"""

from __future__ import annotations

import pytest

from corymb.trade.money.from_order import asked_for, guide_in_size
from corymb.trade.order_lines import sizes_of
from corymb.trade.orders.pieces import Piece
from corymb.views.compose.prices import price_list_view, tax_words
from corymb.views.compose.wording import price_guide
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
    large = guide_in_size(
        Piece(recipe, look, "large"), studio.recipes, studio.stems, studio.house.money
    )
    assert [size.name for size in jar.sizes] == ["small", "regular", "large"]
    assert jar.sizes[1].price == "from €28"
    assert jar.sizes[2].price == price_guide(large, studio.house)
    assert "July" in jar.season


def test_in_the_price_list_a_larger_size_is_never_cheaper() -> None:
    view = price_list_view(catalogue_of(demo(), "clients"))
    listed = [recipe for style in view.styles for recipe in style.recipes]
    dearer = 0
    for recipe in listed:
        amounts = [float(size.price.removeprefix("from €")) for size in recipe.sizes if size.price]
        assert amounts == sorted(amounts), recipe.look.label
        dearer += amounts[-1:] > amounts[:1]
    assert dearer > len(listed) / 2


def test_in_every_look_the_sizes_stand_to_the_guide_price_and_none_is_above_what_is_asked() -> None:
    studio = demo()
    known = studio.recipes, studio.stems, studio.house.money
    looks = [
        look for each in catalogue_of(studio, "staff").looks.values() for look in each.values()
    ]
    for look in looks:
        recipe = studio.recipes[look.recipe]
        pieces = sorted((Piece(recipe, look, s) for s in sizes_of(recipe)), key=lambda p: p.scale)
        guides = [guide_in_size(piece, *known) for piece in pieces]
        amounts = [guide.amount for guide in guides if guide]
        assert amounts == sorted(amounts), look.id
        for piece, guide in zip(pieces, guides, strict=True):
            assert guide is None or guide.amount <= asked_for(piece, *known), look.id


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
