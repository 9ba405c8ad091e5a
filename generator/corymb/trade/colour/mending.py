"""Which changes mend a mix: so many more of a stem that stands, so many fewer of one that is there?

Each is tried on the sums of the mix (`tally`): afterwards what was said of it no longer holds, and
nothing else has to be said that wasn't before. The smallest come first.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from corymb.studio.models import ColourThresholds
from corymb.trade.changes import LookLine
from corymb.trade.colour.findings import KINDS, kinds_of
from corymb.trade.colour.tally import NOTHING, Backing, Measures, Tally, measures_of

MOST = 0.5
"""The share of what is seen that a change may add, or leave out: half, as with swaps."""

SHOWN = 3
"""So many changes for one finding, no two of them with the same stem."""

A_NEW_STEM = 0.08
UNSURE = 0.3
BOTH = 0.05
IN_HAND = 0.25
"""What it costs, as a share of what is seen, to bring in a stem that isn't there yet, to count on
one that may not stand, to do two things at once, and to cut and place as many stems again as there
are: ten small heads are more work than two large ones. House values: common practice, no source."""


@dataclass(frozen=True)
class Way:
    """A change that mends."""

    cost: float
    add: str = ""
    add_count: int = 0
    chance: float = 1.0
    """How likely what is added stands."""
    drop: str = ""
    drop_count: int = 0


@dataclass(frozen=True)
class Mending:
    """One mix, asked about finding by finding."""

    lines: Sequence[LookLine]
    tally: Callable[[str], Tally]
    """What one stem adds to the mix."""
    standing_now: Callable[[], Sequence[tuple[str, float]]]
    """The stems that may be added, with how likely they stand; asked once something is found."""
    backing: Backing | None
    limits: ColourThresholds

    def ways(self, kind: str) -> list[Way]:
        """The smallest changes that mend a finding, each with stems of its own."""
        found = [*self._additions(kind), *self._droppings(kind)]
        if len(found) < SHOWN:
            found += self._exchanges(kind)
        chosen: list[Way] = []
        for way in sorted(found, key=lambda way: (way.cost, way.add, way.drop)):
            taken = {stem for other in chosen for stem in (other.add, other.drop)} - {""}
            if len(chosen) < SHOWN and not taken & {way.add, way.drop}:
                chosen.append(way)
        return chosen

    @cached_property
    def measures(self) -> Measures:
        """Of the mix as it is."""
        return measures_of(self._whole, self.backing)

    def measures_after(self, way: Way) -> Measures:
        """Of the mix with a change made."""
        after = self._whole
        for stem_id, count in ((way.add, way.add_count), (way.drop, -way.drop_count)):
            after = after.plus(self.tally(stem_id), count) if stem_id else after
        return measures_of(after, self.backing)

    def share_after(self, way: Way) -> float:
        """The share of the area that what is added takes afterwards."""
        added = way.add_count * self.tally(way.add).area
        dropped = way.drop_count * self.tally(way.drop).area if way.drop else 0.0
        here = sum(line.count for line in self.lines if line.stem == way.add)
        mine = added + here * self.tally(way.add).area
        return mine / (self._whole.area + added - dropped)

    @cached_property
    def standing(self) -> Sequence[tuple[str, float]]:
        """The stems that may be added, with how likely they stand."""
        return self.standing_now()

    @cached_property
    def _whole(self) -> Tally:
        whole = NOTHING
        for line in self.lines:
            whole = whole.plus(self.tally(line.stem), line.count)
        return whole

    @cached_property
    def _kinds(self) -> frozenset[str]:
        return kinds_of(self.measures, self.limits)

    def _additions(self, kind: str) -> Iterator[Way]:
        """The fewest of each stem that mend it."""
        for stem_id, chance in self.standing:
            one = self.tally(stem_id)
            count = self._fewest(kind, self._whole, one)
            if count:
                yield Way(self._cost(stem_id, chance, count), stem_id, count, chance)

    def _fewest(self, kind: str, before: Tally, one: Tally) -> int:
        """How many of a stem it takes; 0 where it takes too many, or never mends it."""
        if kind == "cold" and 2 * one.warm < one.area:
            return 0  # a white flower only thins the cold out
        most = min(int(MOST / (1 - MOST) * self._whole.area / one.area), self._stems)
        return next((n for n in range(1, most + 1) if self._mends(kind, before.plus(one, n))), 0)

    def _droppings(self, kind: str) -> Iterator[Way]:
        """The fewest of each stem that one leaves out."""
        for line, most in self._droppable:
            one = self.tally(line.stem)
            for count in range(1, most + 1):
                if self._mends(kind, self._whole.plus(one, -count)):
                    yield Way(self._part(line.stem, count), drop=line.stem, drop_count=count)
                    break

    def _exchanges(self, kind: str) -> Iterator[Way]:
        """As many as may go of one stem, and the fewest of another."""
        for line, most in self._droppable:
            out = self.tally(line.stem)
            for going in sorted({most, -(-most // 2)}):
                left = self._whole.plus(out, -going)
                for stem_id, chance in self.standing:
                    one = self.tally(stem_id)
                    count = 0 if stem_id == line.stem else self._fewest(kind, left, one)
                    if count:
                        cost = self._cost(stem_id, chance, count)
                        cost += self._part(line.stem, going) + BOTH
                        yield Way(cost, stem_id, count, chance, line.stem, going)

    @cached_property
    def _droppable(self) -> list[tuple[LookLine, int]]:
        """Each stem's largest line, with how many of it may go."""
        largest: dict[str, LookLine] = {}
        for line in self.lines:
            if line.stem not in largest or line.count > largest[line.stem].count:
                largest[line.stem] = line
        room = MOST * self._whole.area
        able = [
            (line, min(line.count - line.essential, int(room / self.tally(line.stem).area)))
            for line in largest.values()
        ]
        return [(line, most) for line, most in able if most > 0]

    @cached_property
    def _stems(self) -> int:
        return sum(line.count for line in self.lines)

    def _mends(self, kind: str, after: Tally) -> bool:
        if after.area <= 1e-6:
            return False
        measures = measures_of(after, self.backing)
        if KINDS[kind](measures, self.limits):
            return False
        return kinds_of(measures, self.limits) <= self._kinds

    def _part(self, stem_id: str, count: int) -> float:
        """How much of the piece so many of a stem are, by what is seen and by the work."""
        seen = count * self.tally(stem_id).area / self._whole.area
        return seen + IN_HAND * count / self._stems

    def _cost(self, stem_id: str, chance: float, count: int) -> float:
        new = all(line.stem != stem_id for line in self.lines)
        return self._part(stem_id, count) + new * A_NEW_STEM + UNSURE * (1 - chance)
