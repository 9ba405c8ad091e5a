"""What could stand in for a stem of a look, and how many of it: the best first?

Another stem of the same use that the style allows, long enough, of nearly the same colour, and
that keeps the role: what stands in for depth isn't much lighter, for light not much darker. It
comes in whole stems that show as nearly as can be the area of what goes out. The season is not
asked here. All numbers are house values: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import floor, log2, sqrt
from typing import NamedTuple

from corymb.studio.models import Stem, StudioFile, Style
from corymb.studio.words import LONG_FORMS
from corymb.trade.areas import visible_area
from corymb.trade.changes import LookLine
from corymb.trade.colour.likeness import Palette, apart, lightness, palette_of
from corymb.trade.swaps.fitting import fits

A_DOUBLING = 6.0
"""Heads twice or half the size count as much as this distance of colours."""

ANOTHER_FORM = 4.0
A_KIN_FORM = 2.0
A_DAY_LESS = 1.5
"""So do another form, one that is of its kin, and each day that it keeps less."""

LONG_ENOUGH_DAYS = 14
"""Days that a stem keeps beyond these make it no better: no piece is kept for longer."""

KIN_FORMS = (
    ("rosette", "cup", "daisy"),
    ("spike", "plume", "bell"),
    ("umbel", "cluster", "globe"),
    ("berry", "pod"),
    ("leaf-spray", "blade", "trail"),
)
"""Forms that do the same for the eye."""

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


class _Facts(NamedTuple):
    """What is asked of a stem, worked out once."""

    id: str
    use: str
    form: str
    palette: Palette
    lightness: float
    head: float
    area: float
    days: int
    longest: float


class _Pair(NamedTuple):
    """One stem beside another, whatever the style and the count."""

    score: float
    facts: _Facts
    colour: float
    ratio: float


class StandIns:
    """All that can ever stand in for the lines of a studio's looks."""

    def __init__(self, stems: Mapping[str, Stem], limits: SwapLimits = SwapLimits()) -> None:
        self._stems = stems
        self._limits = limits
        self._facts = {stem_id: _facts(stem_id, stem) for stem_id, stem in sorted(stems.items())}
        self._pairs: dict[tuple[str, str], list[_Pair]] = {}
        self._colours: dict[tuple[str, str], float] = {}
        self._allowed: dict[tuple[object, ...], frozenset[str]] = {}
        self._kept: dict[tuple[object, ...], list[_Pair]] = {}

    def ranked(self, line: LookLine, style: Style) -> tuple[StandIn, ...]:
        """All that could stand in for the line in the style, best first, ties by id."""
        out = self._facts.get(line.stem)
        if out is None:
            return ()
        pairs = self._keeping(out, line.use or out.use, line.role, style)
        made = (_stand_in(pair, out, line, self._limits.area) for pair in pairs)
        return tuple(each for each in made if each is not None)

    def _keeping(self, out: _Facts, use: str, role: str, style: Style) -> list[_Pair]:
        """What the style allows of what is like it, and keeps the role."""
        bounds = _bounds(style)
        key = (out.id, use, role, bounds)
        if key not in self._kept:
            allowed = self._allowed_in(style, bounds)
            shortest = self._limits.length * min(out.longest, style.stem_length.longest_cm)
            self._kept[key] = [
                pair
                for pair in self._alike(out, use)
                if pair.facts.id in allowed
                and pair.facts.longest >= shortest
                and self._keeps(role, pair.facts.lightness - out.lightness)
            ]
        return self._kept[key]

    def _keeps(self, role: str, lighter: float) -> bool:
        too_far = {"depth": lighter, "light": -lighter}
        return too_far.get(role, 0.0) <= self._limits.lightness

    def _allowed_in(self, style: Style, bounds: tuple[object, ...]) -> frozenset[str]:
        if bounds not in self._allowed:
            fit = (stem_id for stem_id, stem in self._stems.items() if fits(stem, style))
            self._allowed[bounds] = frozenset(fit)
        return self._allowed[bounds]

    def _alike(self, out: _Facts, use: str) -> list[_Pair]:
        """The other stems of a use within the limit of colour, best first."""
        key = (out.id, use)
        if key not in self._pairs:
            others = [each for each in self._facts.values() if each.use == use and each != out]
            pairs = [_pair(out, each, self._colour(out, each)) for each in others]
            near = [pair for pair in pairs if self._is_near(pair, out)]
            self._pairs[key] = sorted(near, key=lambda pair: (pair.score, pair.facts.id))
        return self._pairs[key]

    def _is_near(self, pair: _Pair, out: _Facts) -> bool:
        most = self._limits.stems
        colour_is = pair.colour <= self._limits.colour
        return colour_is and 1 / most <= out.area / pair.facts.area <= most

    def _colour(self, a: _Facts, b: _Facts) -> float:
        """Their distance, worked out once for both; endless where lightness alone says too far."""
        if abs(a.lightness - b.lightness) > STEEPEST * self._limits.colour:
            return float("inf")
        key = (a.id, b.id) if a.id < b.id else (b.id, a.id)
        if key not in self._colours:
            self._colours[key] = apart(a.palette, b.palette)
        return self._colours[key]


def head_size(stem: Stem) -> float:
    """How wide one head is in centimetres; of a long one, the width of a round one of its area."""
    across = stem.head.cm
    long = stem.head_length.cm if stem.form in LONG_FORMS and stem.head_length else across
    return sqrt(across * long)


def form_cost(one: str, other: str) -> float:
    """What another form costs in the ranking."""
    if one == other:
        return 0.0
    kin = any(one in group and other in group for group in KIN_FORMS)
    return A_KIN_FORM if kin else ANOTHER_FORM


def _facts(stem_id: str, stem: Stem) -> _Facts:
    colours = palette_of(stem)
    return _Facts(
        id=stem_id,
        use=stem.use,
        form=stem.form,
        palette=colours,
        lightness=lightness(colours),
        head=head_size(stem),
        area=visible_area(stem),
        days=stem.vase_life.fewest,
        longest=stem.length.longest_cm,
    )


def _bounds(style: Style) -> tuple[object, ...]:
    """All that a style asks of a stem: two styles that ask the same are one here."""
    length = style.stem_length
    excludes = frozenset(style.excludes)
    return length.shortest_cm, length.longest_cm, style.heaviest_stem.grams, excludes


def _pair(out: _Facts, coming: _Facts, colour: float) -> _Pair:
    ratio = coming.head / out.head
    score = (
        colour
        + A_DOUBLING * abs(log2(ratio))
        + form_cost(out.form, coming.form)
        + A_DAY_LESS * max(0, min(out.days, LONG_ENOUGH_DAYS) - coming.days)
    )
    return _Pair(round(score, 6), coming, colour, ratio)


def _stand_in(pair: _Pair, out: _Facts, line: LookLine, most: float) -> StandIn | None:
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
