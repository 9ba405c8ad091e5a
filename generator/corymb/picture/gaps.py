"""What is seen between the heads? The stems' own leaves, set wherever the wall would show."""

import math
from random import Random

from corymb.picture.arrangement import PictureStem
from corymb.picture.dome import Dome
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Point
from corymb.picture.layout import Bloom, Leaf
from corymb.picture.seed import give

FINENESS = 28  # cells across the arrangement
MOST_ROWS = 10 * FINENESS  # of a piece that is a mere stroke, coarser ones
MOST_LEAVES = 120

Circle = tuple[float, float, float]


def mend(
    dome: Dome, blooms: list[Bloom], stems: tuple[PictureStem, ...], rng: Random
) -> list[Leaf]:
    """Leaves for the uncovered places, from the middle out, until none is left."""
    covered = [circle for bloom in blooms for circle in covers(bloom)]
    greens = [stem.green for stem in stems for _ in range(stem.count)]
    if not greens:
        return []
    long = min(8.5, max(0.5, 0.17 * (dome.half_cm + dome.up_cm)))
    leaves: list[Leaf] = []
    for cell in _cells(dome):
        if len(leaves) >= MOST_LEAVES or _covered(cell, covered):
            continue
        held = dome.hold.passed_by(cell, dome.half_cm)
        lean = held.angle_to(cell) * 0.9 + give(rng, 38)
        size = long * (1 + give(rng, 0.2))
        leaves.append(Leaf(cell.towards(lean, -size / 2), lean, size, rng.choice(greens)))
        covered.append((cell.x, cell.y, size * 0.32))
    return leaves


def covers(bloom: Bloom) -> list[Circle]:
    """Circles that a head hides; a long one is a row of small circles."""
    half = bloom.stem.head_cm / 2
    facing = FORMS[bloom.stem.form].facing
    if facing is Facing.FRONT:
        return [(bloom.at.x, bloom.at.y, half * 0.82)]
    if facing is Facing.HANGING:
        return []
    middle = bloom.length_cm / 2
    if middle <= half * 1.2:
        centre = bloom.at.towards(bloom.lean, half)
        return [(centre.x, centre.y, half * 0.75)]
    row = [bloom.at.towards(bloom.lean, bloom.length_cm * t) for t in (0.2, 0.4, 0.6, 0.8)]
    return [(point.x, point.y, half * 0.55) for point in row]


def _cells(dome: Dome) -> list[Point]:
    """Places to look at, from the middle of the dome outwards, above the hold only."""
    wide, high = 2 * dome.half_cm, dome.up_cm + dome.down_cm
    step = max(wide / FINENESS, high / MOST_ROWS)
    rows, columns = math.ceil(high / step), max(1, math.ceil(wide / step - 1e-9))
    found = []
    for row in range(rows):
        for column in range(columns):
            cell = Point(
                dome.middle.x - dome.half_cm + (column + 0.5) * step,
                dome.middle.y - dome.up_cm + (row + 0.5) * step,
            )
            part, _ = dome.within(cell)
            if part < 0.84 and cell.y < dome.hold.at.y:
                found.append((part, cell))
    return [cell for _, cell in sorted(found)]


def _covered(point: Point, circles: list[Circle]) -> bool:
    """Whether one of the circles hides it; asked of every cell, so written out."""
    px, py = point
    for x, y, radius in circles:
        dx, dy = px - x, py - y
        if dx * dx + dy * dy < radius * radius:
            return True
    return False
