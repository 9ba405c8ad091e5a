"""What could stand in for a stem of a look, and how many of it: the best first?

Another stem of the same use that the style allows, long enough, of nearly the same colour, and
that keeps the role: what stands in for depth isn't much lighter, for light not much darker. It
comes in whole stems that show as nearly as can be the area of what goes out. The season is not
asked here. All numbers are house values: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import floor

from corymb.studio.models import Stem, StudioFile, Style
from corymb.trade.changes import LookLine
from corymb.trade.colour.likeness import apart
from corymb.trade.swaps.beside import Facts, Pair, facts_of, pair_of
from corymb.trade.swaps.fitting import fits

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


@dataclass(frozen=True)
class StandIn:
    """So many of one stem for so many of another."""

    out: str
    in_: str
    role: str
    out_count: int
    in_count: int
    colour_distance: float
    """CIEDE2000."""
    size_ratio: float
    """One head of what comes in over one head of what goes out."""
    days: int
    """Keeps so much longer, or less where it is below 0."""
    same_form: bool
    score: float
    """Lower is better."""


class StandIns:
    """All that can ever stand in for the lines of a studio's looks."""

    def __init__(self, stems: Mapping[str, Stem], limits: SwapLimits = SwapLimits()) -> None:
        self._stems = stems
        self._limits = limits
        self._facts = {stem_id: facts_of(stem_id, stem) for stem_id, stem in sorted(stems.items())}
        self._pairs: dict[tuple[str, str], Pair] = {}
        self._allowed: dict[tuple[object, ...], list[Facts]] = {}
        self._kept: dict[tuple[object, ...], list[Pair]] = {}

    def ranked(self, line: LookLine, style: Style) -> tuple[StandIn, ...]:
        """All that could stand in for the line in the style, best first, ties by id."""
        out = self._facts.get(line.stem)
        if out is None:
            return ()
        pairs = self._keeping(out, line.use or out.use, line.role, style)
        made = (_stand_in(pair, out, line, self._limits.area) for pair in pairs)
        return tuple(each for each in made if each is not None)

    def _keeping(self, out: Facts, use: str, role: str, style: Style) -> list[Pair]:
        """What the style allows and keeps the role, of stems like it; best first."""
        bounds = _bounds(style)
        key = (out.id, use, role, bounds)
        if key not in self._kept:
            shortest = self._limits.length * min(out.longest, style.stem_length.longest_cm)
            pairs = [
                self._pair(out, each)
                for each in self._allowed_in(style, bounds, use)
                if each.id != out.id
                and each.longest >= shortest
                and self._keeps(role, each.lightness - out.lightness)
                and self._is_of_size(each, out)
            ]
            alike = [pair for pair in pairs if pair.colour <= self._limits.colour]
            self._kept[key] = sorted(alike, key=lambda pair: (pair.score, pair.facts.id))
        return self._kept[key]

    def _allowed_in(self, style: Style, bounds: tuple[object, ...], use: str) -> list[Facts]:
        """The stems of a use that the style takes."""
        key = (bounds, use)
        if key not in self._allowed:
            of_use = (each for each in self._facts.values() if each.use == use)
            self._allowed[key] = [each for each in of_use if fits(self._stems[each.id], style)]
        return self._allowed[key]

    def _keeps(self, role: str, lighter: float) -> bool:
        """Whether it is light or dark enough for the role; far off in lightness is never alike."""
        if abs(lighter) > STEEPEST * self._limits.colour:
            return False
        too_far = {"depth": lighter, "light": -lighter}
        return too_far.get(role, 0.0) <= self._limits.lightness

    def _is_of_size(self, coming: Facts, out: Facts) -> bool:
        most = self._limits.stems
        return 1 / most <= out.area / coming.area <= most

    def _pair(self, out: Facts, coming: Facts) -> Pair:
        key = (out.id, coming.id)
        if key not in self._pairs:
            self._pairs[key] = pair_of(out, coming, apart(out.palette, coming.palette))
        return self._pairs[key]


def _bounds(style: Style) -> tuple[object, ...]:
    """All that a style asks of a stem: two styles that ask the same are one here."""
    length = style.stem_length
    excludes = frozenset(style.excludes)
    return length.shortest_cm, length.longest_cm, style.heaviest_stem.grams, excludes


def _stand_in(pair: Pair, out: Facts, line: LookLine, most: float) -> StandIn | None:
    """In whole stems; none when whole stems would show far more or far less."""
    coming = pair.facts
    wanted = line.count * out.area / coming.area
    count = max(1, floor(wanted + 0.5))
    if not 1 / most <= count / wanted <= most:
        return None
    return StandIn(
        out=out.id,
        in_=coming.id,
        role=line.role,
        out_count=line.count,
        in_count=count,
        colour_distance=pair.colour,
        size_ratio=pair.ratio,
        days=coming.days - out.days,
        same_form=coming.form == out.form,
        score=pair.score,
    )
