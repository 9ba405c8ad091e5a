"""Money in the forms of many countries, against CLDR (47/48) as Babel and ICU agree on it."""

from __future__ import annotations

from decimal import Decimal

import pytest
from babel.numbers import format_currency

from corymb.views.compose.wording import _with_decimals

CLDR = {
    ("en_GB", "GBP", "1234.5"): "£1,234.50",
    ("de_DE", "EUR", "1234.5"): "1.234,50\u00a0€",
    ("fr_FR", "EUR", "1234.5"): "1\u202f234,50\u00a0€",
    ("fr_FR", "EUR", "12345678.9"): "12\u202f345\u202f678,90\u00a0€",
    ("pl_PL", "PLN", "12345.6"): "12\u00a0345,60\u00a0zł",
    ("sv_SE", "SEK", "1234.5"): "1\u00a0234,50\u00a0kr",
    ("da_DK", "DKK", "1234.5"): "1.234,50\u00a0kr.",
    ("en_IN", "INR", "1234567.8"): "₹12,34,567.80",
    ("cs_CZ", "CZK", "1234.5"): "1\u00a0234,50\u00a0Kč",
    ("en_AU", "AUD", "1234.5"): "$1,234.50",
    ("en_CA", "CAD", "1234.5"): "$1,234.50",
    ("en_NZ", "NZD", "1234.5"): "$1,234.50",
}


@pytest.mark.parametrize(("asked", "written"), CLDR.items(), ids=["-".join(a) for a in CLDR])
def test_the_pattern_with_cents_is_the_countrys_own(
    asked: tuple[str, str, str], written: str
) -> None:
    locale, currency, amount = asked
    pattern = _with_decimals(locale, 2)
    assert (
        format_currency(
            Decimal(amount), currency, format=pattern, locale=locale, currency_digits=False
        )
        == written
    )


def test_a_whole_amount_keeps_the_countrys_order() -> None:
    pattern = _with_decimals("de_DE", 0)
    assert format_currency(Decimal(28), "EUR", pattern, "de_DE", currency_digits=False) == (
        "28\u00a0€"
    )
