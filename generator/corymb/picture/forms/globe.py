"""Allium, globe thistle, drumstick: a ball of small stars, larger towards the middle."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, dealt, eyed
from corymb.picture.geometry import Point
from corymb.picture.paths import disc
from corymb.picture.seed import give
from corymb.picture.shapes import GOLDEN_ANGLE, floret

POLES = (35.0, 80.0, 5.0)  # how far the ball's crown is turned away from us in each view, degrees
BANDS = ((0.0, 0.42), (0.42, 0.76), (0.76, 2.0))  # by how much a star looks at us: the rim first


def draw(head: Head) -> Drawn:
    """Stars on a darker ball; those turned away from us are cut smaller and lie lower."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    sheet.cut([disc(0, 0, r * 0.93)], shade(head.palette.main, -0.1))
    count = min(72, max(40, round(38 + head.across_cm * 3)))
    ball = _ball(2 * count, POLES[head.view % len(POLES)] + give(rng, 6))
    colours = dealt(eyed(head.palette), len(ball), rng)
    share = head.palette.heart_share
    for near, far in BANDS:
        stars: dict[tuple[str, int], list[Point]] = {}
        for index, (x, y, facing) in enumerate(ball):
            if near <= facing < far:
                high = 1 if y < -0.2 else 0
                stars.setdefault((colours[index], high), []).append(Point(x * r, y * r))
        size = r * (0.125 + 0.08 * (near + min(1.0, far)) / 2) * math.sqrt(56 / count)
        for (colour, high), places in sorted(stars.items()):
            paper = shade(colour, 0.1 * (near - 0.45) + 0.03 * high)
            cut = floret(size, 5, 36 * near + 20 * high)
            sheet.stamped(cut, places, paper, r * 0.022, inside=near > 0.5)
            eye = size * 2 * max(0.16, min(0.5, share**0.5 * 0.75))
            sheet.dots(places, eye, head.palette.heart if share else shade(paper, -0.07), True)
    return sheet.finished()


def _ball(count: int, pole: float) -> list[tuple[float, float, float]]:
    """So many stars evenly over a ball of radius 1, of which those on our side: x, y, how near.

    Vogel's spiral laid round the ball, ring by ring of the same height.
    """
    turn, found = math.radians(pole), []
    for n in range(count):
        up = 1 - (2 * n + 1) / count
        ring, angle = math.sqrt(1 - up * up), n * GOLDEN_ANGLE
        x, z = ring * math.cos(angle), ring * math.sin(angle)
        y = -up * math.sin(turn) + z * math.cos(turn)
        near = up * math.cos(turn) + z * math.sin(turn)
        if near > 0.02:
            found.append((x * 0.9, y * 0.9, near))
    return found
