"""Iris leaf, flax, bear grass: long narrow blades, folded along the middle."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, ribbon
from corymb.picture.geometry import Point
from corymb.picture.seed import give


def draw(head: Head) -> Drawn:
    """Three blades from one foot: a long one that bends over, and two shorter."""
    sheet, rng = Sheet(), head.rng
    side = rng.choice((-1, 1))
    blades = ((0.78, -side * 0.55), (0.9, side * 0.8), (1.0, side * 0.3))
    for index, (part, lean) in enumerate(blades):
        long = head.length * part
        bend = (lean + give(rng, 0.15)) * min(head.radius * 1.6, long * 0.25)
        colour = shade(head.palette.at((index + 0.5) / len(blades)), -0.025 + 0.02 * index)
        _blade(sheet, head, long, bend, colour)
    return sheet.finished()


def _blade(sheet: Sheet, head: Head, long: float, bend: float, colour: str) -> None:
    """The fold is a second strip on one half, a shade darker."""
    steps = [step / 7 for step in range(8)]
    points = [Point(bend * t**2.2, -long * (t - 0.03 * t**5)) for t in steps]
    full = min(head.across * 0.34, long * 0.09)
    widths = [full * (0.55 + 1.5 * t - 0.4 * t * t) * (1 - t**2.4) * 0.7 + 0.3 for t in steps]
    sheet.layer([ribbon(points, widths)], colour, full * 0.12)
    half = [Point(p.x + w * 0.22, p.y) for p, w in zip(points, widths, strict=True)]
    sheet.cut([ribbon(half, [w * 0.5 for w in widths])], shade(colour, -0.045), True)
