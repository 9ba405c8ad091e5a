"""How heavy?"""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from types import MappingProxyType

from corymb.studio.suggest import quoted
from corymb.studio.values.number import plain, read_measure

GRAMS: Mapping[str, Decimal] = MappingProxyType({
    "g": Decimal(1), "kg": Decimal(1000), "oz": Decimal("28.349523125"),
    "lb": Decimal("453.59237"), "grams": Decimal(1), "gram": Decimal(1), "kilo": Decimal(1000),
    "kilos": Decimal(1000), "kilograms": Decimal(1000), "kilogram": Decimal(1000),
    "ounces": Decimal("28.349523125"), "ounce": Decimal("28.349523125"),
    "pounds": Decimal("453.59237"), "pound": Decimal("453.59237"), "lbs": Decimal("453.59237"),
})  # fmt: skip
"""Grams in a unit; a pound is 0.45359237 kg exactly (international yard and pound, 1959)."""

HEAVIEST_GRAMS = 1_000_000
"""A tonne: more is a wrong unit."""


@dataclass(frozen=True, order=True)
class Weight:
    """A weight in grams."""

    grams: float

    def __str__(self) -> str:
        if self.grams < 1000:
            return f"{plain(self.grams)} g"
        return f"{plain(Decimal(repr(self.grams)) / 1000)} kg"


def parse_weight(text: str) -> Weight:
    """Reads `25 g`, `0.9 kg`, `2 oz`, `1 lb`. Raises ValueError."""
    grams = round(read_measure(text, GRAMS, "a weight", "25 g"), 4)
    if grams <= 0:
        raise ValueError(f"{quoted(text)} is no weight at all: write it like ‘25 g’.")
    if grams > HEAVIEST_GRAMS:
        raise ValueError(f"{quoted(text)} is more than a tonne: is the unit right?")
    return Weight(float(grams))
