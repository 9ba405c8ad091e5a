"""A trough: long, low and straight, for the middle of a table."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import polyline
from corymb.picture.vessels.base import Body, Halves, piece

USUAL = "#9a9284"
DEPTH = 0.12  # how much of its inside we see, as a part of its height


def draw(body: Body) -> Halves:
    half, high = body.half, body.high
    foot, deep = half * 0.94, high * DEPTH
    inside = polyline(
        [
            Point(-half, -high),
            Point(-half * 0.97, -high - deep),
            Point(half * 0.97, -high - deep),
            Point(half, -high),
        ],
        True,
    )
    front = polyline(
        [Point(-half, -high), Point(half, -high), Point(foot, 0), Point(-foot, 0)], True
    )
    side = polyline(
        [Point(half * 0.985, -high), Point(half, -high), Point(foot, 0), Point(foot * 0.97, 0)],
        True,
    )
    lip = polyline(
        [
            Point(-half * 1.012, -high * 1.03),
            Point(half * 1.012, -high * 1.03),
            Point(half * 1.012, -high * 0.9),
            Point(-half * 1.012, -high * 0.9),
        ],
        True,
    )
    under = polyline(
        [
            Point(-half, -high * 0.9),
            Point(half, -high * 0.9),
            Point(half, -high * 0.85),
            Point(-half, -high * 0.85),
        ],
        True,
    )
    before = [
        piece(front, body.colour),
        piece(side, shade(body.colour, -0.09)),
        piece(under, shade(body.colour, -0.1)),
        piece(lip, shade(body.colour, 0.035)),
    ]
    return Halves(piece(inside, shade(body.colour, -0.18)), "".join(before))
