"""How long, how wide, how high? Lengths, ranges of lengths, load floors, heights above the sea."""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from types import MappingProxyType

from corymb.studio.suggest import quoted
from corymb.studio.values.between import split_range
from corymb.studio.values.number import plain, read_measure

CM: Mapping[str, Decimal] = MappingProxyType({
    "mm": Decimal("0.1"), "cm": Decimal(1), "m": Decimal(100),
    "in": Decimal("2.54"), "ft": Decimal("30.48"),
    "millimetres": Decimal("0.1"), "millimetre": Decimal("0.1"),
    "centimetres": Decimal(1), "centimetre": Decimal(1), "metres": Decimal(100),
    "metre": Decimal(100), "meters": Decimal(100), "meter": Decimal(100),
    "inches": Decimal("2.54"), "inch": Decimal("2.54"), '"': Decimal("2.54"),
    "feet": Decimal("30.48"), "foot": Decimal("30.48"),
})  # fmt: skip
"""Centimetres in a unit; an inch is 2.54 cm exactly (international yard and pound, 1959)."""

LONGEST_CM = 100_000
"""A kilometre: nothing in a studio is longer, so more is a wrong unit."""


@dataclass(frozen=True, order=True)
class Length:
    """A length in centimetres."""

    cm: float

    def __str__(self) -> str:
        return f"{plain(self.cm)} cm"


@dataclass(frozen=True, order=True)
class LengthRange:
    """From the shortest to the longest, in centimetres; both alike for a single length."""

    shortest_cm: float
    longest_cm: float

    def __str__(self) -> str:
        if self.shortest_cm == self.longest_cm:
            return f"{plain(self.longest_cm)} cm"
        return f"{plain(self.shortest_cm)}-{plain(self.longest_cm)} cm"

    def has(self, length: Length) -> bool:
        """Whether a length lies in the range, its ends included."""
        return self.shortest_cm <= length.cm <= self.longest_cm


@dataclass(frozen=True)
class Floor:
    """A load floor in centimetres, the longer side first."""

    long_cm: float
    wide_cm: float

    def __str__(self) -> str:
        return f"{plain(self.long_cm)} x {plain(self.wide_cm)} cm"


@dataclass(frozen=True, order=True)
class Height:
    """A height above the sea in metres; below it, less than nothing."""

    metres: float

    def __str__(self) -> str:
        return f"{plain(self.metres)} m"


def parse_length(text: str) -> Length:
    """Reads `9 cm`, `90 mm`, `1.2 m`, `24 in`, `2 ft`. Raises ValueError."""
    if split_range(text):
        raise ValueError(f"{quoted(text)} is a range; one length is wanted here, like ‘75 cm’.")
    return Length(_cm(text, "9 cm"))


SMALLEST_PIECE_CM, LARGEST_PIECE_CM = 1, 2000
"""A piece is no smaller than its smallest bud, no larger than a barn. House values, no source."""


def parse_piece_length(text: str) -> Length:
    """Reads how wide or high a piece is, `22 cm`. Raises ValueError."""
    length = parse_length(text)
    if not SMALLEST_PIECE_CM <= length.cm <= LARGEST_PIECE_CM:
        raise ValueError(
            f"{quoted(text)} is no size for a piece: it lies between 1 cm and 20 m. "
            "Is the unit right?"
        )
    return length


def parse_length_range(text: str) -> LengthRange:
    """Reads `60-90 cm`, `60 to 90 cm`, `60 cm - 1.2 m`, or one length. Raises ValueError."""
    ends = split_range(text)
    if ends is None:
        length = _cm(text, "60-90 cm")
        return LengthRange(length, length)
    first, last = ends
    longest = _cm(last, "60-90 cm")
    shortest = _cm(_with_unit_of(first, last), "60-90 cm")
    if shortest > longest:
        raise ValueError(f"{quoted(text)} runs backwards: put the shorter length first.")
    return LengthRange(shortest, longest)


LONGEST_FLOOR_CM = 1400
"""No load floor is longer: the longest trailers have about 13.6 m (from memory)."""


def parse_floor(text: str) -> Floor:
    """Reads `170 x 120 cm`, `1.7 m by 1.2 m`. Raises ValueError."""
    sides = re.split(r"\s*[x×*]\s*|\s+by\s+", text.strip(), flags=re.IGNORECASE)
    if len(sides) != 2:
        raise ValueError(
            f"{quoted(text)} is not a floor: write its two sides, like ‘170 x 120 cm’."
        )
    wide = _cm(sides[1], "170 x 120 cm")
    long = _cm(_with_unit_of(sides[0], sides[1]), "170 x 120 cm")
    if max(long, wide) > LONGEST_FLOOR_CM:
        raise ValueError(f"{quoted(text)} is longer than a lorry: is the unit right?")
    return Floor(max(long, wide), min(long, wide))


def parse_height(text: str) -> Height:
    """Reads `60 m`, `200 ft`, `-3 m`: how high a place lies above the sea. Raises ValueError."""
    metres = round(read_measure(text, CM, "a height above the sea", "60 m") / 100, 4)
    if not -500 <= metres <= 6000:
        raise ValueError(f"{quoted(text)} can't be right: flowers grow between -500 m and 6000 m.")
    return Height(float(metres))


def _with_unit_of(first: str, last: str) -> str:
    """`60` beside `90 cm` is 60 cm."""
    unit = re.sub(r"^[^a-zA-Z\"]*", "", last.strip())
    return first if re.search(r"[a-zA-Z\"]", first) else f"{first} {unit}"


def _cm(text: str, example: str) -> float:
    cm = round(read_measure(text, CM, "a length", example), 4)
    if cm <= 0:
        raise ValueError(f"{quoted(text)} is no length at all: write it like {quoted(example)}.")
    if cm > LONGEST_CM:
        raise ValueError(f"{quoted(text)} is longer than a kilometre: is the unit right?")
    return float(cm)
