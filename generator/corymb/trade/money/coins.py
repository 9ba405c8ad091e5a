"""How many decimals has a currency?

Source: Unicode CLDR, supplemental currency data (`digits`), as Babel carries it.
"""

from __future__ import annotations

from babel.core import get_global


def places_of(currency: str) -> int:
    """Decimals of an amount in this currency: EUR 2, JPY 0, KWD 3."""
    known = get_global("currency_fractions")
    digits: int = known.get(currency, known["DEFAULT"])[0]
    return digits
