"""Which pieces does a flower come down to? Petals, leaves and florets, each pointing up.

Every shape starts at the origin, where it is fixed, and grows upwards.
"""

import math

from corymb.picture.geometry import Point
from corymb.picture.paths import Cut, Outline


def _both_sides(left: list[Cut]) -> Outline:
    """Mirror the left edge, so that a petal needs to be told once."""
    start = Point(0, 0)
    ends = [start, *(cut[-1] for cut in left)]
    right: list[Cut] = []
    for before, (one, two, _) in zip(reversed(ends[:-1]), reversed(left), strict=True):
        right.append((Point(-two.x, two.y), Point(-one.x, one.y), Point(-before.x, before.y)))
    return Outline(start, (*left, *right))


def petal(
    length: float, width: float, shoulder: float = 0.68, point: float = 0.0, notch: float = 0.0
) -> Outline:
    """A petal, widest at `shoulder` of its length.

    `point` draws the tip out (0 round, 1 sharp); `notch` cuts it in (as part of the length).
    """
    half, high = width / 2, length * shoulder
    rise = length - high
    foot: Cut = (Point(-half * 0.35, -high * 0.2), Point(-half, -high * 0.55), Point(-half, -high))
    tip: Cut = (
        Point(-half, -high - rise * (0.62 - 0.3 * point)),
        Point(-half * 0.55 * (1 - point), -length),
        Point(0, -length * (1 - notch)),
    )
    return _both_sides([foot, tip])


def round_petal(length: float, width: float, notch: float = 0.0) -> Outline:
    """A petal in two cuts only, for heads with many: broad and round, hardly notched."""
    side: Cut = (
        Point(-width * 0.72, -length * 0.32),
        Point(-width * 0.66, -length * 1.03),
        Point(0, -length * (1 - notch)),
    )
    return _both_sides([side])


def lens(length: float, width: float, belly: float = 0.45) -> Outline:
    """A plain leaf or narrow petal: two cuts, widest near `belly`."""
    half = width * 0.67
    side: Cut = (
        Point(-half, -length * belly * 0.55),
        Point(-half * 0.9, -length * (belly + 0.3)),
        Point(0, -length),
    )
    return _both_sides([side])


def leaf(length: float, width: float, bend: float = 0.0) -> Outline:
    """A leaf with a drawn-out tip, leaning by `bend` (part of its length) to the right."""
    half, lean = width / 2, bend * length
    left: Cut = (
        Point(-half * 1.15, -length * 0.16),
        Point(-half * 1.05 + lean * 0.3, -length * 0.7),
        Point(lean, -length),
    )
    right: Cut = (
        Point(half * 1.05 + lean * 0.5, -length * 0.66),
        Point(half * 1.15, -length * 0.12),
        Point(0, 0),
    )
    return Outline(Point(0, 0), (left, right))


def rib(length: float, width: float, bend: float = 0.0) -> Outline:
    """The slit a knife leaves along a leaf's middle."""
    tip = Point(bend * length * 0.8, -length * 0.84)
    return Outline(
        Point(0, -length * 0.06),
        (
            (Point(-width / 2, -length * 0.3), Point(-width / 2 + tip.x * 0.5, -length * 0.6), tip),
            (
                Point(width / 2 + tip.x * 0.5, -length * 0.6),
                Point(width / 2, -length * 0.3),
                Point(0, -length * 0.06),
            ),
        ),
    )


def floret(radius: float, lobes: int = 5, turn: float = 0.0, spread: float = 0.0) -> Outline:
    """A small flower of one cut, seen from the front: each lobe one loop from the middle.

    `spread` is how far the loop's handles lean to either side, in degrees; open by itself.
    """
    spread = spread or 175 / lobes
    handle = radius / (0.75 * math.cos(math.radians(spread)))
    middle = Point(0, 0)
    cuts: list[Cut] = []
    for lobe in range(lobes):
        angle = turn + lobe * 360 / lobes
        cuts.append(
            (middle.towards(angle - spread, handle), middle.towards(angle + spread, handle), middle)
        )
    return Outline(middle, tuple(cuts))


def teardrop(length: float, width: float) -> Outline:
    """A bud: round below, drawn to a point above."""
    half = width / 2 * 1.28
    side: Cut = (Point(-half, 0), Point(-half * 0.85, -length * 0.6), Point(0, -length))
    return _both_sides([side])


def spiral(count: int, radius: float, squash: float = 1.0) -> list[Point]:
    """Points spread evenly over a disc, as florets are in a flower head.

    H. Vogel, "A better way to construct the sunflower head", Mathematical Biosciences 44 (1979):
    the n-th point lies at the n-th multiple of the golden angle and at a radius of sqrt(n).
    """
    found = []
    for n in range(count):
        reach = radius * math.sqrt((n + 0.5) / count)
        turn = n * GOLDEN_ANGLE
        found.append(Point(reach * math.cos(turn), reach * math.sin(turn) * squash))
    return found


def filling(count: int, reach: float, squash: float = 1.0) -> list[Point]:
    """A spiral of few points, widened so that the outermost reach `reach` on both sides."""
    points = spiral(count, 1.0, squash)
    left, right = min(point.x for point in points), max(point.x for point in points)
    middle, half = (left + right) / 2, max((right - left) / 2, 0.1)
    return [Point((x - middle) / half * reach, y * reach) for x, y in points]


GOLDEN_ANGLE = math.pi * (3 - math.sqrt(5))  # 137.508 degrees, in radians
GOLDEN_DEGREES = math.degrees(GOLDEN_ANGLE)
