"""Where is a thing, how far does it reach, and how is it turned? Points, boxes and matrices.

As on the paper: x grows to the right, y grows downwards; angles are degrees from straight up,
growing clockwise.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from corymb.picture.svg import fine, number


class Point(NamedTuple):
    x: float
    y: float

    def towards(self, angle: float, distance: float) -> "Point":
        """The point `distance` away in the direction `angle` (degrees from straight up)."""
        turn = math.radians(angle)
        return Point(self.x + math.sin(turn) * distance, self.y - math.cos(turn) * distance)

    def between(self, other: "Point", part: float) -> "Point":
        return Point(self.x + (other.x - self.x) * part, self.y + (other.y - self.y) * part)

    def distance(self, other: "Point") -> float:
        return math.hypot(other.x - self.x, other.y - self.y)

    def angle_to(self, other: "Point") -> float:
        """Degrees from straight up to the other point, -180 to 180."""
        return math.degrees(math.atan2(other.x - self.x, self.y - other.y))


class Box(NamedTuple):
    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        return self.right - self.left

    @property
    def height(self) -> float:
        return self.bottom - self.top

    @classmethod
    def around(cls, points: Iterable[Point]) -> "Box":
        xs, ys = zip(*points, strict=True)
        return cls(min(xs), min(ys), max(xs), max(ys))

    def joined(self, other: "Box") -> "Box":
        return Box(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
        )


@dataclass(frozen=True)
class Matrix:
    """An affine turn of the paper, in SVG's own order of the six numbers."""

    a: float = 1.0
    b: float = 0.0
    c: float = 0.0
    d: float = 1.0
    e: float = 0.0
    f: float = 0.0

    def then(self, inner: "Matrix") -> "Matrix":
        """This matrix with `inner` applied first, as nested groups are in SVG."""
        return Matrix(
            self.a * inner.a + self.c * inner.b,
            self.b * inner.a + self.d * inner.b,
            self.a * inner.c + self.c * inner.d,
            self.b * inner.c + self.d * inner.d,
            self.a * inner.e + self.c * inner.f + self.e,
            self.b * inner.e + self.d * inner.f + self.f,
        )

    def of(self, point: Point) -> Point:
        x, y = point
        return Point(self.a * x + self.c * y + self.e, self.b * x + self.d * y + self.f)

    def written(self) -> str:
        parts = [fine(part) for part in (self.a, self.b, self.c, self.d)]
        return f"matrix({' '.join(parts)} {number(self.e)} {number(self.f)})"


def moved(x: float, y: float) -> Matrix:
    return Matrix(e=x, f=y)


def turned(angle: float) -> Matrix:
    """Clockwise by `angle` degrees."""
    turn = math.radians(angle)
    return Matrix(math.cos(turn), math.sin(turn), -math.sin(turn), math.cos(turn))


def sized(x: float, y: float) -> Matrix:
    return Matrix(a=x, d=y)
