"""An urn: a cup on a stem and a square foot."""

from corymb.picture.vessels import thrown
from corymb.picture.vessels.base import Body, Halves

USUAL = "#b1a898"
PROFILE = [
    (0.5, 0.0),
    (0.48, 0.08),
    (0.2, 0.16),
    (0.16, 0.26),
    (0.3, 0.34),
    (0.74, 0.5),
    (0.8, 0.74),
    (0.76, 0.88),
    (1.0, 1.0),
]


def draw(body: Body) -> Halves:
    return thrown.draw(body, PROFILE)
