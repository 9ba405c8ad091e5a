"""Grasses, astilbe, lady's mantle, goldenrod: feathers of slivers, or a froth of tiny flowers."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, curve_up, sorted_by_colour, strip
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline
from corymb.picture.seed import give
from corymb.picture.shapes import lens

LAYERS = (-0.045, 0.0, 0.03)  # the lowest darkest and longest
FROTHY = 0.42  # so many times as wide as long, and more: it is a froth


def draw(head: Head) -> Drawn:
    """Three layers along a bending rib."""
    sheet, rng = Sheet(), head.rng
    length, r = head.length, head.radius
    froth = head.across > FROTHY * length
    tall = length * (0.95 if froth else 0.86)
    lean = give(rng, 0.5) * min(length * 0.22, r)
    axis = curve_up(tall, lean)
    rib = strip([axis(t) for t in (0, 0.35, 0.7, 0.95 if froth else 1)])
    sheet.line(rib, shade(head.green, -0.02), max(1.0, min(r * 0.07, 0.25 * head.cm)))
    for layer, light in enumerate(LAYERS):
        if froth:
            _froth(sheet, head, layer, light, lean)
        else:
            _feather(sheet, head, layer, light, lean)
    return sheet.finished()


def _open(t: float) -> float:
    """How far the plume opens at a part of its length: slim below, widest in the middle."""
    return math.pow(math.sin(math.pi * min(1.0, 0.14 + 0.8 * t)), 0.8)


def _feather(sheet: Sheet, head: Head, layer: int, light: float, lean: float) -> None:
    """Slivers to both sides, and one at the tip."""
    rng, r, axis = head.rng, head.radius, curve_up(head.length * 0.86, lean)
    shoots: list[tuple[str, Outline]] = []
    count = 20 + 2 * layer
    for index in range(count):
        t = 0.1 + 0.9 * (index + 0.5 * layer) / (count + 1)
        side = -1 if (index + layer) % 2 else 1
        reach = r * (1.12 - 0.22 * layer) * _open(t) * (1 - abs(give(rng, 0.2)))
        angle = side * (52 - 26 * t - 10 * layer) + give(rng, 5)
        sliver = lens(max(reach, r * 0.3) * 1.15, r * 0.15).at(*axis(t), angle)
        shoots.append((shade(head.palette.pick(index + layer), light), sliver))
    tip = lens(head.length * 0.13, r * 0.16).at(*axis(1), 3 * layer)
    shoots.append((shade(head.palette.main, light), tip))
    for colour, outlines in sorted_by_colour(shoots):
        sheet.layer(outlines, colour, r * 0.025)


def _froth(sheet: Sheet, head: Head, layer: int, light: float, lean: float) -> None:
    """Side shoots that end in a spray of dots."""
    rng, r, axis = head.rng, head.radius, curve_up(head.length * 0.95, lean)
    dots: dict[str, list[Point]] = {}
    size = r * 0.105
    shoots = 13
    for index in range(shoots):
        t = 0.2 + 0.74 * (index + 0.4 * layer) / shoots
        side = (-1, 1, 0)[(index + layer) % 3]
        reach = (r - size) * (1 - 0.2 * layer) * _open(t) * (0.62 if side == 0 else 1.0)
        foot = axis(max(0.0, t - 0.16))
        top = axis(t)
        end = Point(top.x + side * reach * (1 - abs(give(rng, 0.25))), top.y + give(rng, r * 0.1))
        if layer == 0:
            sheet.line(strip([foot, end]), head.green, max(0.8, r * 0.03))
        colour = shade(head.palette.pick(index * 3 + layer), light)
        for step in range(7):
            spot = foot.between(end, 0.42 + 0.58 * step / 6)
            dots.setdefault(colour, []).append(
                Point(spot.x + give(rng, size * 1.1), spot.y + give(rng, size * 1.2))
            )
    for colour, places in dots.items():
        sheet.dot_layer(places, size * (1.1 - 0.12 * layer), colour, size * 0.25)
