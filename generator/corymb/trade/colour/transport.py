"""What is the least way of carrying one palette's colours over into another's?

Every share of one is carried to some share of the other; a colour that is carried costs its share
times how far the two look apart (CIEDE2000). The least cost of all is the distance of the palettes
(the earth mover's distance; the partial one where the other has room to spare: Y. Rubner, C.
Tomasi, L. J. Guibas, The earth mover's distance as a metric for image retrieval, International
Journal of Computer Vision 40(2):99-121, 2000).

It is found by carrying along the cheapest way that is left, again and again, where a way may lead
back over what was carried before and take it elsewhere (successive shortest paths: R. K. Ahuja,
T. L. Magnanti, J. B. Orlin, Network Flows, 1993, section 9.7). That is exact. `likeness.apart`
never takes anything back: it is quicker by far, for tens of thousands of pairs, and never shorter.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import inf

from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.likeness import Palette

NOTHING = 1e-12
"""A share below this is rounding."""

Step = tuple[int, int]
"""From a colour of the one to one of the other, each by its number; back where it is taken back."""


@dataclass(frozen=True)
class Carried:
    """A share that is carried from one colour to another, and how far."""

    hex: str
    to: str
    share: float
    distance: float


def distance(one: Palette, other: Palette, room: float = 1.0) -> float:
    """The least mean CIEDE2000 that the one's shares travel to the other's colours.

    Each of these takes up to `room` times its share, 1 or more; with 1 all of the other is filled,
    and the distance is the same either way round. Raises ValueError when only one of them has any
    colour.
    """
    first, second = sorted((one, other)) if room == 1 else (one, other)
    into = tuple((hex_, room * share) for hex_, share in second)
    return sum(part.share * part.distance for part in carried(first, into))


def carried(one: Palette, other: Palette) -> tuple[Carried, ...]:
    """What goes where. Raises ValueError when only one of them has any colour."""
    if bool(one) != bool(other):
        raise ValueError("no colours to compare with")
    ways = _Ways(one, other)
    while (way := ways.cheapest()) is not None:
        ways.carry(way)
    return tuple(
        Carried(one[i][0], other[j][0], share, ways.costs[i, j])
        for (i, j), share in sorted(ways.flow.items())
        if share > NOTHING
    )


class _Ways:
    """What is carried so far, what is left of the one, and where there is room in the other."""

    def __init__(self, one: Palette, other: Palette) -> None:
        self.left = [share for _, share in one]
        self.room = [share for _, share in other]
        self.costs = {
            (i, j): difference(hex_, its)
            for i, (hex_, _) in enumerate(one)
            for j, (its, _) in enumerate(other)
        }
        self.flow = dict.fromkeys(self.costs, 0.0)

    def cheapest(self) -> list[Step] | None:
        """The cheapest way from something left to somewhere with room, steps there and back."""
        to_one = [0.0 if share > NOTHING else inf for share in self.left]
        to_other = [inf] * len(self.room)
        before: dict[int, int] = {}
        taken_from: dict[int, int] = {}
        while self._nearer(to_one, to_other, before, taken_from):
            pass
        ends = [j for j, share in enumerate(self.room) if share > NOTHING and to_other[j] < inf]
        if not ends:
            return None
        at = min(ends, key=lambda j: to_other[j])
        steps = [(before[at], at)]
        while (back := taken_from.get(steps[-1][0])) is not None:
            steps += [(steps[-1][0], back), (before[back], back)]
        return steps[::-1]

    def _nearer(
        self,
        to_one: list[float],
        to_other: list[float],
        before: dict[int, int],
        taken_from: dict[int, int],
    ) -> bool:
        """One round of Bellman and Ford: whether a step more reaches some colour more cheaply."""
        better = False
        for (i, j), cost in self.costs.items():
            if to_one[i] + cost < to_other[j] - NOTHING:
                to_other[j], before[j], better = to_one[i] + cost, i, True
            if self.flow[i, j] > NOTHING and to_other[j] - cost < to_one[i] - NOTHING:
                to_one[i], taken_from[i], better = to_other[j] - cost, j, True
        return better

    def carry(self, way: list[Step]) -> None:
        """As much as goes along a way: every other step takes back what was carried before."""
        there, back = way[::2], way[1::2]
        start, end = there[0][0], there[-1][1]
        share = min(self.left[start], self.room[end], *(self.flow[step] for step in back))
        for step in there:
            self.flow[step] += share
        for step in back:
            self.flow[step] -= share
        self.left[start] -= share
        self.room[end] -= share
