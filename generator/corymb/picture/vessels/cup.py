"""A cup, mug or tin: what small posies stand in when it is not a glass jar."""

from corymb.picture.vessels import thrown
from corymb.picture.vessels.base import Body, Halves

USUAL = "#a39480"
PROFILE = [(0.74, 0.0), (0.84, 0.06), (0.94, 0.4), (0.98, 0.8), (1.0, 1.0)]


def draw(body: Body) -> Halves:
    return thrown.draw(body, PROFILE)
