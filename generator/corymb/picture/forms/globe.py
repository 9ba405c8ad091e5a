"""Allium, globe thistle, drumstick: a ball of small stars, larger towards the middle."""

import math

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, sorted_by_colour
from corymb.picture.paths import disc
from corymb.picture.seed import give
from corymb.picture.shapes import floret, spiral


def draw(head: Head) -> Drawn:
    """Stars on a darker ball; those turned away from us are cut smaller and lie lower."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    sheet.cut([disc(0, 0, r * 0.93)], shade(head.palette.main, -0.1))
    count = min(90, max(46, round(46 + head.across_cm * 4)))
    ball = [(place, math.hypot(place.x, place.y) / r) for place in spiral(count, r * 0.93)]
    for near, far in ((0.78, 2.0), (0.5, 0.78), (0.0, 0.5)):
        stars = []
        for index, (place, out) in enumerate(ball):
            if near <= out < far:
                bulge = math.sqrt(max(0.0, 1 - out * out))
                light = 0.05 * (bulge - 0.6) - 0.03 * place.y / r + give(rng, 0.015)
                star = floret(r * (0.11 + 0.085 * bulge), 5, give(rng, 36))
                colour = shade(head.palette.pick(index), light)
                stars.append((colour, star.at(place.x * 0.98, place.y * 0.98)))
        for colour, outlines in sorted_by_colour(stars):
            sheet.layer(outlines, colour, r * 0.022, inside=near < 0.7)
    return sheet.finished()
