"""How do the heads on a plan find room? Pushed apart until no two lie nearer than they may."""

import math

from corymb.picture.geometry import Point
from corymb.picture.plan.outlines import Ground

MOST_ROUNDS = 120
LESS = (1.0, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.0)  # tried one after another
ASKED = 1.03  # a little more room is asked for than must be had, so that it is had sooner
TOO_NEAR = 1e-9


def parted(
    ground: Ground, places: list[Point], radii: list[float], crowding: float, least: float = 0.0
) -> tuple[list[Point], float]:
    """Places within the ground, and how much of their radii together any two are apart.

    That is `crowding` where it can be had. Small heads keep `least` cm between their middles,
    in the same measure, so that each has room for its number.
    """
    at = [ground.kept(place, r) for place, r in zip(places, radii, strict=True)]
    for part in LESS:
        for _ in range(MOST_ROUNDS):
            if _push(at, radii, crowding * part, least * part) >= crowding * part - TOO_NEAR:
                return at, crowding * part
            at = [ground.kept(place, r) for place, r in zip(at, radii, strict=True)]
    return at, 0.0


def _push(at: list[Point], radii: list[float], enough: float, least: float) -> float:
    """One round of pushing; gives how near two heads were before it, unmoved if near enough."""
    floor = least / enough if enough else 0.0
    want, closest, moves = enough * ASKED, math.inf, [[0.0, 0.0] for _ in at]
    for i, (x, y) in enumerate(at):
        for j in range(i):
            dx, dy = x - at[j].x, y - at[j].y
            both = max(radii[i] + radii[j], floor)
            if abs(dx) > want * both or abs(dy) > want * both:
                continue
            apart = math.hypot(dx, dy)
            closest = min(closest, apart / both)
            lacking = want * both - apart
            if lacking > 0:
                if apart < 1e-6:
                    dx, dy, apart = math.cos(i), math.sin(i), 1.0
                share = radii[j] / (radii[i] + radii[j])
                for one, part in ((i, share), (j, share - 1)):
                    moves[one][0] += dx / apart * lacking * part * 0.7
                    moves[one][1] += dy / apart * lacking * part * 0.7
    if closest < enough - TOO_NEAR:
        for index, (dx, dy) in enumerate(moves):
            at[index] = Point(at[index].x + dx, at[index].y + dy)
    return closest
