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
        enough = crowding * part
        pairs = _pairs(radii, least * part / enough if enough else 0.0)
        for _ in range(MOST_ROUNDS):
            if _push(at, pairs, enough) >= enough - TOO_NEAR:
                return at, enough
            at = [ground.kept(place, r) for place, r in zip(at, radii, strict=True)]
    return at, 0.0


def _pairs(radii: list[float], floor: float) -> list[list[tuple[float, float]]]:
    """For each head and each before it: both radii together, and the other's share of them."""
    return [
        [(max(mine + other, floor), other / (mine + other)) for other in radii[:i]]
        for i, mine in enumerate(radii)
    ]


def _push(at: list[Point], pairs: list[list[tuple[float, float]]], enough: float) -> float:
    """One round of pushing; gives how near two heads were before it, unmoved if near enough."""
    want, closest, moves = enough * ASKED, math.inf, [[0.0, 0.0] for _ in at]
    xs, ys = [point.x for point in at], [point.y for point in at]
    for i, others in enumerate(pairs):
        x, y = xs[i], ys[i]
        for j, (both, share) in enumerate(others):
            reach, dx, dy = want * both, x - xs[j], y - ys[j]
            if not (-reach <= dx <= reach and -reach <= dy <= reach):
                continue
            apart = math.hypot(dx, dy)
            closest = min(closest, apart / both)
            lacking = reach - apart
            if lacking > 0:
                if apart < 1e-6:
                    dx, dy, apart = math.cos(i), math.sin(i), 1.0
                for one, part in ((i, share), (j, share - 1)):
                    moves[one][0] += dx / apart * lacking * part * 0.7
                    moves[one][1] += dy / apart * lacking * part * 0.7
    if closest < enough - TOO_NEAR:
        for index, (dx, dy) in enumerate(moves):
            at[index] = Point(xs[index] + dx, ys[index] + dy)
    return closest
