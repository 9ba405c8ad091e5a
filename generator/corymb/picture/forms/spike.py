"""Larkspur, snapdragon, lavender, salvia: florets up a stalk, open below and in bud above."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, curve_up, strip
from corymb.picture.paths import Outline
from corymb.picture.seed import give
from corymb.picture.shapes import floret, teardrop


def draw(head: Head) -> Drawn:
    """As long and as wide as asked; the top third is buds, the tip still green."""
    sheet, rng = Sheet(), head.rng
    length, r = head.length, head.radius
    axis = curve_up(length * 0.97, give(rng, length * 0.05))
    sheet.line(strip([axis(t) for t in (0, 0.5, 0.9)]), head.green, max(1.0, r * 0.12))
    rows = min(18, max(7, round(length / (r * 0.62))))
    for row in range(rows):
        t = 0.05 + 0.95 * row / rows
        open_ = max(0.0, 1 - t * 1.05) ** 0.55
        size = r * (0.2 + 0.4 * open_)
        place, reach = axis(t), max(0.0, r * (0.3 + 0.72 * open_) - size)
        for side in (-1.0, 1.0, 0.0):
            x = place.x + side * reach + give(rng, r * 0.05)
            y = place.y - (0 if side else size * 0.4) + give(rng, size * 0.15)
            colour = head.palette.pick(row * 3 + round(side))
            if t > 0.9:
                colour = head.green
            light = (0.02 if side == 0 else -0.02) + give(rng, 0.015)
            piece = _piece(t, size, side, give(rng, 30)).at(x, min(y, -size * 0.6))
            sheet.layer([piece], shade(colour, light), size * 0.14, inside=not side and t < 0.9)
            if t < 0.55 and side == 0:
                heart = head.palette.heart if head.palette.heart_share else shade(colour, -0.07)
                sheet.cut([floret(size * 0.34, 4).at(x, y)], heart, True)
    return sheet.finished()


def _piece(t: float, size: float, side: float, turn: float) -> Outline:
    if t < 0.6:
        return floret(size, 4, turn)
    return teardrop(size * 1.9, size * 1.15).at(0, size * 0.5, side * 38 + turn * 0.3)
