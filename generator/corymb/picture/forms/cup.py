"""Tulip, poppy, anemone, camellia: a cup seen from the side, open enough to look in."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, varied
from corymb.picture.geometry import Point, sized
from corymb.picture.paths import Outline, disc
from corymb.picture.seed import give
from corymb.picture.shapes import petal, spiral

BACK = ((0.0, 1.0), (-30.0, 1.02), (30.0, 1.02))
FRONT = ((-42.0, 0.86), (42.0, 0.86), (2.0, 0.68))
LOWER = (1.0, 0.8)  # how high the nearest petal stands in each view: from the side, from above
DEEPER = (1.0, 1.35)  # and how far open the cup looks


def draw(head: Head) -> Drawn:
    """Back petals, the heart looking out, front petals lower: the cup stands on the origin."""
    sheet, rng, r = Sheet(), head.rng, head.radius
    main, high = head.palette.main, head.across * 0.88
    for lean, part in BACK:
        cut = _petal(high * part, r * 0.92, lean + give(rng, 3), head.across)
        sheet.layer([cut], shade(main, -0.035 + give(rng, 0.01)), r * 0.03, rim=r * 0.02)
    _heart(sheet, head, high)
    for index, (lean, part) in enumerate(FRONT):
        tall = high * part * (LOWER[head.view % 2] if index == 2 else 1.0)
        cut = _petal(tall, r * 1.0, lean + give(rng, 3), head.across)
        colour = main if index < 2 else head.palette.at(0.3)
        light = 0.012 * index + give(rng, 0.008)
        sheet.layer([cut], shade(colour, light), r * 0.035, rim=r * 0.02)
        folds = [_petal(tall * 0.8, r * 0.05, lean * 0.95 + way, head.across) for way in (-5, 6)]
        sheet.cut(folds, shade(colour, light - 0.05), True)
    return sheet.finished()


def _petal(length: float, width: float, lean: float, across: float) -> Outline:
    """A petal that stands up from the cup's foot; leaning ones are drawn in to keep the width."""
    cut = petal(length, width, 0.66, 0.15).at(0, 0, lean)
    reach = max(abs(point.x) for point in cut.points())
    return cut.through(sized(min(1.0, across * 0.5 / reach), 1.0))


def _heart(sheet: Sheet, head: Head, high: float) -> None:
    """What one sees inside: the heart's colour, and its stamens if it has a heart of its own."""
    r = head.radius
    deep = DEEPER[head.view % 2]
    mouth = disc(0, -high * 0.6, r * 0.6, r * 0.3 * deep)
    sheet.cut([mouth], shade(head.palette.main, -0.1), True)
    share = head.palette.heart_share
    if share:
        size = r * min(0.55, max(0.24, share**0.5 * 0.8))
        sheet.cut([disc(0, -high * 0.62, size, size * 0.62 * deep)], head.palette.heart, True)
        dots = [Point(p.x, p.y - high * 0.66) for p in spiral(14, size * 1.25, 0.6)]
        sheet.dots(dots, size * 0.22, varied(head.palette.heart, head.rng, 0.05), True)
