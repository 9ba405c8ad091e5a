"""How much of an arrangement's visible area does each colour take?

The area one stem shows is that of its heads: a disc of the head's width for round forms, an
ellipse of head width by head length for long ones, once for each head on the stem, and no more
of any than the piece has room for (`trade.room`). Heads hide each other, alike for all, so shares
hold where absolute areas don't. A branched spray or an airy umbel shows less than its outline:
`FILLED` is the part of the outline that is really covered (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import pi

from corymb.studio.models import Stem
from corymb.trade.changes import LookLine
from corymb.trade.room import ALL, Room

FILLED = {
    "rosette": 1.0,
    "daisy": 0.8,
    "umbel": 0.45,
    "globe": 1.0,
    "spike": 0.7,
    "cluster": 0.8,
    "cup": 0.9,
    "iris": 0.9,
    "trumpet": 0.7,
    "bell": 0.6,
    "plume": 0.4,
    "tassel": 0.5,
    "trail": 0.45,
    "leaf-spray": 0.5,
    "needle-spray": 0.5,
    "blade": 0.5,
    "twig": 0.2,
    "berry": 0.8,
    "pod": 0.8,
}


@dataclass(frozen=True)
class ColourArea:
    """A colour of one line and its share of the whole arrangement, 0 to 1."""

    stem: str
    role: str
    name: str
    hex: str
    share: float


def visible_area(stem: Stem, room: Room = ALL) -> float:
    """The area that one cut stem shows where there is so much room, in square centimetres."""
    across, long = room.size_of(stem)
    return pi / 4 * across * long * room.heads_of(stem) * FILLED[stem.form]


def line_shares(lines: Sequence[LookLine], stems: Mapping[str, Stem]) -> list[float]:
    """Each line's share of the arrangement's visible area; they add up to 1."""
    areas = [line.count * visible_area(stems[line.stem], line.room) for line in lines]
    whole = sum(areas) or 1.0
    return [area / whole for area in areas]


def colour_areas(lines: Sequence[LookLine], stems: Mapping[str, Stem]) -> list[ColourArea]:
    """Every colour of every line with its share of the whole, in the lines' order."""
    return [
        ColourArea(line.stem, line.role, part.name, part.hex, share * float(part.share or 0))
        for line, share in zip(lines, line_shares(lines, stems), strict=True)
        for part in stems[line.stem].colours
    ]
