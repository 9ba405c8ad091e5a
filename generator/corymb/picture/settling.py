"""How do heads find room for one another? They settle, as they do when a bunch is shaken out."""

import math
from dataclasses import dataclass

from corymb.picture.arrangement import PictureStem
from corymb.picture.dome import Dome
from corymb.picture.geometry import Point
from corymb.picture.layout import Band

ROUNDS = 26  # of pushing apart; more change nothing one can see
CLOSEST, WIDEST = 0.5, 1.08  # how near two heads may come, as a part of their radii together


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
    for _ in range(ROUNDS):
        for i, one in enumerate(spots):
            for other in spots[:i]:
                _push(one, other, close)
        for spot in spots:
            part, angle = dome.within(spot.at)
            kept = min(spot.outer, max(spot.inner, part))
            if kept != part:
                spot.at = spot.at.between(dome.at(kept, angle), 0.7)


def _push(one: Spot, other: Spot, close: float) -> None:
    dx, dy = one.at.x - other.at.x, one.at.y - other.at.y
    apart, want = math.hypot(dx, dy) or 0.01, close * (one.radius + other.radius)
    if apart >= want:
        return
    push = (want - apart) / apart * 0.4
    share = other.radius / (one.radius + other.radius)
    one.at = Point(one.at.x + dx * push * share, one.at.y + dy * push * share)
    other.at = Point(other.at.x - dx * push * (1 - share), other.at.y - dy * push * (1 - share))
