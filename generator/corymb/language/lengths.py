"""How is a length said: in centimetres, or in inches where the studio shows those?

Inches are what a ruler shows that one reads at arm's length: halves below a foot, whole ones above
(our own choice, no source). An inch is 2.54 cm exactly (international yard and pound, 1959).
"""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal

from corymb.language.locales import figures
from corymb.language.speaking import gettext as _

INCHES = "inches"
CM_IN_AN_INCH = Decimal("2.54")
HALVES_BELOW = 12  # inches


def length_in(unit: str, *cm: float) -> str:
    """`20 cm` or `8 in`; of two lengths `60-90 cm`, the unit named once."""
    said = dict.fromkeys(_figures(unit, each) for each in cm)
    told = _("{length} in") if unit == INCHES else _("{length} cm")
    return told.format(length="-".join(said))


def inches(cm: float) -> Decimal:
    """Centimetres in inches, to the half below a foot and whole above; never none at all."""
    exact = Decimal(repr(float(cm))) / CM_IN_AN_INCH
    parts = 2 if exact < HALVES_BELOW else 1
    rounded = (exact * parts).quantize(Decimal(1), ROUND_HALF_UP)
    return max(rounded, Decimal(1)) / parts


def _figures(unit: str, cm: float) -> str:
    if unit != INCHES:
        return figures(round(Decimal(repr(float(cm))), 1))  # to the millimetre
    whole, half = divmod(inches(cm), 1)
    return f"{int(whole) or ''}½" if half else str(int(whole))
