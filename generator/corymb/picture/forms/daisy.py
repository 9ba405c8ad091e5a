"""Cosmos, rudbeckia, hellebore, sunflower: one skirt of petals about a raised disc."""

import math

from corymb.picture.colour import lightness, shade
from corymb.picture.forms.base import PALE, Drawn, Head, Sheet, sorted_by_colour, varied
from corymb.picture.paths import disc
from corymb.picture.seed import give
from corymb.picture.shapes import lens, petal, spiral


def draw(head: Head) -> Drawn:
    """A large disc goes with many narrow petals, a small one with eight broad ones."""
    sheet, rng = Sheet(), head.rng
    heart = head.palette.heart_share
    middle = head.radius * min(0.52, max(0.17, math.sqrt(heart)))
    count = 8 if heart < 0.14 else 14
    width = 1.5 * head.radius * math.sin(math.pi / count) * (1.16 if count == 8 else 1.3)
    turn = rng.uniform(0, 360)
    for layer in range(2):
        petals = []
        for step in range(layer, count, 2):
            length = head.radius * (1 - abs(give(rng, 0.05)))
            notch = 0.05 if count == 8 else 0.0
            angle = turn + step * 360 / count + give(rng, 2.5)
            petals.append((angle, petal(length, width, 0.74, 0.0, notch).at(0, 0, angle)))
        dark = 0.045 if lightness(head.palette.main) > PALE else 0.015
        colour = shade(head.palette.main, 0.015 if layer else -dark)
        rim = head.across * 0.007 * layer
        sheet.layer([cut for _, cut in petals], colour, head.across * 0.014, rim=rim)
        for angle, _ in petals:
            _folds(sheet, head, angle, middle, colour)
    _disc(sheet, head, middle)
    return sheet.finished()


def _folds(sheet: Sheet, head: Head, angle: float, middle: float, colour: str) -> None:
    """A fold along each petal; a third colour between petal and disc stains its foot."""
    fold = lens(head.radius * 0.66, head.radius * 0.035)
    sheet.cut([fold.at(0, 0, angle + 5), fold.at(0, 0, angle - 5)], shade(colour, -0.045), True)
    if len(head.palette.colours) > 2:
        stained = (1 - head.palette.shares[0]) ** 0.5 * head.radius
        stain = head.palette.colours[1]
        foot = petal(max(stained, middle * 1.2), head.radius * 0.3, 0.6, 0.5).at(0, 0, angle)
        sheet.cut([foot], stain, True)


def _disc(sheet: Sheet, head: Head, middle: float) -> None:
    heart = head.palette.heart if head.palette.heart_share else shade(head.palette.main, -0.04)
    sheet.layer([disc(0, 0, middle)], heart, middle * 0.14, True)
    dots = []
    for place in spiral(34, middle * 0.9):
        dots.append((varied(heart, head.rng, 0.06), disc(place.x, place.y, middle * 0.12)))
    for colour, outlines in sorted_by_colour(dots):
        sheet.cut(outlines, colour, True)
