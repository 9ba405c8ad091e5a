"""Tax, rounding, margin and mark-up against worked figures that no one here made up.

Where a row names no other source it is plain arithmetic that anyone can do over: the rate of a
net amount, a sixth of a gross amount at 20 %, cost / (1 - margin).
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from corymb.trade.money.coins import cash_step
from corymb.trade.money.mark_up import margin_of, price_for_margin, price_for_mark_up
from corymb.trade.money.rounding import half_up, to_nearest_multiple
from corymb.trade.money.tax import TaxRule, inside, on_top, per_invoice, per_line

ON_TOP = {
    "9.99 at 20 %": ("9.99", "0.20", "2.00"),
    "33.33 at 20 %": ("33.33", "0.20", "6.67"),
    "12.50 at 20 %": ("12.50", "0.20", "2.50"),
    "a half cent goes up: 2.25 at 10 %": ("2.25", "0.10", "0.23"),
}


@pytest.mark.parametrize(("net", "rate", "tax"), ON_TOP.values(), ids=ON_TOP)
def test_tax_on_top_is_the_rate_of_the_net_amount(net: str, rate: str, tax: str) -> None:
    told = on_top(Decimal(net), Decimal(rate))
    assert (told.net, told.tax, told.gross) == (
        Decimal(net),
        Decimal(tax),
        Decimal(net) + Decimal(tax),
    )


INSIDE = {
    "120.00 at 20 %": ("120.00", "0.20", "20.00"),
    "85.00 at 20 %": ("85.00", "0.20", "14.17"),
    "49.50 at 20 %": ("49.50", "0.20", "8.25"),
    "35.00 at 9 %": ("35.00", "0.09", "2.89"),
    "35.00 at 21 %": ("35.00", "0.21", "6.07"),
}


@pytest.mark.parametrize(("gross", "rate", "tax"), INSIDE.values(), ids=INSIDE)
def test_tax_inside_a_price_is_its_fraction_and_the_rest_is_net(
    gross: str, rate: str, tax: str
) -> None:
    told = inside(Decimal(gross), Decimal(rate))
    assert (told.net, told.tax, told.gross) == (
        Decimal(gross) - Decimal(tax),
        Decimal(tax),
        Decimal(gross),
    )


def test_taxed_line_by_line_or_all_together_can_differ_by_a_cent() -> None:
    """Both are allowed by HMRC Notice 700, 17.5 and VATREC12010 (gov.uk), if one keeps to it."""
    lines = [Decimal("2.49"), Decimal("6.35"), Decimal("17.43"), Decimal("10.89")]
    rule = TaxRule(Decimal("0.20"), in_prices=False)
    assert [on_top(net, rule.rate).tax for net in lines] == [
        Decimal("0.50"), Decimal("1.27"), Decimal("3.49"), Decimal("2.18"),
    ]  # fmt: skip
    assert per_line(lines, rule).tax == Decimal("7.44")
    assert per_invoice(lines, rule).tax == Decimal("7.43")


def test_tax_is_never_rounded_down_as_a_rule() -> None:
    """A retailer must not (VATREC12020, gov.uk); to the nearest is right for everyone."""
    assert on_top(Decimal("0.03"), Decimal("0.20")).tax == Decimal("0.01")  # 0.006
    assert inside(Decimal("0.05"), Decimal("0.20")).tax == Decimal("0.01")  # 0.0083


def test_a_half_goes_up_and_not_to_the_even_cent() -> None:
    assert half_up(Decimal("0.125")) == Decimal("0.13")  # to the even one it were 0.12


CASH = {"10.02": "10.00", "10.03": "10.05", "10.07": "10.05", "10.08": "10.10"}


@pytest.mark.parametrize(("amount", "paid"), CASH.items(), ids=CASH)
def test_swiss_cash_is_paid_to_the_nearest_five_rappen(amount: str, paid: str) -> None:
    """Unicode CLDR, supplemental currency data: CHF has cashRounding 5."""
    assert to_nearest_multiple(Decimal(amount), cash_step("CHF")) == Decimal(paid)


MARGINS = {
    "cost 12.40, margin 60 %": ("12.40", "0.60", "31.00"),
    "cost 8.75, margin 65 %": ("8.75", "0.65", "25.00"),
}


@pytest.mark.parametrize(("cost", "margin", "price"), MARGINS.values(), ids=MARGINS)
def test_a_price_for_a_margin_leaves_that_margin(cost: str, margin: str, price: str) -> None:
    assert price_for_margin(Decimal(cost), Decimal(margin)) == Decimal(price)
    assert margin_of(Decimal(price), Decimal(cost)) == Decimal(margin)


def test_a_mark_up_is_not_a_margin() -> None:
    assert (
        price_for_mark_up(Decimal("12.40"), Decimal("2.5"))
        == Decimal("31.00")
        == price_for_margin(Decimal("12.40"), Decimal("0.60"))
    )
    assert (
        price_for_mark_up(Decimal("8.75"), Decimal("2.5"))
        == Decimal("21.88")
        != price_for_margin(Decimal("8.75"), Decimal("0.65"))
    )
