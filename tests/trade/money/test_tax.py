"""Tax is told apart so that nothing is lost or made up."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.tax import TaxRule, inside, on_top, per_invoice, taxed

AMOUNTS = st.decimals(0, 100_000, places=2)
RATES = st.decimals(0, 1, places=3)


@given(AMOUNTS, RATES, st.booleans())
def test_net_and_tax_make_the_gross_always(shown: Decimal, rate: Decimal, in_prices: bool) -> None:
    told = taxed(shown, TaxRule(rate, in_prices))
    assert told.net + told.tax == told.gross
    assert shown == (told.gross if in_prices else told.net)
    assert 0 <= told.tax <= told.gross


@given(AMOUNTS, RATES)
def test_tax_taken_out_of_a_price_is_what_was_put_on_it(net: Decimal, rate: Decimal) -> None:
    gross = on_top(net, rate).gross
    assert abs(inside(gross, rate).net - net) <= Decimal("0.01")


@given(st.lists(AMOUNTS, max_size=12), RATES, st.booleans())
def test_line_by_line_is_within_half_a_cent_a_line_of_all_together(
    lines: list[Decimal], rate: Decimal, in_prices: bool
) -> None:
    rule = TaxRule(rate, in_prices)
    at_once = per_invoice(lines, rule)
    one_by_one = sum((taxed(line, rule).tax for line in lines), Decimal(0))
    assert abs(one_by_one - at_once.tax) <= Decimal("0.005") * (len(lines) + 1)
    shown = sum(lines, Decimal(0))
    assert shown == (at_once.gross if in_prices else at_once.net)


def test_tax_in_yen_has_no_decimals() -> None:
    assert inside(Decimal(1000), Decimal("0.10"), places=0).tax == 91
    assert taxed(Decimal(1005), TaxRule(Decimal("0.10"), in_prices=False, places=0)).tax == 101


def test_a_rate_below_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match=r"a rate of tax is 0 or more, not -0\.1"):
        TaxRule(Decimal("-0.1"), in_prices=True)
