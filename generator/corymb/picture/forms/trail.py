"""Ivy, jasmine, clematis, love-lies-bleeding: what arches out and falls."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, strip, varied
from corymb.picture.geometry import Point
from corymb.picture.seed import give
from corymb.picture.shapes import leaf, rib


def draw(head: Head) -> Drawn:
    """It leaves the stem to the right and hangs its length down; leaves grow smaller with it."""
    sheet, rng = Sheet(), head.rng
    length, r = head.length, head.radius
    swing = rng.choice((-1, 1)) * 0.035
    axis = [_fall(t / 8, length, swing) for t in range(9)]
    sheet.line(strip(axis), varied(head.green, rng), max(1.2, r * 0.09))
    count = min(26, max(8, round(length / (r * 0.42))))
    for index in range(count):
        t = 0.04 + 0.94 * index / (count - 1)
        foot, further = _fall(t, length, swing), _fall(t + 0.02, length, swing)
        side = -1 if index % 2 else 1
        size = r * 1.02 * (1 - 0.5 * t) * (1 + give(rng, 0.1))
        angle = foot.angle_to(further) + side * (58 + give(rng, 10))
        colour = shade(head.palette.pick(index), give(rng, 0.03))
        broad = size * 0.58
        sheet.layer([leaf(size, broad, side * 0.1).at(foot.x, foot.y, angle)], colour, size * 0.05)
        sheet.cut(
            [rib(size, broad * 0.1, side * 0.1).at(foot.x, foot.y, angle)],
            shade(colour, -0.07),
            True,
        )
    return sheet.finished()


def _fall(t: float, length: float, swing: float) -> Point:
    """Out and over, then down: most of the length hangs."""
    out = length * (0.3 * t**0.5 - 0.05 * t + swing * math.sin(5.5 * t))
    down = length * (0.9 * t**1.35 - 0.16 * t**0.6 * (1 - t))
    return Point(out, down)
