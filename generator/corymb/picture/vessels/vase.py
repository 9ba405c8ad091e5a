"""A vase: a shoulder, a neck and a mouth."""

from corymb.picture.vessels import thrown
from corymb.picture.vessels.base import Body, Halves

USUAL = "#8c9a92"
PROFILE = [(0.62, 0.0), (0.8, 0.2), (1.0, 0.52), (0.86, 0.78), (0.6, 0.9), (0.66, 1.0)]


def draw(body: Body) -> Halves:
    return thrown.draw(body, PROFILE)
