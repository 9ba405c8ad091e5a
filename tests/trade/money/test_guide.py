"""A client is asked what was told, and in proportion where nothing was told."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values.money import parse_price_guide
from corymb.trade.money.costs import Costs, Needs, costs_of
from corymb.trade.money.guide import asked_for_regular, asked_in_proportion, beside_guide
from corymb.trade.money.prices import Price, price_of
from tests.trade.money.figures import JAR, RATES, RULE

ASKED = {
    "no guide price: what is worked out": ("", "40", "40"),
    "a promise is kept where more is worked out": ("28", "40", "28"),
    "a promise is kept where less is worked out": ("50", "40", "50"),
    "from: more where more is worked out": ("from 28", "40", "40"),
    "from: never less than was told": ("from 50", "40", "50"),
}


@pytest.mark.parametrize(("guide", "worked_out", "asked"), ASKED.values(), ids=ASKED)
def test_a_regular_piece_is_asked_what_the_guide_price_allows(
    guide: str, worked_out: str, asked: str
) -> None:
    told = parse_price_guide(guide) if guide else None
    assert asked_for_regular(told, Decimal(worked_out)) == Decimal(asked)


@pytest.mark.parametrize(
    ("guide", "difference"),
    [
        pytest.param("from 28", "12", id="more is worked out"),
        pytest.param("50", "-10", id="less is worked out"),
        pytest.param("40", "0", id="alike"),
    ],
)
def test_staff_see_how_far_the_guide_price_is_from_the_work(guide: str, difference: str) -> None:
    beside = beside_guide(parse_price_guide(guide), Decimal(40))
    assert beside is not None
    assert beside.difference == Decimal(difference)


def test_without_a_guide_price_there_is_nothing_beside_it() -> None:
    assert beside_guide(None, Decimal(40)) is None


def priced(times: str) -> Price:
    """The jar's price with all of its costs so many times as high."""
    costs = costs_of(JAR, RATES)
    heads = (costs.grown, costs.bought, costs.waste_grown, costs.waste_bought)
    others = (costs.sundries, costs.labour, costs.overhead)
    return price_of(Costs(*(head * Decimal(times) for head in heads + others)), RULE)


@pytest.mark.parametrize(
    ("times", "asked"),
    [
        pytest.param("0.5", "15", id="half of 28 is 14, and up to 15"),
        pytest.param("2", "60", id="twice 28 is 56, and up to 60"),
        pytest.param("0.95", "28", id="nearly 28 is not rounded up above it"),
    ],
)
def test_another_size_keeps_its_distance_from_what_was_told(times: str, asked: str) -> None:
    regular, piece = priced("1"), priced(times)
    told = asked_in_proportion(Decimal(28), regular, piece, replace(RULE, round_to=Decimal(5)))
    assert told == Decimal(asked)


def test_beside_a_regular_piece_for_nothing_the_worked_out_price_stands() -> None:
    nothing = price_of(costs_of(Needs(), RATES), RULE)
    assert asked_in_proportion(Decimal(28), nothing, priced("1"), RULE) == priced("1").shown


@given(st.decimals(1, 500, places=2), st.decimals(1, 9, places=2))
def test_a_larger_piece_is_never_cheaper_than_the_regular_one(
    asked: Decimal, times: Decimal
) -> None:
    assert asked_in_proportion(asked, priced("1"), priced(str(times)), RULE) >= asked
