"""How does each stem run? From its head into the tie or the vessel, and on to its cut end.

No head floats: a stalk is made for every head, and it ends exactly where the head begins.
"""

import math
from random import Random

from corymb.picture.arrangement import PictureStem, colour_hex
from corymb.picture.colour import shade
from corymb.picture.dome import Dome, Hold
from corymb.picture.geometry import Point, sized
from corymb.picture.layout import Bloom, Stalk
from corymb.picture.paths import Cut, Outline, disc
from corymb.picture.seed import give
from corymb.picture.svg import element, number

THINNEST_CM, THICKEST_CM = 0.16, 0.55
TWIG = 0.6  # as thick as its stem


def width_cm(stem: PictureStem) -> float:
    """A heavier head stands on a thicker stem (house rule, from memory)."""
    return min(THICKEST_CM, max(THINNEST_CM, 0.12 + 0.032 * stem.head_cm))


def run(dome: Dome, blooms: list[Bloom], rng: Random) -> list[Stalk]:
    """A stalk for every head."""
    return [_stalk(dome, bloom, rng) for bloom in blooms]


def _stalk(dome: Dome, bloom: Bloom, rng: Random) -> Stalk:
    hold = dome.hold
    if bloom.fork is not None:
        return _twig(bloom, bloom.fork)
    held = hold.passed_by(bloom.at, dome.half_cm)
    return Stalk(
        bloom.at,
        bloom.lean,
        held,
        _end(hold, held, bloom, rng),
        width_cm(bloom.stem),
        bloom.stem.green,
        bloom.band,
    )


def _twig(bloom: Bloom, fork: Point) -> Stalk:
    """A thin stalk from a head to another stalk."""
    thin = width_cm(bloom.stem) * TWIG
    return Stalk(bloom.at, bloom.lean, fork, None, thin, bloom.stem.green, bloom.band)


def _end(hold: Hold, held: Point, bloom: Bloom, rng: Random) -> Point:
    """Beyond the hold a stem goes on to the other side, as in a spiral; ends stand level."""
    tail = hold.end_y - held.y
    lean = max(-75.0, min(75.0, held.angle_to(bloom.at))) * hold.crossing
    x = held.x - math.tan(math.radians(lean)) * tail + give(rng, hold.end_half_cm * 0.12)
    x = max(hold.at.x - hold.end_half_cm, min(hold.at.x + hold.end_half_cm, x))
    return Point(x, hold.end_y - abs(give(rng, tail * 0.07)))


def course(stalk: Stalk) -> Outline:
    """The line the knife follows: up from the cut end, through the hold, bending to the head."""
    held, head = stalk.held, stalk.head
    far = held.distance(head)
    leaving = held.angle_to(head)
    if stalk.end is not None:
        leaving = leaving * 0.55 + stalk.end.angle_to(held) * 0.25
    up: Cut = (held.towards(leaving, far * 0.4), head.towards(stalk.lean, -far * 0.3), head)
    if stalk.end is None:
        return Outline(held, (up,), closed=False)
    below = stalk.end.distance(held)
    through: Cut = (
        stalk.end.towards(stalk.end.angle_to(held), below * 0.4),
        held.towards(leaving, -below * 0.35),
        held,
    )
    return Outline(stalk.end, (through, up), closed=False)


def stalk_sheets(stalks: list[Stalk], cm: float) -> str:
    """Stalks as strips: the outermost first, each a slightly different green, with a cut end."""
    parts = []
    for index, stalk in enumerate(sorted(stalks, key=lambda stalk: -abs(stalk.head.x))):
        line = course(stalk).through(sized(cm, cm))
        green = shade(colour_hex(stalk.green), (-0.06, -0.02, -0.04, 0.01)[index % 4])
        wide = stalk.width_cm * cm
        path, aside = line.written(), wide * 0.22
        edge = f"translate({number(aside)} {number(aside * 0.5)})"
        parts.append(_strip(path, shade(green, -0.09), wide, transform=edge))
        parts.append(_strip(path, green, wide))
        if stalk.end is not None:
            x, y = stalk.end.x * cm, stalk.end.y * cm
            cut = disc(x, y, wide * 0.5, wide * 0.3)
            parts.append(element("path", d=cut.written(), fill=shade(green, 0.16)))
    return "".join(parts)


def _strip(path: str, colour: str, wide: float, **more: str) -> str:
    return element("path", d=path, fill="none", stroke=colour, stroke_width=wide, **more)
