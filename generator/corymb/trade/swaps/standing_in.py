"""What could stand in for a stem of a look, and how many of it: the best first?

Another stem of the same use that breaks none of the limits (`limits`): it is of the same family
(`families`) and dried only for what is dried; it fits the style, is long enough and of nearly the
same colour, and keeps the role. It comes in whole stems that show as
nearly as can be the area of what goes out. The season is not asked here.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from corymb.studio.models import Stem, Style
from corymb.trade.changes import LookLine
from corymb.trade.swaps.beside import Facts, Pair, facts_of
from corymb.trade.swaps.fitting import fits
from corymb.trade.swaps.limits import HOUSE_LIMITS, SwapLimits, broken_by_count, broken_by_pair


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

    @classmethod
    def of(cls, pair: Pair, line: LookLine) -> StandIn:
        """For a line of a look, in whole stems."""
        out, coming = pair.out, pair.coming
        return cls(
            out=out.id,
            in_=coming.id,
            role=line.role,
            out_count=line.count,
            in_count=pair.whole_stems(line.count),
            colour_distance=pair.colour,
            size_ratio=pair.size_ratio,
            days=coming.days - out.days,
            same_form=coming.form == out.form,
            score=pair.score,
        )


class StandIns:
    """All that can ever stand in for the lines of a studio's looks."""

    def __init__(self, stems: Mapping[str, Stem], limits: SwapLimits = HOUSE_LIMITS) -> None:
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
        return tuple(
            StandIn.of(pair, line)
            for pair in pairs
            if not any(broken_by_count(pair, line.role, line.count, self._limits))
        )

    def beside(
        self, line: LookLine, lines: Sequence[LookLine], style: Style
    ) -> tuple[StandIn, ...]:
        """The same, but for what is in the look already: no such stem, nor its plant again.

        Dried statice beside fresh of the same colour is the same plant in another guise.
        """
        here = {each.stem for each in lines}
        plants = {self._facts[stem].plant for stem in here - {line.stem} if stem in self._facts}
        return tuple(
            each
            for each in self.ranked(line, style)
            if each.in_ not in here and self._facts[each.in_].plant not in plants
        )

    def _keeping(self, out: Facts, use: str, role: str, style: Style) -> list[Pair]:
        """What the style allows and breaks no limit, whatever the count; best first."""
        bounds = _bounds(style)
        key = (out.id, use, role, bounds)
        if key not in self._kept:
            allowed = self._allowed_in(style, bounds, use)
            pairs = (self._pair(out, each) for each in allowed if each.id != out.id)
            kept = (
                pair for pair in pairs if not any(broken_by_pair(pair, role, style, self._limits))
            )
            self._kept[key] = sorted(kept, key=lambda pair: (pair.score, pair.coming.id))
        return self._kept[key]

    def _allowed_in(self, style: Style, bounds: tuple[object, ...], use: str) -> list[Facts]:
        """The stems of a use that the style takes."""
        key = (bounds, use)
        if key not in self._allowed:
            of_use = (each for each in self._facts.values() if each.use == use)
            self._allowed[key] = [each for each in of_use if fits(each.stem, style)]
        return self._allowed[key]

    def _pair(self, out: Facts, coming: Facts) -> Pair:
        key = (out.id, coming.id)
        if key not in self._pairs:
            self._pairs[key] = Pair(out, coming)
        return self._pairs[key]


def _bounds(style: Style) -> tuple[object, ...]:
    """All that a style asks of a stem: two styles that ask the same are one here."""
    length = style.stem_length
    excludes = frozenset(style.excludes)
    return length.shortest_cm, length.longest_cm, style.heaviest_stem.grams, excludes
