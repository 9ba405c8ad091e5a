"""A glass jar: stems and water show through it."""

from corymb.picture.colour import mix, shade
from corymb.picture.geometry import Point
from corymb.picture.paths import disc, smooth
from corymb.picture.vessels.base import Body, Halves, piece, profile

USUAL = "#c3d2cc"
PROFILE = [(0.9, 0.0), (0.98, 0.05), (1.0, 0.2), (1.0, 0.7), (0.95, 0.8), (0.8, 0.87), (0.8, 1.0)]
WATER = 0.66  # filled to two thirds


def draw(body: Body) -> Halves:
    """Glass is a pale sheet behind the stems and a thinner one before them, with a white edge."""
    half, high = body.half, body.high
    points = [(part * half, up * high) for part, up in PROFILE]
    mouth = points[-1][0]
    rim = mouth * 0.12
    glass = profile(points, rim)
    water = profile(
        [(part * 0.94, up) for part, up in points[:3]] + [(half * 0.94, high * WATER)], -rim * 0.75
    )
    surface = disc(0, -high * WATER, half * 0.94, rim)
    behind = [
        piece(glass, mix(body.ground, body.colour, 0.75)),
        piece(water, mix(body.ground, shade(body.colour, -0.07), 0.8)),
        piece(surface, shade(body.colour, 0.03)),
        piece(disc(0, -high, mouth, rim), mix(body.ground, shade(body.colour, -0.1), 0.8)),
    ]
    edge = [
        Point(-half * 0.86, -high * 0.68),
        Point(-half * 0.88, -high * 0.4),
        Point(-half * 0.82, -high * 0.1),
        Point(-half * 0.74, -high * 0.1),
        Point(-half * 0.8, -high * 0.4),
        Point(-half * 0.79, -high * 0.67),
    ]
    ring = profile([(mouth * 1.04, high * 0.945), (mouth * 1.04, high)], rim)
    before = [
        piece(glass, body.colour, 0.22),
        piece(water, shade(body.colour, -0.1), 0.25),
        piece(smooth(edge, closed=True, ease=1 / 9), "#ffffff", 0.5),
        piece(ring, shade(body.colour, -0.03), 0.75),
    ]
    return Halves("".join(behind), "".join(before))
