"""What would mend it: what to add or leave out, of what stands that week?

Every piece of advice is a whole change, tried before it is given: with it taken, what was said of
the mix no longer holds, and nothing else has to be said that wasn't before. The smallest changes
come first. Only stems that the style allows (`swaps.fitting`) and that stand that week are added;
a stem that is essential never goes altogether.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from corymb.studio.models import ColourThresholds, Drop, RecipeLine, Stem, Style
from corymb.studio.models.recipe import Changes
from corymb.studio.studio import Studio
from corymb.trade.changes import LookLine, changed
from corymb.trade.colour.ciede2000 import lab_of
from corymb.trade.colour.findings import Finding, findings, kinds_of
from corymb.trade.colour.likeness import palette_of
from corymb.trade.colour.mixture import backing_of, part_played
from corymb.trade.colour.tally import NOTHING, Backing, Measures, Tally, measures_of, tally_of_stem
from corymb.trade.season.beds import Beds
from corymb.trade.season.weeks import thursday
from corymb.trade.swaps.fitting import fits

MOST = 0.5
"""The share of what is seen that a piece of advice may add, or leave out: half, as with swaps."""

SHOWN = 3
"""So many pieces of advice for one finding, at most one of them with any stem."""

A_NEW_STEM = 0.08
UNSURE = 0.3
BOTH = 0.05
"""What it costs, as a share of what is seen, to bring in a stem that isn't there yet, to count on
one that may not stand, and to do two things at once. House values: common practice, no source."""


@dataclass(frozen=True)
class Advice:
    """One whole change that mends one finding."""

    kind: str
    """The finding it mends."""
    add: str = ""
    add_count: int = 0
    role: str = ""
    """The role of what is added."""
    drop: str = ""
    drop_count: int = 0
    chance: float = 1.0
    """How likely what is added stands that week."""
    words: str = ""

    def taken(self, lines: Sequence[LookLine]) -> tuple[LookLine, ...]:
        """The lines with the advice taken."""
        changes = Changes(
            add=[RecipeLine(stem=self.add, count=self.add_count, role=self.role)]
            if self.add
            else [],
            drop=[Drop(stem=self.drop, count=self.drop_count)] if self.drop else [],
        )
        return changed(tuple(lines), changes)


@dataclass(frozen=True)
class Advised:
    """A finding with what would mend it; none where nothing that stands would."""

    finding: Finding
    advice: tuple[Advice, ...]


@dataclass(frozen=True)
class Piece:
    """A look to be advised on: its lines, its style, what it is seen against, and when."""

    lines: tuple[LookLine, ...]
    style: Style
    week: int
    against: str | None = None
    behind: str = "cloth or wall behind"


class Adviser:
    """Advises on the looks of one studio."""

    def __init__(self, stems: Mapping[str, Stem], beds: Beds, limits: ColourThresholds) -> None:
        self.stems = stems
        self.limits = limits
        self._beds = beds
        self._tallies: dict[tuple[str, Backing | None], Tally] = {}

    @classmethod
    def of(cls, studio: Studio, beds: Beds) -> Adviser:
        """For a studio as read, with its beds."""
        return cls(studio.stems, beds, studio.house.colour)

    def on(self, piece: Piece) -> tuple[Advised, ...]:
        """All there is to say of a piece, and what would mend each of it."""
        asked = _Asked(self, piece)
        told = findings(asked.measures, self.limits, piece.behind)
        return tuple(Advised(finding, asked.advice(finding.kind)) for finding in told)

    def tally(self, stem_id: str, backing: Backing | None) -> Tally:
        """What one stem adds to a mix."""
        key = (stem_id, backing)
        if key not in self._tallies:
            self._tallies[key] = tally_of_stem(self.stems[stem_id], backing)
        return self._tallies[key]

    def standing(self, style: Style, week: int) -> list[tuple[str, float]]:
        """The stems that stand in a week and that the style allows, with how likely they do."""
        day = thursday(week)
        return [
            (stem_id, self._beds.chance(stem_id, day))
            for stem_id, stem in sorted(self.stems.items())
            if self._beds.season(stem_id).has(day) and fits(stem, style)
        ]


@dataclass(frozen=True)
class _Way:
    """A change that mends, before it is put in words."""

    cost: float
    add: str = ""
    add_count: int = 0
    chance: float = 1.0
    drop: str = ""
    drop_count: int = 0


class _Asked:
    """One piece, asked about finding by finding."""

    def __init__(self, adviser: Adviser, piece: Piece) -> None:
        self._adviser = adviser
        self._piece = piece
        self._backing = backing_of(piece.against, adviser.limits)
        self._whole = NOTHING
        for line in piece.lines:
            self._whole = self._whole.plus(self._tally(line.stem), line.count)
        self.measures = measures_of(self._whole, self._backing)
        self._kinds = kinds_of(self.measures, adviser.limits)

    def advice(self, kind: str) -> tuple[Advice, ...]:
        """The smallest changes that mend it, each with a stem of its own."""
        ways = [*self._additions(kind), *self._droppings(kind)]
        if len(ways) < SHOWN:
            ways += self._exchanges(kind)
        chosen: list[_Way] = []
        for way in sorted(ways, key=lambda way: (way.cost, way.add, way.drop)):
            apart = all(not {way.add, way.drop} & {o.add, o.drop} - {""} for o in chosen)
            if len(chosen) < SHOWN and apart:
                chosen.append(way)
        return tuple(self._told(kind, way) for way in chosen)

    def _tally(self, stem_id: str) -> Tally:
        return self._adviser.tally(stem_id, self._backing)

    @cached_property
    def _standing(self) -> list[tuple[str, float]]:
        return self._adviser.standing(self._piece.style, self._piece.week)

    def _additions(self, kind: str) -> Iterator[_Way]:
        """The fewest of each stem that mend it."""
        for stem_id, chance in self._standing:
            one = self._tally(stem_id)
            count = self._fewest(kind, self._whole, one)
            if count:
                cost = self._cost(stem_id, chance, count * one.area)
                yield _Way(cost, stem_id, count, chance)

    def _fewest(self, kind: str, before: Tally, one: Tally) -> int:
        """How many of a stem it takes; 0 where it takes too many, or never mends it."""
        if kind == "cold" and 2 * one.warm < one.area:
            return 0  # a white flower only thins the cold out
        most = min(int(MOST / (1 - MOST) * self._whole.area / one.area), self._stems)
        return next((n for n in range(1, most + 1) if self._mends(kind, before.plus(one, n))), 0)

    def _droppings(self, kind: str) -> Iterator[_Way]:
        """The fewest of each stem that one leaves out."""
        for line, most in self._droppable:
            one = self._tally(line.stem)
            for count in range(1, most + 1):
                if self._mends(kind, self._whole.plus(one, -count)):
                    yield _Way(self._part(count * one.area), drop=line.stem, drop_count=count)
                    break

    def _exchanges(self, kind: str) -> Iterator[_Way]:
        """As many as may go of one stem, and the fewest of another."""
        for line, most in self._droppable:
            out = self._tally(line.stem)
            for going in sorted({most, -(-most // 2)}):
                left = self._whole.plus(out, -going)
                for stem_id, chance in self._standing:
                    one = self._tally(stem_id)
                    count = 0 if stem_id == line.stem else self._fewest(kind, left, one)
                    if count:
                        cost = self._cost(stem_id, chance, count * one.area)
                        cost += self._part(going * out.area) + BOTH
                        yield _Way(cost, stem_id, count, chance, line.stem, going)

    @cached_property
    def _droppable(self) -> list[tuple[LookLine, int]]:
        """Each stem's largest line, with how many of it may go."""
        largest: dict[str, LookLine] = {}
        for line in self._piece.lines:
            if line.stem not in largest or line.count > largest[line.stem].count:
                largest[line.stem] = line
        room = MOST * self._whole.area
        able = [
            (line, min(line.count - line.essential, int(room / self._tally(line.stem).area)))
            for line in largest.values()
        ]
        return [(line, most) for line, most in able if most > 0]

    @cached_property
    def _stems(self) -> int:
        return sum(line.count for line in self._piece.lines)

    def _mends(self, kind: str, after: Tally) -> bool:
        if after.area <= 1e-6:
            return False
        left = kinds_of(measures_of(after, self._backing), self._adviser.limits)
        return kind not in left and left <= self._kinds

    def _part(self, area: float) -> float:
        return area / self._whole.area

    def _cost(self, stem_id: str, chance: float, area: float) -> float:
        new = all(line.stem != stem_id for line in self._piece.lines)
        return self._part(area) + new * A_NEW_STEM + UNSURE * (1 - chance)

    def _told(self, kind: str, way: _Way) -> Advice:
        role = self._role(way) if way.add else ""
        words = self._words(way, role)
        return Advice(
            kind, way.add, way.add_count, role, way.drop, way.drop_count, way.chance, words
        )

    def _role(self, way: _Way) -> str:
        """What the added stem's main colour does in the mix that it makes."""
        after = self._whole.plus(self._tally(way.add), way.add_count)
        if way.drop:
            after = after.plus(self._tally(way.drop), -way.drop_count)
        measures = measures_of(after, self._backing)
        colour = palette_of(self._adviser.stems[way.add])[0][0]
        share = way.add_count * self._tally(way.add).area / after.area
        part = part_played(colour, measures)
        if part == "accent" and share > float(self._adviser.limits.accent_above.fraction):
            return _light_or_depth(colour, measures)
        return part

    def _words(self, way: _Way, role: str) -> str:
        stems, parts = self._adviser.stems, []
        if way.drop:
            parts.append(f"leave out {way.drop_count} {stems[way.drop].name}")
        if way.add:
            here = any(line.stem == way.add for line in self._piece.lines)
            more = "more " if here else ""
            parts.append(f"add {way.add_count} {more}{stems[way.add].name}, {role}")
        told = ", and ".join(parts)
        return f"{told[0].upper()}{told[1:]}."


def _light_or_depth(colour: str, measures: Measures) -> str:
    return "light" if lab_of(colour)[0] > measures.lightness else "depth"
