"""How is a piece of paper cut out? Outlines of straight and curved cuts, written as SVG paths."""

import math
from collections.abc import Iterator
from dataclasses import dataclass

from corymb.picture.geometry import Box, Matrix, Point, moved, turned
from corymb.picture.svg import tenths

Cut = tuple[Point, ...]  # one point: a straight cut; three: a curve with its two handles


@dataclass(frozen=True)
class Outline:
    """One line of the knife: where it starts, its cuts, and whether it comes back."""

    start: Point
    cuts: tuple[Cut, ...]
    closed: bool = True

    def through(self, matrix: Matrix) -> "Outline":
        cuts = tuple(tuple(matrix.of(point) for point in cut) for cut in self.cuts)
        return Outline(matrix.of(self.start), cuts, self.closed)

    def at(self, x: float, y: float, angle: float = 0.0) -> "Outline":
        """Turned about its own origin by `angle`, then moved."""
        return self.through(moved(x, y).then(turned(angle)))

    def points(self) -> Iterator[Point]:
        """Points along the cuts (not the handles, which lie outside the paper)."""
        here = self.start
        yield here
        for cut in self.cuts:
            yield from (_along(here, cut, step / 4) for step in range(1, 5))
            here = cut[-1]

    def written(self) -> str:
        """The path, in steps from point to point; rounding never adds up along the way.

        Counted in whole tenths, since so are the numbers written.
        """
        x, y = round(self.start.x * 10), round(self.start.y * 10)
        text = f"M{_packed([x, y])}"
        for cut in self.cuts:
            steps = []
            for point in cut:
                steps += [round(point.x * 10 - x), round(point.y * 10 - y)]
            text += ("c" if len(cut) == 3 else "l") + _packed(steps)
            x, y = x + steps[-2], y + steps[-1]
        return text + ("z" if self.closed else "")


def _along(here: Point, cut: Cut, t: float) -> Point:
    if len(cut) == 1:
        return here.between(cut[0], t)
    one, two, end = cut
    s = 1 - t
    p, q, r, u = s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t
    return Point(
        p * here.x + q * one.x + r * two.x + u * end.x,
        p * here.y + q * one.y + r * two.y + u * end.y,
    )


def _packed(steps: list[int]) -> str:
    """Numbers set as close as SVG allows: a minus sign parts them as well as a space."""
    text = tenths(steps[0])
    for step in steps[1:]:
        text += tenths(step) if step < 0 else f" {tenths(step)}"
    return text


def written(outlines: list[Outline]) -> str:
    return "".join(outline.written() for outline in outlines)


def box_of(outlines: list[Outline]) -> Box:
    return Box.around(point for outline in outlines for point in outline.points())


def polyline(points: list[Point], closed: bool = False) -> Outline:
    return Outline(points[0], tuple((point,) for point in points[1:]), closed)


def smooth(points: list[Point], closed: bool = False, ease: float = 1 / 6) -> Outline:
    """A flowing cut through all the points (Catmull and Rom, 1974, written as Bezier curves)."""
    last = len(points) - 1
    ring = [points[-1], *points, *points[:2]] if closed else [points[0], *points, points[-1]]
    cuts: list[Cut] = []
    for i in range(len(points) if closed else last):
        before, here, there, after = ring[i : i + 4]
        cuts.append(
            (
                Point(here.x + (there.x - before.x) * ease, here.y + (there.y - before.y) * ease),
                Point(there.x - (after.x - here.x) * ease, there.y - (after.y - here.y) * ease),
                there,
            )
        )
    return Outline(points[0], tuple(cuts), closed)


def bow(start: Point, first: Point, second: Point, end: Point) -> Outline:
    """One open curve, as a stem takes it."""
    return Outline(start, ((first, second, end),), closed=False)


def disc(x: float, y: float, rx: float, ry: float | None = None) -> Outline:
    """A circle or an ellipse, in four curves."""
    ry = rx if ry is None else ry
    k = 4 / 3 * (math.sqrt(2) - 1)  # the handle length that makes four curves round
    ring = []
    for a, b in ((1, 0), (0, 1), (-1, 0), (0, -1)):
        ring += [Point(x + rx * (a + k * s * b), y + ry * (b - k * s * a)) for s in (1, 0, -1)]
    # The points run handle, corner, handle; a cut runs handle, handle, corner.
    ends = [*ring[1:], ring[0], ring[1]]
    cuts = tuple((ends[n + 1], ends[n + 2], ends[n + 3]) for n in range(0, 12, 3))
    return Outline(ring[1], cuts)
