"""Within which outline do the heads lie, seen from above? One class for each; x to the right, y
towards us, in cm, the middle of the hold at the origin.

`place` maps the heads' order, told as the part of their area that lies further in, to a place;
`kept` moves a head of radius `r` so that all of it lies within.
"""

import math
from dataclasses import dataclass
from typing import Protocol

from corymb.picture.geometry import Box, Point
from corymb.picture.paths import Outline, disc, polyline
from corymb.picture.plan.phyllotaxis import turned

HEART, FLAT = 0.44, 0.56  # of a fan's depth: where its middle lies, and how flat its spiral is


class Ground(Protocol):
    """The room an arrangement takes, seen from above."""

    @property
    def area_cm2(self) -> float: ...

    @property
    def box(self) -> Box: ...

    def place(self, index: int, part: float) -> Point: ...

    def kept(self, at: Point, r: float) -> Point: ...

    def lines(self) -> list[Outline]: ...


@dataclass(frozen=True)
class Round:
    """A hand-tie, a posy, a bowl: Vogel's spiral from the middle out."""

    half: float

    @property
    def area_cm2(self) -> float:
        return math.pi * self.half**2

    @property
    def box(self) -> Box:
        return Box(-self.half, -self.half, self.half, self.half)

    def place(self, index: int, part: float) -> Point:
        return turned(index, self.half * math.sqrt(part))

    def kept(self, at: Point, r: float) -> Point:
        return _drawn_in(at, Point(0, 0), self.half - r)

    def lines(self) -> list[Outline]:
        return [disc(0, 0, self.half)]


@dataclass(frozen=True)
class Long:
    """A trough: rows along it, both ends round."""

    half: float
    deep: float  # half of its depth
    rows: int

    @property
    def area_cm2(self) -> float:
        return 4 * (self.half - self.deep) * self.deep + math.pi * self.deep**2

    @property
    def box(self) -> Box:
        return Box(-self.half, -self.deep, self.half, self.deep)

    def place(self, index: int, part: float) -> Point:
        """Row by turns, and from the middle of the rows to both their ends by turns."""
        row, across = index % self.rows, (index // self.rows) % 2
        y = self.deep * (2 * (row + 0.5) / self.rows - 1)
        x = self.half * part * (1 if (across + row) % 2 else -1)
        return Point(x, y)

    def kept(self, at: Point, r: float) -> Point:
        straight = self.half - self.deep
        nearest = Point(max(-straight, min(straight, at.x)), 0)
        return _drawn_in(at, nearest, self.deep - r)

    def lines(self) -> list[Outline]:
        straight = self.half - self.deep
        right = [Point(straight, 0).towards(angle, self.deep) for angle in range(0, 181, 5)]
        left = [Point(-straight, 0).towards(angle, self.deep) for angle in range(180, 361, 5)]
        return [polyline([*right, *left], True)]


@dataclass(frozen=True)
class Wreath:
    """A crown, a wreath: all the way round a ring, the best heads at the front."""

    ring: float  # from the middle to the wire
    half: float  # how far the flowers reach to either side of it

    @property
    def area_cm2(self) -> float:
        return 4 * math.pi * self.ring * self.half

    @property
    def box(self) -> Box:
        out = self.ring + self.half
        return Box(-out, -out, out, out)

    def place(self, index: int, part: float) -> Point:
        """By turns to the left and the right of the front, and to both sides of the wire."""
        turn = math.radians(180 + 180 * part * (1 if index % 2 else -1))
        reach = self.ring + self.half * 0.4 * (1, -1, 0)[index % 3]
        return Point(reach * math.sin(turn), -reach * math.cos(turn))

    def kept(self, at: Point, r: float) -> Point:
        out = math.hypot(at.x, at.y) or 1e-9
        room = max(0.0, self.half - r)
        reach = max(self.ring - room, min(self.ring + room, out))
        return Point(at.x * reach / out, at.y * reach / out)

    def lines(self) -> list[Outline]:
        return [disc(0, 0, self.ring + self.half), disc(0, 0, max(0.1, self.ring - self.half))]


@dataclass(frozen=True)
class Fan:
    """A standing piece: half a round with its straight side to the wall."""

    half: float

    @property
    def area_cm2(self) -> float:
        return math.pi / 2 * self.half**2

    @property
    def box(self) -> Box:
        return Box(-self.half, 0, self.half, self.half)

    def place(self, index: int, part: float) -> Point:
        """Vogel's spiral drawn flat, about a heart that stands well before the wall."""
        x, y = turned(index, self.half * math.sqrt(part))
        return Point(x, self.half * HEART + FLAT * y)

    def kept(self, at: Point, r: float) -> Point:
        """Off the wall first, then in along the arc, no nearer to the wall than before."""
        y = max(r, min(self.half - r, at.y))
        room = math.sqrt(max(0.0, (self.half - r) ** 2 - y**2))
        return Point(max(-room, min(room, at.x)), y)

    def lines(self) -> list[Outline]:
        return [
            polyline([Point(0, 0).towards(angle, self.half) for angle in range(90, 271, 5)], True)
        ]


def _drawn_in(at: Point, middle: Point, room: float) -> Point:
    """The point no further from the middle than `room`."""
    apart = at.distance(middle)
    if apart <= room:
        return at
    return middle.between(at, max(0.0, room) / apart)
