"""Lily, daffodil, narcissus, day lily: six pointed petals about a throat that looks at us."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, smooth
from corymb.picture.seed import give
from corymb.picture.shapes import lens, petal, spiral

CROWNED = 0.09  # so much that is no petal makes a daffodil's crown; less is a lily's throat


def draw(head: Head) -> Drawn:
    """Three petals lie behind three; in the middle a frilled crown, or an open throat."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    turn = 90 + give(rng, 4)
    crowned = 1 - head.palette.shares[0] >= CROWNED and bool(head.palette.heart_share)
    width = r * (0.86 if crowned else 0.7)
    for layer in range(2):
        angles = [turn + 60 * (2 * step + layer) + give(rng, 2.5) for step in range(3)]
        cut = petal(r, width, 0.5, 0.42)
        colour = shade(head.palette.main, -0.02 + 0.035 * layer)
        sheet.layer([cut.at(0, 0, angle) for angle in angles], colour, r * 0.025)
        fold = lens(r * 0.84, r * 0.05)
        sheet.cut([fold.at(0, 0, angle) for angle in angles], shade(colour, -0.05), True)
    if crowned:
        _crown(sheet, head)
    else:
        _throat(sheet, head, turn)
    return sheet.finished()


def _crown(sheet: Sheet, head: Head) -> None:
    """A daffodil's crown, frilled at its rim, which may have a colour of its own."""
    r = head.radius * min(0.6, max(0.3, math.sqrt(1 - head.palette.shares[0])))
    heart = head.palette.colours[1]
    sheet.layer([_frill(r)], head.palette.heart, r * 0.09, True)
    sheet.cut([_frill(r * 0.84)], heart, True)
    sheet.cut([_frill(r * 0.58).at(r * 0.05, r * 0.06)], shade(heart, -0.07), True)
    dots = [Point(place.x, place.y + r * 0.06) for place in spiral(6, r * 0.26)]
    sheet.dots(dots, r * 0.15, shade(heart, 0.05), True)


def _frill(r: float) -> Outline:
    rim = [r * (1.0 if step % 2 else 0.9) for step in range(20)]
    return smooth([Point(0, 0).towards(step * 18, out) for step, out in enumerate(rim)], True)


def _throat(sheet: Sheet, head: Head, turn: float) -> None:
    """A star of the throat's colour, and six anthers on their threads."""
    r, colours = head.radius, head.palette.colours
    deep = colours[1] if len(colours) > 1 else shade(head.palette.main, -0.06)
    stars = [lens(r * 0.5, r * 0.17).at(0, 0, turn + 60 * step) for step in range(6)]
    sheet.cut(stars, deep, True)
    tips = [Point(0, 0).towards(turn + 30 + 60 * step, r * 0.36) for step in range(6)]
    for tip in tips:
        sheet.line(Outline(Point(0, 0), ((tip,),), closed=False), shade(deep, 0.04), r * 0.03)
    heart = head.palette.heart if head.palette.heart_share else shade(head.palette.main, 0.03)
    anther = lens(r * 0.17, r * 0.08, 0.5)
    cuts = [anther.at(tip.x, tip.y, turn + 120 + 60 * step) for step, tip in enumerate(tips)]
    sheet.layer(cuts, heart, r * 0.012, True)
