"""Poppy head, love-in-a-mist: dry capsules, ribbed and crowned; honesty: flat silver moons."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, disc, polyline
from corymb.picture.seed import give
from corymb.picture.shapes import lens

CROWN_POINTS = 9
TURNED = (1.0, 0.6)  # how wide honesty's moons look in their two views
MANY = 6  # heads on a stem; honesty has a dozen, a poppy one


def draw(head: Head) -> Drawn:
    """The pod stands on the origin, as wide as asked; stems with many bear flat ones."""
    return _moon(head) if head.heads >= MANY else _urn(head)


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
