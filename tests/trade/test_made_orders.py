"""What the recipes asked for an order is worked out as for the order itself."""

from __future__ import annotations

from typing import Any

from corymb.studio.models import Order
from corymb.trade.made_orders import learnt, made_orders
from corymb.trade.reality import MadeLine
from corymb.trade.written_places import Place
from tests.trade.making import recipe, variant

JAR = recipe(
    sizes={"small": "0.5"},
    variants={"later": variant(swap=["poppy -> lily"], time="30 min")},
)
RECIPES = {"gate-jar": JAR}


def order(**keys: Any) -> Order:
    data = {
        "name": "Supper",
        "client": {"name": "the committee"},
        "where": {"place": "the barn", "setting": "indoors", "light": "candle"},
        "handover": "collection",
        "date": "2026-09-19",
        "lines": ["2 gate-jar, later", "4 gate-jar, small", "1 gate-jar, from the mix"],
        **keys,
    }
    return Order.model_validate(data).with_id("supper")


def by_the_piece(minutes: float, pieces: int) -> int:
    return int(minutes * pieces)


def test_each_line_asks_for_its_look_in_its_size_as_often_as_it_is_wanted() -> None:
    (made,) = made_orders([order(used={"rose": "26"}, minutes="150")], RECIPES, by_the_piece)
    assert list(made.lines) == [
        MadeLine("gate-jar--later", 2, {"rose": 12, "mint": 8, "lily": 4}, 60),
        MadeLine("gate-jar", 4, {"rose": 12, "mint": 8, "poppy": 4}, 40),
        MadeLine("gate-jar", 1, {}, 20),
    ]
    assert (made.id, made.used, made.minutes) == ("supper", {"rose": 26}, 150)


def test_many_pieces_are_asked_less_time_each_than_one() -> None:
    ((first, *_),) = (made.lines for made in made_orders([order(minutes="150")], RECIPES))
    assert 30 < first.minutes < 60


def test_an_order_that_tells_nothing_is_left_out() -> None:
    assert made_orders([order()], RECIPES) == ()


def test_an_order_of_which_some_went_in_buckets_tells_nothing_of_its_time() -> None:
    lines = ["2 gate-jar", "4 gate-jar, in buckets"]
    (made,) = made_orders([order(lines=lines, used={"rose": "40"}, minutes="90")], RECIPES)
    assert (made.used, made.minutes) == ({"rose": 40}, None)
    assert [line.stems["rose"] for line in made.lines] == [12, 24]


def test_what_is_learnt_is_told_with_the_place_it_is_written_at() -> None:
    told = learnt([order(used={"rose": "36", "lily": "6"}, minutes="300")], RECIPES)
    assert [(c.written.looks, c.written.number, c.proposed, place) for c, place in told] == [
        (("gate-jar", "gate-jar--later"), 6, 9, Place("gate-jar", ("stems", 0))),
        (("gate-jar",), 20, 51, Place("gate-jar", ("time",))),
        (("gate-jar--later",), 2, 3, Place("gate-jar", ("variants", "later", "swap", 0))),
        (("gate-jar--later",), 30, 77, Place("gate-jar", ("variants", "later", "time"))),
    ]
