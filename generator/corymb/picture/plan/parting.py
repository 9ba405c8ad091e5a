"""How do the heads on a plan find room? Pushed apart until no two lie nearer than they may."""

import math
from collections.abc import Iterator

from corymb.picture.geometry import Point
from corymb.picture.plan.outlines import Ground

MOST_ROUNDS = 120
LESS = (1.0, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.0)  # tried one after another
ASKED = 1.03  # a little more room is asked for than must be had, so that it is had sooner
TOO_NEAR = 1e-9
FURTHER = 0.5  # of the largest radius: what lies further apart than that needn't be looked at yet

Pair = tuple[int, int, float, float]


def parted(
    ground: Ground, places: list[Point], radii: list[float], crowding: float, least: float = 0.0
) -> tuple[list[Point], float]:
    """Places within the ground, and how much of their radii together any two are apart.

    That is `crowding` where it can be had. Small heads keep `least` cm between their middles,
    in the same measure, so that each has room for its number.
    """
    at = [ground.kept(place, r) for place, r in zip(places, radii, strict=True)]
    for part in LESS:
        enough = crowding * part
        pairs = _Pairs(radii, least * part / enough if enough else 0.0, enough * ASKED)
        for _ in range(MOST_ROUNDS):
            if _push(at, pairs.near(at), enough) >= enough - TOO_NEAR:
                return at, enough
            at = [ground.kept(place, r) for place, r in zip(at, radii, strict=True)]
    return at, 0.0


class _Pairs:
    """Every two heads, and those of them that might touch while none has gone far.

    A pair is two numbers of heads, both radii together (`floor` at least) and the second's share.
    """

    def __init__(self, radii: list[float], floor: float, want: float) -> None:
        self.all: list[Pair] = [
            (i, j, max(mine + other, floor), other / (mine + other))
            for i, mine in enumerate(radii)
            for j, other in enumerate(radii[:i])
        ]
        self.want, self.further = want, FURTHER * max(radii, default=0.0)
        self.looked_at: list[Point] = []
        self.found: list[Pair] = []

    def near(self, at: list[Point]) -> list[Pair]:
        """Looked for again once two heads may have come nearer than they were looked for."""
        if not self.looked_at or any(
            here.distance(then) > self.further / 2
            for here, then in zip(at, self.looked_at, strict=True)
        ):
            self.looked_at, self.found = list(at), list(self._look(at))
        return self.found

    def _look(self, at: list[Point]) -> Iterator[Pair]:
        for pair in self.all:
            reach = self.want * pair[2] + self.further
            (x, y), (other_x, other_y) = at[pair[0]], at[pair[1]]
            if -reach <= x - other_x <= reach and -reach <= y - other_y <= reach:
                yield pair


def _push(at: list[Point], pairs: list[Pair], enough: float) -> float:
    """One round of pushing; gives how near two heads were before it, unmoved if near enough."""
    want, closest, moves = enough * ASKED, math.inf, [[0.0, 0.0] for _ in at]
    xs, ys = [point.x for point in at], [point.y for point in at]
    for i, j, both, share in pairs:
        reach, dx, dy = want * both, xs[i] - xs[j], ys[i] - ys[j]
        if not (-reach <= dx <= reach and -reach <= dy <= reach):
            continue
        apart = math.hypot(dx, dy)
        closest = min(closest, apart / both)
        lacking = reach - apart
        if lacking > 0:
            if apart < 1e-6:
                dx, dy, apart = math.cos(i), math.sin(i), 1.0
            for one, part in ((i, share), (j, share - 1)):
                moves[one][0] += dx / apart * lacking * part * 0.7
                moves[one][1] += dy / apart * lacking * part * 0.7
    if closest < enough - TOO_NEAR:
        for index, (dx, dy) in enumerate(moves):
            at[index] = Point(xs[index] + dx, ys[index] + dy)
    return closest
