"""A trough: long, low and straight, for the middle of a table."""

from corymb.picture.colour import shade
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, polyline
from corymb.picture.vessels.base import Body, Halves, piece

USUAL = "#9a9284"
DEPTH = 0.12  # how much of its inside we see, as a part of its height


def draw(body: Body) -> Halves:
    half, high = body.half, body.high
    foot, deep = half * 0.94, high * DEPTH
    inside = _board((half, -high), (half * 0.97, -high - deep))
    front = _board((half, -high), (foot, 0))
    side = polyline(
        [Point(half * 0.985, -high), Point(half, -high), Point(foot, 0), Point(foot * 0.97, 0)],
        True,
    )
    lip = _board((half * 1.012, -high * 1.03), (half * 1.012, -high * 0.9))
    under = _board((half, -high * 0.9), (half, -high * 0.85))
    before = [
        piece(front, body.colour),
        piece(side, shade(body.colour, -0.09)),
        piece(under, shade(body.colour, -0.1)),
        piece(lip, shade(body.colour, 0.035)),
    ]
    return Halves(piece(inside, shade(body.colour, -0.18)), "".join(before))


def _board(one: tuple[float, float], other: tuple[float, float]) -> Outline:
    """Four corners, alike to the left and right: the two given, and their mirror images."""
    (a, y), (b, z) = one, other
    return polyline([Point(-a, y), Point(a, y), Point(b, z), Point(-b, z)], True)
