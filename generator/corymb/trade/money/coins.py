"""How many decimals has a currency, and what is the smallest amount paid in cash?

Source: Unicode CLDR, supplemental currency data (`digits`, `cashDigits`, `cashRounding`), as
Babel carries it.
"""

from __future__ import annotations

from decimal import Decimal

from babel.core import get_global


def places_of(currency: str) -> int:
    """Decimals of an amount in this currency: EUR 2, JPY 0, KWD 3."""
    return _fractions(currency)[0]


def cash_step(currency: str) -> Decimal:
    """What a sum paid in cash is a multiple of: CHF 0.05, DKK 0.50, EUR 0.01."""
    _, _, digits, rounding = _fractions(currency)
    return Decimal(rounding or 1).scaleb(-digits)


def _fractions(currency: str) -> tuple[int, int, int, int]:
    known = get_global("currency_fractions")
    digits, rounding, cash_digits, cash_rounding = known.get(currency, known["DEFAULT"])
    return digits, rounding, cash_digits, cash_rounding
