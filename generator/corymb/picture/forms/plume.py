"""Grasses, astilbe, smoke bush in smoke, goldenrod: a feather of fine side shoots."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, curve_up, sorted_by_colour, strip
from corymb.picture.paths import Outline
from corymb.picture.seed import give
from corymb.picture.shapes import lens


def draw(head: Head) -> Drawn:
    """Three layers of slivers along a bending rib, the lowest darkest and longest."""
    sheet, rng = Sheet(), head.rng
    length, r = head.length, head.radius
    axis = curve_up(length * 0.86, give(rng, 0.5) * min(length * 0.22, r))
    sheet.line(
        strip([axis(t) for t in (0, 0.35, 0.7, 1)]), shade(head.green, -0.02), max(1.0, r * 0.07)
    )
    for layer, light in enumerate((-0.045, 0.0, 0.03)):
        shoots: list[tuple[str, Outline]] = []
        count = 20 + 2 * layer
        for index in range(count):
            t = 0.1 + 0.9 * (index + 0.5 * layer) / (count + 1)
            side = -1 if (index + layer) % 2 else 1
            open_ = math.sin(math.pi * min(1.0, 0.14 + 0.8 * t)) ** 0.8
            reach = r * (1.12 - 0.22 * layer) * open_ * (1 - abs(give(rng, 0.2)))
            angle = side * (52 - 26 * t - 10 * layer) + give(rng, 5)
            colour = shade(head.palette.pick(index + layer), light)
            sliver = lens(max(reach, r * 0.3) * 1.15, r * 0.15).at(*axis(t), angle)
            shoots.append((colour, sliver))
        tip = axis(1)
        shoots.append(
            (
                shade(head.palette.main, light),
                lens(length * 0.13, r * 0.16).at(tip.x, tip.y, 3 * layer),
            )
        )
        for colour, outlines in sorted_by_colour(shoots):
            sheet.layer(outlines, colour, r * 0.025)
    return sheet.finished()
