"""A quote adds up, and tells nobody what anything cost."""

from __future__ import annotations

from dataclasses import fields
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.quote import Quote, QuoteLine, quote_of
from corymb.trade.money.tax import Taxed
from tests.trade.money.figures import TAX_IN, TAX_OUT

LINES = [
    QuoteLine(12, "Gate jar, Later", Decimal("28.50")),
    QuoteLine(1, "Hall urn", Decimal("195")),
]


def test_each_line_is_its_quantity_times_each() -> None:
    assert [line.total for line in LINES] == [Decimal("342.00"), Decimal("195")]


def test_where_prices_hold_the_tax_the_client_pays_the_sum_of_the_lines() -> None:
    quote = quote_of(LINES, TAX_IN)
    assert quote.tax_in_prices
    assert quote.to_pay == Decimal("537.00")
    assert quote.taxed == Taxed(Decimal("488.18"), Decimal("48.82"))


def test_where_they_do_not_the_tax_comes_on_top_once() -> None:
    quote = quote_of(LINES, TAX_OUT)
    assert quote.taxed == Taxed(Decimal("537.00"), Decimal("53.70"))
    assert quote.to_pay == Decimal("590.70")
    assert not quote.tax_in_prices


def test_there_is_no_cost_in_a_quote() -> None:
    names = {field.name for kind in (Quote, QuoteLine, Taxed) for field in fields(kind)}
    assert names == {
        "lines", "taxed", "tax_in_prices", "quantity", "words", "each", "net", "tax",
    }  # fmt: skip


@given(
    st.lists(
        st.builds(QuoteLine, st.integers(1, 60), st.just("x"), st.decimals(0, 500, places=2)),
        max_size=8,
    ),
    st.booleans(),
)
def test_the_lines_add_up_to_what_is_paid_or_taxed(lines: list[QuoteLine], in_prices: bool) -> None:
    quote = quote_of(lines, TAX_IN if in_prices else TAX_OUT)
    whole = sum((line.total for line in lines), Decimal(0))
    assert whole == (quote.to_pay if in_prices else quote.taxed.net)
    assert quote.taxed.net + quote.taxed.tax == quote.to_pay
