"""What keeps one stem from standing in for another: how far may a swap go?

The limits are the style's, the role's and the house's, each written here once: what breaks none
is offered (`standing_in`), and of what breaks some the nearest is named (`beyond`). All numbers
are house values: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from corymb.studio.models import StudioFile, Style
from corymb.trade.changes import LookLine
from corymb.trade.swaps.beside import Pair
from corymb.trade.swaps.fitting import TOO_SHORT, unfit

STEEPEST = 1.75
"""CIEDE2000 counts a difference of lightness at least by one part in this (S_L, at black)."""


@dataclass(frozen=True)
class SwapLimits:
    """How far a stem that stands in may be from what it stands in for."""

    colour: float = 20.0
    """CIEDE2000 at most."""
    area: float = 1.6
    """Whole stems show at most so many times more or less."""
    stems: float = 4.0
    """So many stems for one at most, or one for so many."""
    length: float = 0.7
    """Of the length that goes out, as far as the style needs it."""
    lightness: float = 12.0
    """L* at most lighter for depth, darker for light."""
    most: float = 0.5
    """The share of a piece's visible area that all its swaps may take together."""

    @classmethod
    def of(cls, house: StudioFile) -> SwapLimits:
        """The studio's own, as far as its file tells them."""
        told = house.swaps
        return cls(colour=told.colour_within, most=float(told.most_of_a_piece.fraction))


HOUSE_LIMITS = SwapLimits()
"""Where a studio tells none of its own."""


def limits_broken(pair: Pair, line: LookLine, style: Style, limits: SwapLimits) -> tuple[str, ...]:
    """All that a swap would break, in words, each once."""
    found = (
        *unfit(pair.coming.stem, style),
        *broken_by_pair(pair, line.role, style, limits),
        *broken_by_count(pair, line.count, limits),
    )
    return tuple(dict.fromkeys(found))


def broken_by_pair(pair: Pair, role: str, style: Style, limits: SwapLimits) -> Iterator[str]:
    """What doesn't hang on the count; last the colour, which takes longest."""
    wanted_cm = min(pair.out.longest, style.stem_length.longest_cm) * limits.length
    if pair.coming.longest < wanted_cm:
        yield TOO_SHORT
    if role == "depth" and pair.lighter > limits.lightness:
        yield "too light for depth"
    if role == "light" and -pair.lighter > limits.lightness:
        yield "too dark for light"
    if pair.stems_for_one > limits.stems:
        yield "too many stems for one"
    if pair.stems_for_one < 1 / limits.stems:
        yield "too big for its place"
    if abs(pair.lighter) > STEEPEST * limits.colour or pair.colour > limits.colour:
        yield "further off in colour"


def broken_by_count(pair: Pair, count: int, limits: SwapLimits) -> Iterator[str]:
    """What whole stems show of the area of so many that go out."""
    shown = pair.whole_stems(count) / (count * pair.stems_for_one)
    if shown > limits.area:
        yield "shows too much in whole stems"
    if shown < 1 / limits.area:
        yield "shows too little in whole stems"
