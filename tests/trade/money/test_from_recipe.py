"""A recipe of the studio's own files becomes a price, and an order a quote."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest

from corymb.studio.models.order import OrderLine
from corymb.studio.values.lines import order_line
from corymb.trade.looks import looks_of
from corymb.trade.money.costs import Needs, StemsOf, costs_of
from corymb.trade.money.from_order import asked_for, order_needs, order_quote
from corymb.trade.money.from_recipe import (
    needs_of,
    price_of_piece,
    price_rule_of,
    rates_of,
    stems_of,
)
from corymb.trade.orders.pieces import Piece, Several, piece_of, words_of
from tests.trade.making import recipe, stem, variant
from tests.trade.money.figures import RATES, RULE, money

JAR = recipe(
    price="from 60",
    sizes={"small": "0.5", "large": "2"},
    sundries=["1 pint jar, 1.20", "0.3 m twine, 0.30"],
    variants={
        "later": variant(name="Later", swap=["poppy -> lily"], time="30 min"),
        "grand": variant(name="Grand", scale="200 %", price="55"),
    },
)
RECIPES = {"gate-jar": JAR}
STEMS = {
    "rose": stem("rose", grown="0.40", bought="1.00"),
    "mint": stem("mint", grown="0.30"),
    "poppy": stem("poppy", grown="0.60"),
    "lily": stem("lily", grown="0.90", bought="2.00"),
}
MONEY = money()


def piece(variant_id: str = "", **keys: Any) -> Piece:
    return Piece(JAR, looks_of(JAR, RECIPES)[variant_id], **keys)


def needs(one: Piece, **keys: Any) -> Needs:
    return needs_of(one, RECIPES, STEMS, **keys)


def order(*lines: str) -> list[Several]:
    wanted = [OrderLine.model_validate(order_line(line)) for line in lines]
    return [(line.quantity, piece_of(line, RECIPES)) for line in wanted]


def test_the_studios_money_is_read_into_its_rates_and_its_rule() -> None:
    assert rates_of(MONEY) == RATES
    assert price_rule_of(MONEY) == RULE


def test_a_currency_without_cents_is_reckoned_without_them() -> None:
    assert rates_of(money(currency="JPY")).places == 0


COUNTS: dict[str, tuple[Piece, list[int], list[str], int]] = {
    "as written": (piece(), [6, 4, 2], ["1.20", "0.30"], 20),
    "twice as large: twice the twine, one jar": (
        piece(size="large"), [12, 8, 4], ["1.20", "0.60"], 40
    ),
    "half as large": (piece(size="small"), [3, 2, 1], ["1.20", "0.15"], 10),
    "in buckets nothing is made up": (piece(in_buckets=True), [6, 4, 2], ["1.20", "0.30"], 0),
    "from the mix nothing is cut": (piece(from_the_mix=True), [], ["1.20", "0.30"], 20),
    "a variant takes its own time": (piece("later"), [6, 4, 2], ["1.20", "0.30"], 30),
}  # fmt: skip


@pytest.mark.parametrize(("one", "counts", "sundries", "minutes"), COUNTS.values(), ids=COUNTS)
def test_a_piece_needs_what_its_size_and_its_way_out_ask(
    one: Piece, counts: list[int], sundries: list[str], minutes: int
) -> None:
    got = needs(one)
    assert [line.count for line in got.stems] == counts
    assert [sundry.cost for sundry in got.sundries] == [Decimal(cost) for cost in sundries]
    assert got.minutes == minutes


def test_a_better_known_time_goes_before_the_recipes() -> None:
    assert needs(piece(), minutes=Decimal("12.5")).minutes == Decimal("12.5")


def test_a_stem_that_is_bought_in_costs_what_it_is_bought_for() -> None:
    assert needs(piece(), bought={"rose"}).stems[0] == StemsOf("rose", 6, Decimal("1.00"), True)


def test_a_stem_without_a_price_to_buy_it_at_is_named() -> None:
    with pytest.raises(ValueError, match="‘mint’ has no `bought` price: write under `bought`"):
        needs(piece(), bought={"mint"})


def test_some_of_a_stem_may_be_bought_and_the_rest_of_a_bunch_is_paid_for() -> None:
    assert stems_of({"rose": 12, "lily": 4}, STEMS, {"rose": 5, "lily": 10}) == (
        StemsOf("rose", 7, Decimal("0.40")),
        StemsOf("rose", 5, Decimal("1.00"), True),
        StemsOf("lily", 10, Decimal("2.00"), True),
    )


def test_a_piece_bought_in_works_out_dearer() -> None:
    grown = price_of_piece(piece(), RECIPES, STEMS, MONEY)
    bought = price_of_piece(piece(), RECIPES, STEMS, MONEY, bought={"rose"})
    # 2.40 + 1.20 + 1.20 of stems, 1.20 of waste: 6.00 x 2.5; 2.25; 6.00; a fifth of 13.50
    assert grown.without_tax == Decimal("25.95")
    # 3.00 x 2.5 and 7.50 x 2 instead; 2.25; 6.00; a fifth of 18.00
    assert bought.without_tax == Decimal("34.35")


ASKED = {
    "from 60, and less is worked out": ("1 gate-jar", "60"),
    "a variant keeps its recipe's guide price": ("1 gate-jar, later", "60"),
    "a promise of its own": ("1 gate-jar, grand", "55"),
    "large: 60 x 54.85 / 28.55 is 115.27": ("1 gate-jar, large", "120"),
    "small: 60 x 15.40 / 28.55 is 32.36": ("1 gate-jar, small", "35"),
}


@pytest.mark.parametrize(("line", "asked"), ASKED.values(), ids=ASKED)
def test_a_piece_of_an_order_is_asked_by_its_guide_price(line: str, asked: str) -> None:
    ((_, one),) = order(line)
    assert asked_for(one, RECIPES, STEMS, MONEY) == Decimal(asked)


def test_what_is_not_made_up_is_asked_less_for_and_what_is_not_cut_too() -> None:
    whole, buckets, mix = (
        asked_for(one, RECIPES, STEMS, MONEY)
        for _, one in order("1 gate-jar", "1 gate-jar, in buckets", "1 gate-jar, from the mix")
    )
    assert mix < whole
    assert buckets < whole


def test_an_orders_quote_names_each_piece_in_words() -> None:
    lines = order("12 gate-jar", "2 gate-jar, later, small, in buckets", "1 gate-jar, from the mix")
    quote = order_quote(lines, RECIPES, STEMS, MONEY)
    assert [(line.quantity, line.words) for line in quote.lines] == [
        (12, "Gate jar"),
        (2, "Gate jar, Later, small, in buckets"),
        (1, "Gate jar, from the mix"),
    ]
    assert quote.lines[0].total == 720
    assert quote.to_pay == sum(line.total for line in quote.lines)
    assert words_of(piece(size="large")) == "Gate jar, large"


def test_an_order_needs_all_its_pieces_together() -> None:
    lines = order("2 gate-jar", "1 gate-jar, later, small", "1 gate-jar, from the mix")
    whole = order_needs(lines, RECIPES, STEMS)
    assert [(line.stem, line.count, line.bought) for line in whole.stems] == [
        ("rose", 15, False), ("mint", 10, False), ("poppy", 4, False), ("lily", 1, False),
    ]  # fmt: skip
    assert whole.minutes == 20 + 20 + 15 + 20
    assert len(whole.sundries) == 6
    assert costs_of(whole, RATES).labour == Decimal("22.50")


def test_an_orders_own_minutes_go_before_its_recipes() -> None:
    assert order_needs(order("2 gate-jar"), RECIPES, STEMS, minutes=Decimal(90)).minutes == 90
