"""What keeps one stem from standing in for another: how far may a swap go?

The limits are the style's, the role's and the house's, each written here once: what breaks none
is offered (`standing_in`), and of what breaks some the nearest is named (`beyond`). All numbers
are house values: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from corymb.language import gettext as _
from corymb.language import pgettext
from corymb.studio.models import StudioFile, Style
from corymb.trade.changes import LookLine
from corymb.trade.swaps.beside import Pair
from corymb.trade.swaps.families import family_name
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
    stems: float = 3.0
    """One stem shows at most the area of so many of the other, whichever goes out."""
    more: float = 2.5
    """In whole stems at most so many times as many come in: each has to be cut and paid for."""
    accents: int = 3
    """An accent of so many stems or more keeps so many places at least: dots, not a blot."""
    places: int = 2
    """So does any other line: what is spread through a piece never shrinks to a single stem."""
    length: float = 0.7
    """Of the length that goes out, as far as the style needs it."""
    lightness: float = 12.0
    """L* at most lighter for depth, darker for light."""
    most: float = 0.5
    """The share of a piece's visible area that all its swaps may take together."""
    lines: int = 3
    """So many lines of a piece may be swapped at once: with more it is another piece."""

    @classmethod
    def of(cls, house: StudioFile) -> SwapLimits:
        """The studio's own, as far as its file tells them."""
        told = house.swaps
        return cls(
            colour=told.colour_within,
            most=float(told.most_of_a_piece.fraction),
            lines=told.lines_at_most,
        )


HOUSE_LIMITS = SwapLimits()
"""Where a studio tells none of its own."""


def limits_broken(pair: Pair, line: LookLine, style: Style, limits: SwapLimits) -> tuple[str, ...]:
    """All that a swap would break, in words, each once."""
    found = (
        *map(_, unfit(pair.coming.stem, style)),
        *broken_by_pair(pair, line.role, style, limits),
        *broken_by_count(pair, line.role, line.count, limits),
    )
    return tuple(dict.fromkeys(found))


def broken_by_pair(pair: Pair, role: str, style: Style, limits: SwapLimits) -> Iterator[str]:
    """What doesn't hang on the count; last the colour, which takes longest."""
    if pair.coming.dried != pair.out.dried:
        yield _("dried for fresh") if pair.coming.dried else _("fresh for dried")
    if pair.coming.family != pair.out.family:
        # L10N: what comes in for what goes out: fruit for flowers.
        told = pgettext("families", "{coming} for {out}")
        yield told.format(coming=family_name(pair.coming.family), out=family_name(pair.out.family))
    wanted_cm = min(pair.out.longest, style.stem_length.longest_cm) * limits.length
    if pair.coming.longest < wanted_cm:
        yield _(TOO_SHORT)
    if role == "depth" and pair.lighter > limits.lightness:
        yield _("too light for depth")
    if role == "light" and -pair.lighter > limits.lightness:
        yield _("too dark for light")
    if pair.stems_for_one > limits.stems:
        yield _("too many stems for one")
    if pair.stems_for_one < 1 / limits.stems:
        yield _("too big for its place")
    if abs(pair.lighter) > STEEPEST * limits.colour or pair.colour > limits.colour:
        yield _("further off in colour")


def broken_by_count(pair: Pair, role: str, count: int, limits: SwapLimits) -> Iterator[str]:
    """What whole stems show of the area of so many that go out, and how many they are."""
    coming = pair.whole_stems(count)
    if coming > count * limits.more:
        yield _("too many stems for one")
    if coming < _places(role, count, limits):
        yield _("too few to be spread")
    shown = coming / (count * pair.stems_for_one)
    if shown > limits.area:
        yield _("shows too much in whole stems")
    if shown < 1 / limits.area:
        yield _("shows too little in whole stems")


def _places(role: str, count: int, limits: SwapLimits) -> int:
    """How many places a line of so many stems keeps at least."""
    if count < limits.accents:
        return 1
    return limits.accents if role == "accent" else limits.places
