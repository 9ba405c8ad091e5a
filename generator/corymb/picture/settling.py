"""How do heads find room for one another? They settle, as they do when a bunch is shaken out."""

import math
from dataclasses import dataclass

from corymb.picture.arrangement import PictureStem
from corymb.picture.dome import Dome
from corymb.picture.geometry import Point
from corymb.picture.layout import Band

ROUNDS = 26  # of pushing apart; more change nothing one can see
CLOSEST, WIDEST = 0.5, 1.08  # how near two heads may come, as a part of their radii together

Pair = tuple[int, int, float, float]


@dataclass
class Spot:
    """A stem's top while it is looking for its place."""

    stem: PictureStem
    at: Point
    radius: float
    band: Band
    inner: float = 0.0  # it keeps between these parts of the dome
    outer: float = 1.0


def settle(dome: Dome, spots: list[Spot]) -> None:
    """Push heads apart until they share the dome; the smaller of two gives way more.

    The fuller the dome, the more they may overlap.
    """
    covered = sum(math.pi * spot.radius**2 for spot in spots)
    if not covered:
        return
    close = min(WIDEST, max(CLOSEST, 0.88 * math.sqrt(dome.area_cm2 / covered)))
    xs, ys = [spot.at.x for spot in spots], [spot.at.y for spot in spots]
    pairs = _pairs(spots, close)
    for _ in range(ROUNDS):
        _push(xs, ys, pairs)
        for n, spot in enumerate(spots):
            at = Point(xs[n], ys[n])
            part, angle = dome.within(at)
            kept = min(spot.outer, max(spot.inner, part))
            if kept != part:
                xs[n], ys[n] = at.between(dome.at(kept, angle), 0.7)
    for spot, x, y in zip(spots, xs, ys, strict=True):
        spot.at = Point(x, y)


def _pairs(spots: list[Spot], close: float) -> list[Pair]:
    """Every two heads, how far apart they want to be, and how much of a push the first takes."""
    return [
        (i, j, close * (one.radius + other.radius), other.radius / (one.radius + other.radius))
        for i, one in enumerate(spots)
        for j, other in enumerate(spots[:i])
    ]


def _push(xs: list[float], ys: list[float], pairs: list[Pair]) -> None:
    """Once round all pairs; asked of thousands, so written out."""
    for i, j, want, share in pairs:
        dx, dy = xs[i] - xs[j], ys[i] - ys[j]
        squared = dx * dx + dy * dy
        if squared >= want * want:
            continue
        apart = math.sqrt(squared) or 0.01
        push = (want - apart) / apart * 0.4
        xs[i] += dx * push * share
        ys[i] += dy * push * share
        xs[j] -= dx * push * (1 - share)
        ys[j] -= dy * push * (1 - share)
