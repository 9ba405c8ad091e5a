"""A price is put together from its costs as the formula says, taxed, and rounded up."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.costs import Costs, Needs, Rates, StemsOf, SundryOf, costs_of
from corymb.trade.money.mark_up import margin_of, mark_up_of
from corymb.trade.money.prices import MarkUps, PriceRule, price_of
from corymb.trade.money.tax import Taxed, TaxRule
from tests.trade.money.figures import JAR, RATES, RULE, TAX_OUT, UPS
from tests.trade.money.test_costs import ANY_RATES, NEEDS

COSTS = costs_of(JAR, RATES)
NO_OVERHEAD = replace(RATES, overhead=Decimal(0))


def test_the_jars_price_is_what_one_works_out_by_hand() -> None:
    price = price_of(COSTS, RULE)
    assert (price.grown, price.bought, price.sundries) == (
        Decimal("11.25"),
        Decimal("10.00"),
        Decimal("2.25"),
    )
    assert (price.labour, price.overhead) == (Decimal("6.00"), Decimal("3.40"))
    assert price.without_tax == Decimal("32.90")
    assert price.unrounded == Decimal("36.19")  # and a tenth of tax
    assert (price.shown, price.rounding) == (Decimal(40), Decimal("3.81"))
    assert (price.taxed.net, price.taxed.tax) == (Decimal("36.36"), Decimal("3.64"))
    assert (price.cost, price.left) == (Decimal("20.40"), Decimal("15.96"))


def test_where_prices_leave_the_tax_out_it_is_the_price_without_tax_that_is_rounded() -> None:
    price = price_of(COSTS, replace(RULE, tax=TAX_OUT))
    assert (price.unrounded, price.shown) == (Decimal("32.90"), Decimal(35))
    assert price.taxed == Taxed(Decimal(35), Decimal("3.50"))
    assert price.taxed.gross == Decimal("38.50")


def test_a_price_that_is_whole_already_is_not_lifted_by_a_step() -> None:
    for sundries, unrounded, shown in (("31.824", "35.00", 35), ("31.83", "35.01", 40)):
        costs = costs_of(Needs(sundries=(SundryOf("urn", Decimal(sundries)),)), NO_OVERHEAD)
        price = price_of(costs, replace(RULE, mark_ups=MarkUps(Decimal(1), Decimal(1), Decimal(1))))
        assert (price.unrounded, price.shown) == (Decimal(unrounded), Decimal(shown))


def test_margin_and_mark_up_of_a_price_leave_the_tax_aside() -> None:
    price = price_of(COSTS, RULE)
    assert price.margin == Decimal("15.96") / Decimal("36.36")
    assert price.mark_up == Decimal("36.36") / Decimal("20.40")


def test_the_cents_of_the_currency_are_kept_to() -> None:
    yen = price_of(
        COSTS, PriceRule(UPS, TaxRule(Decimal("0.10"), True, places=0), round_to=Decimal(0))
    )
    assert yen.shown == yen.shown.to_integral_value()


RULES = st.builds(
    PriceRule,
    st.builds(MarkUps, *[st.decimals(0, 5, places=2)] * 3),
    st.builds(TaxRule, st.decimals(0, "0.3", places=3), st.booleans()),
    st.sampled_from([Decimal(0), Decimal("0.05"), Decimal("0.50"), Decimal(1), Decimal(5)]),
)


@given(NEEDS, ANY_RATES, RULES)
def test_a_price_shown_is_never_below_its_parts_and_less_than_a_step_above(
    needs: Needs, rates: Rates, rule: PriceRule
) -> None:
    price = price_of(costs_of(needs, rates), rule)
    assert 0 <= price.rounding < (rule.round_to or Decimal("0.01"))
    assert price.taxed.net + price.taxed.tax == price.taxed.gross
    assert price.shown == (price.taxed.gross if rule.tax.in_prices else price.taxed.net)


@given(NEEDS, RULES, st.integers(1, 30), st.decimals(0, 9, places=3))
def test_more_stems_are_never_cheaper(
    needs: Needs, rule: PriceRule, count: int, each: Decimal
) -> None:
    more = replace(needs, stems=(*needs.stems, StemsOf("c", count, each)))
    assert price_of(costs_of(more, RATES), rule).shown >= price_of(
        costs_of(needs, RATES), rule
    ).shown  # fmt: skip


@given(st.decimals("0.01", 1000, places=2), st.decimals("0.01", 1000, places=2))
def test_a_margin_is_the_same_as_its_own_mark_up(cost: Decimal, price: Decimal) -> None:
    assert abs(1 - 1 / mark_up_of(price, cost) - margin_of(price, cost)) < Decimal("1e-9")


ONE, NONE = Decimal(1), Decimal(0)
REFUSED = {
    "a margin of a price of nothing": (lambda: margin_of(NONE, ONE), "nothing has no margin"),
    "a mark-up of a cost of nothing": (lambda: mark_up_of(ONE, NONE), "nothing has no mark-up"),
    "a mark-up below nothing": (lambda: MarkUps(ONE, -ONE, ONE), "a mark-up is 0 or more"),
}


@pytest.mark.parametrize(("ask", "told"), REFUSED.values(), ids=REFUSED)
def test_what_makes_no_price_is_refused(ask: object, told: str) -> None:
    assert callable(ask)
    with pytest.raises(ValueError, match=told):
        ask()


def test_a_piece_may_cost_more_than_it_brings_and_says_so() -> None:
    nothing = Decimal(0)
    costs = Costs(Decimal(10), nothing, nothing, nothing, nothing, nothing, nothing)
    price = price_of(
        costs, PriceRule(MarkUps(Decimal("0.5"), Decimal(1), Decimal(1)), TAX_OUT, nothing)
    )
    assert (price.left, price.margin) == (Decimal(-5), Decimal(-1))
