"""Phlox, hydrangea, sweet william, lilac: a dome packed with small open florets."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet
from corymb.picture.paths import disc
from corymb.picture.seed import give
from corymb.picture.shapes import filling, floret


def draw(head: Head) -> Drawn:
    """Florets from the rim in, so that those in the middle lie on top; each has its eye."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    count = min(44, max(14, round(10 + head.across_cm * 3)))
    size = min(r * 0.42, r * 1.5 / count**0.5)
    petals = rng.choice((4, 5, 5))
    sheet.cut([disc(0, 0, r * 0.86, r * 0.82)], shade(head.palette.main, -0.12))
    places = list(enumerate(filling(count, r - size * 0.95, 0.98)))
    for index, place in reversed(places):
        colour = head.palette.at(0) if head.palette.heart_share else head.palette.main
        if len(head.palette.colours) > 2:
            colour = head.palette.pick(index)
        light = -0.025 * place.y / r + give(rng, 0.025)
        x, y = place.x + give(rng, size * 0.12), place.y + give(rng, size * 0.12)
        own = size * (1 + give(rng, 0.12)) * 0.96
        sheet.layer(
            [floret(own, petals, give(rng, 60)).at(x, y)], shade(colour, light), size * 0.13
        )
        eye = own * max(0.16, min(0.42, head.palette.heart_share**0.5 * 0.7))
        heart = head.palette.heart if head.palette.heart_share else shade(colour, -0.08)
        sheet.cut([disc(x, y, eye)], heart, True)
    return sheet.finished()
