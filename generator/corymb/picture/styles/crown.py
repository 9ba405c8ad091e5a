"""A crown or a wreath: everything bound to a ring, the best heads together at the front."""

import math
from random import Random

from corymb.picture.arrangement import Arrangement, PictureStem
from corymb.picture.fairness import shared
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Box, Point
from corymb.picture.layout import Band, Bloom, Layout, Leaf, Stalk
from corymb.picture.placing import dealt, head_length, heads_of, is_long, mixed
from corymb.picture.seed import dice, give
from corymb.picture.stems import width_cm
from corymb.picture.styles.sprigs import taken_apart

CROWN_TILT = 0.56  # a crown lies on the table and is seen from above at thirty degrees
LEAVES_TO_A_LENGTH = 3  # in the length of one leaf, so that they overlap


class Ring:
    """An ellipse standing on the ground; angles from its top, clockwise."""

    def __init__(self, half: float, tall: float) -> None:
        self.half, self.tall = half, tall

    def at(self, angle: float, part: float = 1.0) -> Point:
        turn = math.radians(angle)
        return Point(
            self.half * part * math.sin(turn), -self.tall - self.tall * part * math.cos(turn)
        )

    def angle_of(self, point: Point) -> float:
        """The angle of the ring's place nearest in direction to the point."""
        return math.degrees(math.atan2(point.x / self.half, -(point.y / self.tall + 1)))

    def along(self, angle: float) -> float:
        """Which way the ring runs at the angle."""
        return self.at(angle - 1).angle_to(self.at(angle + 1))


def ring_of(arrangement: Arrangement) -> Ring:
    """A crown lies flat and a wreath hangs; the flowers reach as far as the recipe says."""
    half = arrangement.across_cm / 2 * 0.8
    return Ring(half, half * (CROWN_TILT if arrangement.style == "crown" else 1.0))


def cut_down(arrangement: Arrangement) -> Arrangement:
    """Small bunches, cut to the length of a finger; on a wreath that is a longer one."""
    across = arrangement.across_cm
    return taken_apart(arrangement, across * 0.2, across * 0.25, across * 0.3, heads=1)


def lay(arrangement: Arrangement) -> Layout:
    ring, rng = ring_of(arrangement), dice(arrangement.id, "places")
    blooms: list[Bloom] = []
    stalks: list[Stalk] = []
    for long, uses, band in (
        (True, ("foliage", "line", "filler", "focal"), Band.BACK),
        (False, ("foliage", "line", "filler"), Band.MIDDLE),
        (False, ("focal",), Band.FRONT),
    ):
        kinds = [s for s in arrangement.stems if is_long(s) is long and s.use in uses]
        stems = mixed(kinds)
        places = _places(ring, len(stems), band, rng)
        for stem, at in dealt(stems, places):
            for head in range(min(3, heads_of(stem))):
                bloom = _bloom(ring, stem, ring.angle_of(at) + head * 8, band, rng)
                blooms.append(bloom)
                stalks.append(_twig(ring, bloom))
    blooms = shared(blooms).blooms
    leaves = _leaves(ring, arrangement, dice(arrangement.id, "leaves"))
    box = Box(-ring.half, -2 * ring.tall, ring.half, 0)
    for bloom in blooms:
        box = box.joined(bloom.reach)
    return Layout(tuple(blooms), tuple(stalks), tuple(leaves), box, leaves_first=True)


def _places(ring: Ring, count: int, band: Band, rng: Random) -> list[Point]:
    """Focal heads over the front third, off its middle; all else all the way round."""
    if band is Band.FRONT:
        arc = min(330.0, 30.0 * count)
        return [ring.at(196 + arc * ((n + 0.5) / count - 0.5)) for n in range(count)]
    start = rng.uniform(0, 360)
    return [ring.at(start + (n + give(rng, 0.25)) * 360 / count) for n in range(count)]


def _bloom(ring: Ring, stem: PictureStem, angle: float, band: Band, rng: Random) -> Bloom:
    side = rng.choice((-1, 1))
    if is_long(stem):
        length = min(head_length(stem), ring.half * 0.62)
        lean = ring.along(angle) + side * (42 + give(rng, 12))
        return Bloom(
            stem,
            ring.at(angle),
            lean,
            band,
            length,
            piece=rng.randrange(2),
            mirrored=_falls_left(stem, angle),
        )
    out = 1 + (0.04 if band is Band.FRONT else side * 0.1) + give(rng, 0.03)
    at = ring.at(angle, out)
    lean = Point(0, -ring.tall).angle_to(at) * 0.6
    if FORMS[stem.form].facing is Facing.SIDE:
        at = at.towards(lean, -stem.head_cm / 2)
    return Bloom(
        stem,
        at,
        lean,
        band,
        head_length(stem),
        turn=give(rng, 24),
        away=angle,
        tilt=0.9,
        mirrored=side < 0,
        piece=rng.randrange(2),
    )


def _falls_left(stem: PictureStem, angle: float) -> bool:
    return FORMS[stem.form].facing is Facing.HANGING and math.sin(math.radians(angle)) < 0


def _twig(ring: Ring, bloom: Bloom) -> Stalk:
    """Each head is wired by a short stem to the ring behind it."""
    return Stalk(
        bloom.at,
        bloom.lean,
        ring.at(ring.angle_of(bloom.at) - 12),
        None,
        width_cm(bloom.stem) * 0.8,
        bloom.stem.green,
        bloom.band,
    )


def _leaves(ring: Ring, arrangement: Arrangement, rng: Random) -> list[Leaf]:
    """Leaves lie along the ring, one to each side in turn, so that little wire is seen."""
    greens = [stem.green for stem in arrangement.stems for _ in range(stem.count)]
    leaves = []
    long = max(1.4, ring.half * 0.2)
    count = round(math.pi * (ring.half + ring.tall) / long * LEAVES_TO_A_LENGTH)
    for index in range(count if greens else 0):
        angle = index * 360 / count + give(rng, 3)
        side = 1 if index % 2 else -1
        lean = ring.along(angle) + side * (34 + give(rng, 12))
        leaves.append(Leaf(ring.at(angle), lean, long * (1 + give(rng, 0.2)), rng.choice(greens)))
    return leaves
