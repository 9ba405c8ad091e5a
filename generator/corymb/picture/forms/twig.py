"""Dogwood, willow, pussy willow: a bare rod that forks near its tip, with its buds."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, ribbon
from corymb.picture.geometry import Point
from corymb.picture.seed import give
from corymb.picture.shapes import teardrop

FORKS = (0.42, 0.56, 0.7)  # how far up the rod they leave it


def draw(head: Head) -> Drawn:
    """The bark is the last of the stem's colours; where there are two, the first is its buds'."""
    sheet, rng = Sheet(), head.rng
    rod = [Point(0, -head.length * t) for t in _STEPS]
    thick = min(head.across * 0.2, head.length * 0.045)
    first = rng.choice((-1, 1))
    for index, t in enumerate(FORKS):
        side = first if index % 2 else -first
        foot = Point(0, -head.length * t)
        reach = side * (head.radius - thick) * (0.97 - 0.07 * index)
        tall = head.length * (0.95 - 0.04 * index - t)
        bend = give(rng, 0.05)
        branch = [
            Point(foot.x + reach * u**0.7, foot.y - tall * (u + bend * u * (1 - u))) for u in _STEPS
        ]
        _wood(sheet, head, branch, thick * (0.66 - 0.06 * index), index)
        _buds(sheet, head, branch, thick, 2)
    _wood(sheet, head, rod, thick, 3)
    _buds(sheet, head, rod, thick, 1)
    return sheet.finished()


def _wood(sheet: Sheet, head: Head, line: list[Point], thick: float, order: int) -> None:
    """A rod, tapering; each of a slightly other sheet."""
    widths = [thick * (1 - 0.6 * step / (len(line) - 1)) for step in range(len(line))]
    colour = shade(head.palette.heart, (-0.03, 0.02, -0.01, 0.01)[order])
    sheet.layer([ribbon(line, widths)], colour, thick * 0.16)


def _buds(sheet: Sheet, head: Head, line: list[Point], thick: float, start: int) -> None:
    """Buds by turns to both sides: plump and furred where they have a colour of their own."""
    furred = bool(head.palette.heart_share)
    size = min(head.across * 0.3, head.length * 0.07) if furred else thick * 0.9
    buds = []
    for index in range(start, len(line) - 1):
        here, above = line[index], line[index + 1]
        for part in (0.1, 0.6) if furred else (0.35,):
            side = -1 if (index + (part > 0.5)) % 2 else 1
            place = here.between(above, part)
            lean = here.angle_to(above) + side * 24
            own = size * (1 + give(head.rng, 0.12))
            aside = place.towards(here.angle_to(above) + 90, side * thick * 0.3)
            buds.append(teardrop(own * 1.5, own * 0.8).at(*aside, lean))
    sheet.layer(buds[::2], shade(head.palette.main, 0.015), size * 0.1)
    sheet.layer(buds[1::2], shade(head.palette.main, -0.015), size * 0.1)


_STEPS = [step / 8 for step in range(9)]
