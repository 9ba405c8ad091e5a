"""A bowl: wide and low, on a small foot."""

from corymb.picture.vessels import thrown
from corymb.picture.vessels.base import Body, Halves

USUAL = "#a99a86"
PROFILE = [(0.42, 0.0), (0.46, 0.07), (0.78, 0.32), (0.97, 0.72), (1.0, 1.0)]


def draw(body: Body) -> Halves:
    return thrown.draw(body, PROFILE)
