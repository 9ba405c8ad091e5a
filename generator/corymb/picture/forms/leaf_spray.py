"""Eucalyptus, smoke bush leaf, beech, myrtle: a twig with leaves along both its sides."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, curve_up, strip
from corymb.picture.seed import give


def draw(head: Head) -> Drawn:
    """Leaves in pairs, the lower ones larger, one at the tip; ribs cut through each."""
    sheet, rng = Sheet(), head.rng
    length, r = head.length, head.radius
    axis = curve_up(length * 0.84, give(rng, 0.14) * length)
    twig = shade(head.green, -0.05)
    sheet.line(strip([axis(t) for t in (0, 0.35, 0.7, 1)]), twig, max(1.2, r * 0.08))
    pairs = min(9, max(3, round(length / (r * 0.95))))
    broad = rng.uniform(0.46, 0.6)
    for pair in range(pairs):
        t = 0.1 + 0.86 * pair / pairs
        for side in (-1, 1):
            foot = axis(min(1.0, t + (0.03 if side > 0 else 0.0)))
            size = r * 1.15 * (1 - 0.42 * t) * (1 + give(rng, 0.08))
            angle = side * (64 - 30 * t) + give(rng, 7)
            light = (-0.018 if side > 0 else 0.018) + give(rng, 0.02)
            colour = shade(head.palette.pick(pair * 2 + (side > 0)), light)
            sheet.leaf(foot.x, foot.y, angle, size, size * broad, colour, -side * 0.06)
    tip = axis(1)
    sheet.leaf(tip.x, tip.y, give(rng, 8), length * 0.16, r * 0.42, head.palette.main)
    return sheet.finished()
