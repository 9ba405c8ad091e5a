"""Rosehip, snowberry, hypericum, crab apple: berries on forking stalks, with a leaf or two."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.geometry import Point
from corymb.picture.paths import Outline, bow, disc
from corymb.picture.seed import give
from corymb.picture.shapes import filling, leaf


def draw(head: Head) -> Drawn:
    """A bunch as wide as asked; each berry has a light cut into its cheek and its dark eye."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    count = min(13, max(5, round(3 + head.across_cm * 1.2)))
    size = r * 0.92 / count**0.5
    lift = -r * 0.75
    for angle in (-58, 52):
        sheet.leaf(0, -r * 0.1, angle + give(rng, 8), r * 0.85, r * 0.42, head.green)
    places = [Point(p.x, p.y + lift) for p in filling(count, r - size, 0.86)]
    for place in places:
        fork = Point(place.x * 0.3, place.y * 0.5)
        sheet.line(bow(Point(0, 0), fork, place, place), shade(head.green, -0.03), size * 0.14)
    for index, place in sorted(enumerate(places), key=lambda pair: pair[1].y):
        own = size * (1 + give(rng, 0.1))
        colour = shade(head.palette.pick(index), give(rng, 0.02))
        sheet.layer([disc(place.x, place.y, own)], colour, own * 0.12)
        sheet.cut(
            [_glint(own).at(place.x - own * 0.34, place.y - own * 0.3, -42)],
            shade(colour, 0.1),
            True,
        )
        sheet.dots(
            [Point(place.x + own * 0.3, place.y + own * 0.42)],
            own * 0.26,
            shade(colour, -0.1),
            True,
        )
    return sheet.finished()


def _glint(own: float) -> Outline:
    return leaf(own * 0.62, own * 0.2, 0.15).at(0, own * 0.3)
