"""What of the picture does each head cover? Counted in the cells of a coarse grid, a bit a cell."""

import math
from collections.abc import Sequence

from corymb.picture.forms import FORMS, Facing
from corymb.picture.layout import Bloom

CELLS = 64  # across the picture; finer changes nothing that one can see
LEAFY = 0.42  # how wide a leaf is, and how far from its twig, as a part of half the spray
USUAL = 2.5  # a spray of leaf is so many times longer than wide
SPRAYS = ("leaf-spray", "needle-spray", "trail", "plume")  # covered to both sides of a twig
MOST_DISCS = 30  # up a long head, which is counted as a row of discs

PAPER = {
    "rosette": 0.91,
    "daisy": 0.82,
    "umbel": 0.52,
    "globe": 0.92,
    "spike": 0.77,
    "cluster": 0.74,
    "cup": 1.0,
    "iris": 0.86,
    "trumpet": 0.7,
    "bell": 0.3,
    "plume": 0.42,
    "tassel": 0.5,
    "trail": 0.42,
    "leaf-spray": 0.5,
    "needle-spray": 0.45,
    "blade": 0.44,
    "twig": 0.36,
    "berry": 0.69,
    "pod": 1.15,
}
"""The part of a head's disc or ellipse that its papers cover, measured on the forms as drawn."""

Disc = tuple[float, float, float]


def masks(blooms: Sequence[Bloom]) -> list[int]:
    """The cells each head covers, of a grid over all of them."""
    box = blooms[0].reach
    for bloom in blooms:
        box = box.joined(bloom.reach)
    step = max(box.width, box.height) / CELLS
    return [_mask(discs(bloom), box.left, box.top, step) for bloom in blooms]


def discs(bloom: Bloom) -> list[Disc]:
    """Discs of the area that a head's papers have; a long head is a row of them."""
    stem, half = bloom.stem, bloom.stem.head_cm / 2
    facing, paper = FORMS[stem.form].facing, PAPER[stem.form]
    if facing is Facing.FRONT:
        return [(bloom.at.x, bloom.at.y, half * paper**0.5)]
    if facing is Facing.SIDE and bloom.length_cm <= stem.head_cm * 1.2:
        middle = bloom.at.towards(bloom.lean, half)
        return [(*middle, half * paper**0.5)]
    if stem.form == "leaf-spray":  # its leaves are as large however short it is cut
        paper *= (USUAL * stem.head_cm / bloom.length_cm) ** 0.4
    return _row(bloom, paper, LEAFY if stem.form in SPRAYS else 0.0)


def _row(bloom: Bloom, paper: float, aside: float) -> list[Disc]:
    """Discs up a long head, by turns to both sides of its middle where it is a spray."""
    half, long = bloom.stem.head_cm / 2, bloom.length_cm
    area = paper * math.pi / 2 * half * long
    own = aside * half or half * paper * math.pi / 4
    count = max(2, min(MOST_DISCS, round(area / (math.pi * own * own))))
    own = math.sqrt(area / (math.pi * count))
    row = []
    for step in range(count):
        part, side = (step + 0.5) / count, aside * half * (1 if step % 2 else -1)
        if FORMS[bloom.stem.form].facing is Facing.HANGING:
            out = long * 0.2 * math.sqrt(part) * (-1 if bloom.mirrored else 1)
            row.append((bloom.at.x + out + side, bloom.at.y + long * 0.9 * part, own))
        else:
            middle = bloom.at.towards(bloom.lean, long * part)
            row.append((*middle.towards(bloom.lean + 90, side * (1.2 - 0.7 * part)), own))
    return row


def _mask(covered: list[Disc], left: float, top: float, step: float) -> int:
    mask = 0
    for x, y, r in covered:
        for row in range(max(0, int((y - r - top) / step)), int((y + r - top) / step) + 1):
            aside = r * r - (top + (row + 0.5) * step - y) ** 2
            if aside > 0:
                first = max(0, round((x - aside**0.5 - left) / step))
                cells = min(CELLS, round((x + aside**0.5 - left) / step)) - first
                if cells > 0:
                    mask |= ((1 << cells) - 1) << (row * CELLS + first)
    return mask
