"""How can a measure be divided without a float's dust? As an exact fraction of what was written.

0.6 / 0.2 is 2.9999999999999996 for a float, and a whole row of buckets is lost by it.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from math import isqrt

Number = int | float | Decimal | Fraction


def exact(number: Number) -> Fraction:
    """The number as it is written: 0.2 is one fifth. Raises ValueError for what is no number."""
    return Fraction(Decimal(repr(number))) if isinstance(number, float) else Fraction(number)


def whole_root(square: Fraction) -> int:
    """The whole part of a square root, exactly. Raises ValueError below 0."""
    return isqrt(square.numerator // square.denominator)
