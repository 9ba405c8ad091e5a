"""How is a length said: in centimetres, or in inches where the studio shows those?

Inches are what a ruler shows that one reads at arm's length: halves below a foot, whole ones above
(our own choice, no source). An inch is 2.54 cm exactly (international yard and pound, 1959).
"""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal

from corymb.language import gettext as _
from corymb.language.locales import figures
from corymb.studio.models import StudioFile
from corymb.studio.values.length import Length, LengthRange

CM_IN_AN_INCH = Decimal("2.54")
HALVES_BELOW = 12  # inches


def length_words(length: Length | float, house: StudioFile) -> str:
    """`20 cm` or `8 in`, of a length or of so many centimetres."""
    cm = length.cm if isinstance(length, Length) else length
    return _unit(house).format(length=_figures(cm, house))


def lengths_words(lengths: LengthRange, house: StudioFile) -> str:
    """`60-90 cm` or `24-35 in`; one length where both ends are said alike."""
    ends = (lengths.shortest_cm, lengths.longest_cm)
    said = dict.fromkeys(_figures(cm, house) for cm in ends)
    return _unit(house).format(length="-".join(said))


def inches(cm: float) -> Decimal:
    """Centimetres in inches, to the half below a foot and whole above; never none at all."""
    exact = Decimal(repr(float(cm))) / CM_IN_AN_INCH
    parts = 2 if exact < HALVES_BELOW else 1
    rounded = (exact * parts).quantize(Decimal(1), ROUND_HALF_UP)
    return max(rounded, Decimal(1)) / parts


def _unit(house: StudioFile) -> str:
    return _("{length} in") if house.lengths_in == "inches" else _("{length} cm")


def _figures(cm: float, house: StudioFile) -> str:
    if house.lengths_in != "inches":
        return figures(round(Decimal(repr(float(cm))), 1))  # to the millimetre
    whole, half = divmod(inches(cm), 1)
    return f"{int(whole) or ''}½" if half else str(int(whole))
