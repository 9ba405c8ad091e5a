"""Poppy head: a ribbed, crowned capsule; love-in-a-mist: a striped balloon with horns; honesty:
flat silver moons; teasel, burnet: cones and bobbles, rough all over.
"""

import math

from corymb.picture.colour import lightness, shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, disc, polyline
from corymb.picture.seed import give
from corymb.picture.shapes import leaf, lens

CROWN_POINTS = 9
TURNED = (1.0, 0.6)  # how wide honesty's moons look in their two views
ALONE, A_FEW, MANY = 1, 3, 6  # heads on a stem: a poppy's, a teasel's, honesty's are a dozen
THREADS = (-78, -48, 48, 78)  # of the ruff, by their lean
HORNS = (-46, -22, 3, 26, 48)  # the lean of what were love-in-a-mist's styles
STRIPES = (-0.72, -0.26, 0.26, 0.72)
PALE = 0.75  # a moon is as pale as paper (OKLCh lightness)
TALL, SLIM = 1.12, 0.8  # a cone, of the width asked for
ROWS = 7  # of bristles on a cone
BRACTS = (-80, -58, 58, 80)  # that stand about a teasel, by their lean


def draw(head: Head) -> Drawn:
    """The pod stands on the origin, as wide as asked; stems with many pale ones bear moons."""
    if head.heads < A_FEW:
        return _urn(head) if head.heads == ALONE else _balloon(head)
    flat = head.heads >= MANY and lightness(head.palette.main) > PALE
    return _moon(head) if flat else _cone(head)


def _cone(head: Head) -> Drawn:
    """An egg with bristles in rows, and a teasel's bracts about it; a bobble has none."""
    sheet, r = Sheet(), head.radius
    high, half, colour = head.across * TALL, r * SLIM, head.palette.main
    if head.heads < MANY:
        sheet.layer([lens(r * 1.1, r * 0.16).at(0, 0, lean) for lean in BRACTS], head.green, 0)
    middle = Point(0, -high / 2)
    edge = [
        lens(r * 0.26, r * 0.1).at(middle.x + half * 0.96 * x, middle.y + high * 0.48 * y, lean)
        for x, y, lean in _round_about(18)
    ]
    sheet.cut(edge, shade(colour, -0.05))
    sheet.layer([disc(*middle, half, high / 2)], colour, r * 0.05)
    rough = head.palette.heart if head.palette.heart_share else colour
    for step, paper in ((0, shade(colour, -0.07)), (1, shade(rough, 0.05))):
        places = _rows(half, high, step)
        sheet.stamped(lens(r * 0.22, r * 0.13), places, paper, 0, inside=True)
    return sheet.finished()


def _round_about(count: int) -> list[tuple[float, float, float]]:
    """Places on a circle of one, each with half the lean that points straight away from it."""
    turns = [360 * (step + 0.5) / count - 180 for step in range(count)]
    return [(math.sin(math.radians(t)), -math.cos(math.radians(t)), t / 2) for t in turns]


def _rows(half: float, high: float, step: int) -> list[Point]:
    """Every second place of every row, the rows set between each other."""
    places = []
    for row in range(ROWS):
        up = (row + 0.5) / ROWS
        reach = half * math.sqrt(1 - (2 * up - 1) ** 2) * 0.9
        across = 6 if abs(2 * up - 1) < 0.6 else 4
        for index in range((row + step) % 2, across, 2):
            places.append(
                Point(reach * (2 * (index + 0.5) / across - 1), -high * (up * 0.86 + 0.02))
            )
    return places


def _moon(head: Head) -> Drawn:
    """A thin disc in its rim, a point at the top, and the shadows of the seeds.

    Hung as thin as coins, many of them are seen half from the side.
    """
    sheet, rng, r = Sheet(), head.rng, head.radius
    colour, rim = head.palette.main, shade(head.palette.heart, -0.15)
    tall, wide = r * 1.04, r * TURNED[head.view % 2]
    middle = Point(0, -tall - r * 0.12)
    sheet.line(polyline([Point(0, 0), Point(0, -r * 0.3)]), head.green, r * 0.08)
    sheet.layer([disc(*middle, wide, tall)], rim, r * 0.06)
    sheet.cut([lens(r * 0.34, r * 0.1).at(0, middle.y - tall + r * 0.08)], rim)
    inner = wide - r * 0.1
    sheet.cut([disc(*middle, inner, tall * 0.91)], shade(colour, -0.03), True)
    sheet.cut([disc(-wide * 0.08, middle.y - r * 0.06, inner * 0.83, tall * 0.77)], colour, True)
    for angle in (-48, 66, 158):
        seed = _in(middle.towards(angle + give(rng, 22), r * 0.52), wide / r)
        thread = _in(middle.towards(angle, r * 0.88), wide / r)
        sheet.line(polyline([thread, seed]), shade(colour, -0.06), r * 0.03)
        flat = disc(0, 0, r * 0.12 * wide / r, r * 0.18)
        sheet.cut([flat.at(*seed, angle)], shade(colour, -0.06), True)
    return sheet.finished()


def _in(at: Point, part: float) -> Point:
    """A place on a disc that is turned aside, so that it looks narrower."""
    return Point(at.x * part, at.y)


def _urn(head: Head) -> Drawn:
    """Ribs are cut from foot to crown."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    high = head.across * 0.98
    colour = head.palette.main
    sheet.layer([_capsule(r, high)], colour, r * 0.05)
    for part in (-0.62, -0.22, 0.22, 0.62):
        light = 0.045 if part < 0 else -0.05
        sheet.cut([_rib(r, high, part)], shade(colour, light + give(rng, 0.01)), True)
    sheet.layer(
        [_crown(r, high)],
        head.palette.heart if head.palette.heart_share else shade(colour, -0.05),
        r * 0.05,
    )
    return sheet.finished()


def _balloon(head: Head) -> Drawn:
    """Blown up round, striped where its chambers meet, in a ruff of threads."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    high, colour = head.across * 0.86, head.palette.main
    for lean in THREADS:
        end = Point(0, 0).towards(lean + give(rng, 5), r * 1.2)
        for side in (-1, 1):
            fork = Point(0, 0).between(end, 0.55)
            tip = fork.towards(lean + side * 26, r * 0.36)
            sheet.line(polyline([Point(0, 0), fork, tip]), head.green, r * 0.045)
    horns = [
        leaf(r * 0.62, r * 0.13, math.copysign(0.28, lean)).at(r * lean / 110, -high * 0.9, lean)
        for lean in HORNS
    ]
    sheet.layer(horns, shade(head.palette.heart, -0.03), r * 0.03)
    sheet.layer([disc(0, -high / 2, r, high / 2)], colour, r * 0.05)
    share = head.palette.heart_share
    stripe = head.palette.heart if share else shade(colour, -0.06)
    sheet.cut([_stripe(r, high, part, max(0.12, share * 0.75)) for part in STRIPES], stripe, True)
    return sheet.finished()


def _stripe(r: float, high: float, part: float, wide: float) -> Outline:
    """A meridian of the balloon, `wide` in half widths at its middle, bowed to `part` of it."""
    foot, top = Point(0, -high * 0.02), Point(0, -high * 0.98)
    out, back = r * (part + wide / 2) * 4 / 3, r * (part - wide / 2) * 4 / 3
    return Outline(
        foot,
        (
            (Point(out, -high * 0.1), Point(out, -high * 0.9), top),
            (Point(back, -high * 0.9), Point(back, -high * 0.1), foot),
        ),
    )


def _capsule(r: float, high: float) -> Outline:
    left = (
        (Point(-r * 0.35, -high * 0.02), Point(-r * 1.06, -high * 0.16), Point(-r, -high * 0.5)),
        (
            Point(-r * 0.95, -high * 0.76),
            Point(-r * 0.5, -high * 0.88),
            Point(-r * 0.42, -high * 0.9),
        ),
    )
    right = (
        (Point(r * 0.5, -high * 0.88), Point(r * 0.95, -high * 0.76), Point(r, -high * 0.5)),
        (Point(r * 1.06, -high * 0.16), Point(r * 0.35, -high * 0.02), Point(0, 0)),
    )
    return Outline(Point(0, 0), (*left, (Point(r * 0.42, -high * 0.9),), *right))


def _rib(r: float, high: float, part: float) -> Outline:
    """A sliver bowed out to `part` of the radius."""
    foot, top = Point(r * part * 0.2, -high * 0.08), Point(r * part * 0.42, -high * 0.86)
    out, back = r * part * 1.5, r * (part * 1.5 - 0.09)
    return Outline(
        foot,
        (
            (Point(out, -high * 0.25), Point(out * 0.95, -high * 0.68), top),
            (Point(back * 0.95, -high * 0.68), Point(back, -high * 0.25), foot),
        ),
    )


def _crown(r: float, high: float) -> Outline:
    """A frilled cap, seen a little from below."""
    points = []
    for step in range(CROWN_POINTS * 2 + 1):
        t = step / (CROWN_POINTS * 2)
        up = high * (0.1 if step % 2 else 0.045)
        points.append(Point(r * 0.72 * (2 * t - 1), -high * 0.89 - up))
    return polyline([Point(-r * 0.42, -high * 0.87), *points, Point(r * 0.42, -high * 0.87)], True)
