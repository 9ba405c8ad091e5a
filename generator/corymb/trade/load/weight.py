"""What does a bucket weigh, with its water and its stems?

Water's density by G. S. Kell, Density, thermal expansivity, and compressibility of liquid water
from 0 to 150 C, J. Chem. Eng. Data 20 (1975) 97-105, equation 16, at the pressure of the air.
"""

from __future__ import annotations

from corymb.trade.load.buckets import Filled

TAP_CELSIUS = 15.0
"""Water from the tap or the butt. House value: 20 degrees warmer takes some 25 g off 5 litres."""

_ABOVE = (999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12)
_BELOW = 16.879850e-3


def water_kg_per_m3(celsius: float) -> float:
    """The density of water, in kg a cubic metre, which is grams a litre.

    Raises ValueError outside 0 to 100 degrees Celsius.
    """
    if not 0 <= celsius <= 100:
        raise ValueError(f"water is ice or steam at {celsius:g} degrees Celsius")
    above = sum(factor * celsius**power for power, factor in enumerate(_ABOVE))
    return above / (1 + _BELOW * celsius)


def bucket_kg(
    water_litres: float, stems_g: float, empty_kg: float, celsius: float = TAP_CELSIUS
) -> float:
    """Water, stems and bucket together, in kg. Raises ValueError below nothing."""
    if min(water_litres, stems_g, empty_kg) < 0:
        raise ValueError("nothing in a bucket weighs less than nothing")
    return (water_litres * water_kg_per_m3(celsius) + stems_g) / 1000 + empty_kg


def filled_kg(bucket: Filled, celsius: float = TAP_CELSIUS) -> float:
    """What a filled bucket weighs, in kg; without water where all in it is dried."""
    stems_g = sum(part.count * part.lot.weight_g for part in bucket.parts)
    water_litres = 0 if bucket.dry else bucket.kind.water_litres
    return bucket_kg(water_litres, stems_g, bucket.kind.empty_kg, celsius)
