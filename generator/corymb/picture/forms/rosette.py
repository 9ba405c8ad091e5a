"""Dahlia, rose, ranunculus, peony: rings of petals, each ring smaller and lying on the last."""

import math

from corymb.picture.colour import lightness, shade
from corymb.picture.forms.base import PALE, Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, disc
from corymb.picture.seed import give
from corymb.picture.shapes import GOLDEN_DEGREES, round_petal

WHITE_LESS = 0.04  # no paper is lighter than white: its lower petals are cut from a darker one
ASIDE = 0.2  # of its radius the heart lies aside in the second view, looking past us


def draw(head: Head) -> Drawn:
    """Bigger heads have more rings; the heart's colour fills its share of the area."""
    sheet, rng = Sheet(), head.rng
    rings = min(7, max(4, round(head.across_cm * 0.45) + 2))
    most = min(12, round(6 + head.across_cm * 0.8))
    turn = rng.uniform(0, 360)
    for ring in range(rings):
        inwards = ring / rings
        reach = head.radius * (1 - inwards) ** 0.86
        turn += GOLDEN_DEGREES
        halves = _ring(head, reach, max(5, round(most - 1.1 * ring)), turn, _middle(head, inwards))
        for half, further_in in zip(halves, (0.0, 0.1), strict=True):
            colour = head.palette.at(1 - (reach / head.radius * 0.95) ** 2 + further_in)
            light = 0.02 - 0.05 * inwards + further_in * 0.25
            if lightness(colour) > PALE:
                light -= WHITE_LESS * (1 - further_in * 8)
            rim = head.across * 0.009
            sheet.layer(half, shade(colour, light), head.across * 0.014, ring > 0, rim)
    _bud(sheet, head)
    return sheet.finished()


def _middle(head: Head, inwards: float) -> Point:
    """Where a ring's petals meet: seen from the side, the inner ones stand up behind the outer."""
    return Point(0, -head.radius * ASIDE * inwards * (head.view % 2))


def _ring(head: Head, reach: float, count: int, turn: float, middle: Point) -> list[list[Outline]]:
    """Every other petal lies below its neighbours, as paper petals do."""
    count += count % 2
    width = 2 * reach * math.sin(math.pi / count) * 1.5
    petals = [
        round_petal(reach * (1 - abs(give(head.rng, 0.07))), width, 0.03).at(
            *middle, turn + step * 360 / count + give(head.rng, 3)
        )
        for step in range(count)
    ]
    return [petals[::2], petals[1::2]]


def _bud(sheet: Sheet, head: Head) -> None:
    """The last petals, still rolled: three crescents round a point."""
    r, (x, y) = head.radius * 0.13, _middle(head, 1.0)
    heart = head.palette.heart
    sheet.layer([disc(x, y, r)], shade(heart, -0.03), r * 0.2, True)
    sheet.cut([disc(x + r * 0.1, y - r * 0.12, r * 0.68)], shade(heart, 0.02), True)
    sheet.cut([disc(x + r * 0.2, y - r * 0.02, r * 0.38)], shade(heart, -0.06), True)
