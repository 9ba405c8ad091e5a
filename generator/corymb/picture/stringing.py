"""How do many pods hang on one stem? To its two sides in turn, each on a twig of its own.

So honesty's moons stand apart and are seen singly, where heaped on a disc they would be coins.
"""

from random import Random

from corymb.picture.arrangement import PictureStem
from corymb.picture.forms import FORMS
from corymb.picture.geometry import Point
from corymb.picture.layout import Band, Bloom
from corymb.picture.seed import give

MANY = 6  # heads and more are strung along a branching stem
APART = 0.46  # from one to the next up the stem, in widths of a head; those of a side twice that
CLOSEST = 0.36  # where there is little room; there are fewer heads where there is less
OUT, TWIG = 46.0, 0.34  # how far a twig leans from its stem, and how long it is in widths


def is_strung(stem: PictureStem) -> bool:
    return FORMS[stem.form].strung and stem.heads_per_stem >= MANY


def strung(
    stem: PictureStem, foot: Point, lean: float, room_cm: float, most: int, band: Band, rng: Random
) -> list[Bloom]:
    """The heads up a stem that leans so from `foot`; the one at its tip is the first."""
    heads = max(1, min(most, int(room_cm / (CLOSEST * stem.head_cm)) - 1))
    step = min(APART * stem.head_cm, (room_cm - stem.head_cm) / heads)
    tip = foot.towards(lean, room_cm - stem.head_cm)
    blooms = [_pod(stem, tip, lean, None, band, rng)]
    first = rng.choice((-1, 1))
    for head in range(1, heads):
        fork = tip.towards(lean, -step * head)
        aside = lean + (first if head % 2 else -first) * (OUT + give(rng, 9))
        at = fork.towards(aside, stem.head_cm * TWIG)
        blooms.append(_pod(stem, at, aside, fork, band, rng))
    return blooms


def _pod(
    stem: PictureStem, at: Point, lean: float, fork: Point | None, band: Band, rng: Random
) -> Bloom:
    length, mirrored = stem.head_cm * FORMS[stem.form].length, rng.random() < 0.5
    return Bloom(stem, at, lean, band, length, mirrored=mirrored, piece=rng.randrange(2), fork=fork)
