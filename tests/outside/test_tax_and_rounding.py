"""Tax, rounding, margin and mark-up against worked figures that no one here made up.

Where a row names no other source it is plain arithmetic that anyone can do over: the rate of a
net amount, a sixth of a gross amount at 20 %, cost / (1 - margin).
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from corymb.trade.money.mark_up import margin_of, mark_up_of
from corymb.trade.money.rounding import half_up
from corymb.trade.money.tax import TaxRule, inside, on_top, per_invoice

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
    by_line = [on_top(net, rule.rate).tax for net in lines]
    assert by_line == [Decimal("0.50"), Decimal("1.27"), Decimal("3.49"), Decimal("2.18")]
    assert sum(by_line) == Decimal("7.44")
    assert per_invoice(lines, rule).tax == Decimal("7.43")


def test_tax_is_never_rounded_down_as_a_rule() -> None:
    """A retailer must not (VATREC12020, gov.uk); to the nearest is right for everyone."""
    assert on_top(Decimal("0.03"), Decimal("0.20")).tax == Decimal("0.01")  # 0.006
    assert inside(Decimal("0.05"), Decimal("0.20")).tax == Decimal("0.01")  # 0.0083


def test_a_half_goes_up_and_not_to_the_even_cent() -> None:
    assert half_up(Decimal("0.125")) == Decimal("0.13")  # to the even one it were 0.12


CLOSE = Decimal("0.001")

# A mark-up of 2.5 is a margin of 60 %, whatever the cost: 8.75 x 2.5 is 21.88 to the cent.
MARGINS = {
    "12.40 at a margin of 60 %": ("12.40", "31.00", "0.60", "2.5"),
    "8.75 at a margin of 65 %": ("8.75", "25.00", "0.65", "2.857"),
    "8.75 at a mark-up of 2.5": ("8.75", "21.88", "0.60", "2.5"),
}


@pytest.mark.parametrize(("cost", "price", "margin", "times"), MARGINS.values(), ids=MARGINS)
def test_a_mark_up_is_not_a_margin(cost: str, price: str, margin: str, times: str) -> None:
    assert margin_of(Decimal(price), Decimal(cost)) == pytest.approx(Decimal(margin), abs=CLOSE)
    assert mark_up_of(Decimal(price), Decimal(cost)) == pytest.approx(Decimal(times), abs=CLOSE)
