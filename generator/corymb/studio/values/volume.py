"""How much water?"""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from types import MappingProxyType

from corymb.studio.suggest import quoted
from corymb.studio.values.number import plain, read_measure

LITRES: Mapping[str, Decimal] = MappingProxyType({
    "ml": Decimal("0.001"), "cl": Decimal("0.01"), "L": Decimal(1), "l": Decimal(1),
    "litres": Decimal(1), "litre": Decimal(1), "liters": Decimal(1), "liter": Decimal(1),
    "millilitres": Decimal("0.001"), "millilitre": Decimal("0.001"),
})  # fmt: skip
"""Litres in a unit. Pints and gallons are left out: they differ from country to country."""

LARGEST_LITRES = 10_000
"""Ten tonnes of water: more is a wrong unit."""


@dataclass(frozen=True, order=True)
class Volume:
    """An amount of water in litres."""

    litres: float

    def __str__(self) -> str:
        if self.litres >= 1:
            return f"{plain(self.litres)} L"
        return f"{plain(Decimal(repr(self.litres)) * 1000)} ml"


def parse_volume(text: str) -> Volume:
    """Reads `5 L`, `0.5 litres`, `500 ml`. Raises ValueError."""
    litres = round(read_measure(text, LITRES, "an amount of water", "5 L"), 6)
    if litres <= 0:
        raise ValueError(f"{quoted(text)} is no water at all: write it like ‘5 L’.")
    if litres > LARGEST_LITRES:
        raise ValueError(f"{quoted(text)} is more than ten thousand litres: is the unit right?")
    return Volume(float(litres))
