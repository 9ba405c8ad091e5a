"""Love-lies-bleeding, hazel and alder catkins: soft ropes that hang straight down."""

from corymb.picture.colour import shade
from corymb.picture.forms.base import Drawn, Head, Sheet, ribbon, strip
from corymb.picture.geometry import Point
from corymb.picture.seed import give

CATKINS = 0.15  # so many times as wide as long, and more: short catkins along a twig
BEADS_TO_A_WIDTH = 2.6  # along a rope, so that they overlap


def draw(head: Head) -> Drawn:
    """The stem arches out to the right; the ropes fall from it, the longest its whole length."""
    sheet = Sheet()
    if head.across > CATKINS * head.length:
        _catkins(sheet, head)
    else:
        _ropes(sheet, head)
    return sheet.finished()


def _ropes(sheet: Sheet, head: Head) -> None:
    """A few ropes from one place: the side ones shorter, the middle one in front."""
    long, wide = head.length, head.across
    bend = Point(wide * 0.5, -long * 0.02)
    sheet.line(strip([Point(0, 0), Point(wide * 0.22, -long * 0.03), bend]), head.green, wide * 0.1)
    for aside, part in ((-0.3, 0.5), (0.34, 0.62), (-0.14, 0.78), (0.05, 1.0)):
        foot = Point(bend.x + aside * wide * 0.5, bend.y)
        drop = long * part * (1 - abs(give(head.rng, 0.03))) - bend.y - long * 0.02
        _rope(sheet, head, foot, drop, wide * (0.2 + 0.12 * part), aside * wide)


def _catkins(sheet: Sheet, head: Head) -> None:
    """A drooping twig with a catkin or two at each of its joints."""
    long, wide = head.length, head.across
    twig = [Point(long * 0.22 * t**0.6, long * (0.8 * t**1.5 - 0.1 * t * (1 - t))) for t in _STEPS]
    sheet.line(strip(twig), head.green, max(1.2, wide * 0.06))
    for index in range(11):
        t = 0.14 + 0.86 * index / 10
        place = twig[min(len(twig) - 1, round(t * (len(twig) - 1)))]
        side = (-1, 1, 0)[index % 3] if index < 10 else 0
        foot = Point(place.x + side * wide * 0.22, place.y)
        sheet.line(strip([place, foot]), head.green, max(1.0, wide * 0.04))
        drop = long * (0.2 if index == 10 else 0.16 + abs(give(head.rng, 0.04)))
        _rope(sheet, head, foot, drop, wide * 0.15, side * wide * 0.1)


def _rope(sheet: Sheet, head: Head, foot: Point, drop: float, width: float, swing: float) -> None:
    """A soft core, and beads over it in two rows, smaller towards the tip."""
    steps = [step / 8 for step in range(9)]
    line = [Point(foot.x + swing * t * (1 - 0.6 * t), foot.y + drop * t) for t in steps]
    core = [width * (0.85 - 0.55 * t**2) for t in steps]
    sheet.layer([ribbon(line, core)], shade(head.palette.main, -0.04), width * 0.08)
    count = max(8, min(46, round(drop / width * BEADS_TO_A_WIDTH)))
    beads: dict[tuple[str, float], list[Point]] = {}
    for index in range(count):
        t = (index + 0.5) / count
        side = -1 if index % 2 else 1
        size = width * (0.62 - 0.3 * t * t)
        aside = side * width * 0.24 * (1 - 0.5 * t * t) + give(head.rng, width * 0.06)
        x = foot.x + swing * t * (1 - 0.6 * t) + aside
        colour = shade(head.palette.pick(index), 0.015 * side)
        place = Point(x, foot.y + size / 2 + (drop - size) * t)
        beads.setdefault((colour, round(size, 0)), []).append(place)
    for (colour, size), places in beads.items():
        sheet.dot_layer(places, max(size, 0.8), colour, width * 0.07)


_STEPS = [step / 10 for step in range(11)]
