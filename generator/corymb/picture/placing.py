"""Where does each head go? By use: leaf and line to the outline, filler between, focal in front.

Places come from Vogel's spiral (see `shapes.spiral`), which leaves no gap and no row; then the
heads settle, as they do in the hand, until none hides another.
"""

import math
from collections import Counter
from dataclasses import dataclass
from random import Random

from corymb.picture.arrangement import PictureStem
from corymb.picture.dome import Dome
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Point
from corymb.picture.layout import Band, Bloom
from corymb.picture.seed import give
from corymb.picture.shapes import GOLDEN_ANGLE

GOLDEN_DEGREES = math.degrees(GOLDEN_ANGLE)
MOST_HEADS = 7  # of one stem; more are too small to tell apart
SETTLING = 26  # rounds of pushing apart; more change nothing one can see


@dataclass
class Spot:
    """A stem's top while it is looking for its place."""

    stem: PictureStem
    at: Point
    radius: float
    band: Band
    inner: float = 0.0
    outer: float = 1.0


def is_long(stem: PictureStem) -> bool:
    """Whether a stem's head is a length of stem (a spike, a spray) rather than a round head."""
    return FORMS[stem.form].may_be_cut


def head_length(stem: PictureStem) -> float:
    return stem.head_length_cm or stem.head_cm * FORMS[stem.form].length


def heads_of(stem: PictureStem) -> int:
    return max(1, min(MOST_HEADS, stem.heads_per_stem))


def mixed(stems: list[PictureStem]) -> list[PictureStem]:
    """Every single stem, the kinds mixed evenly so that none keeps to one side."""
    singles = [
        ((index + 0.5) / stem.count, order, stem)
        for order, stem in enumerate(stems)
        for index in range(stem.count)
    ]
    return [stem for _, _, stem in sorted(singles, key=lambda single: single[:2])]


def place(dome: Dome, stems: tuple[PictureStem, ...], rng: Random) -> list[Bloom]:
    """All heads of an arrangement that stands in a dome."""
    long = mixed([stem for stem in stems if is_long(stem)])
    round_ = [stem for stem in stems if not is_long(stem)]
    outline = _outline(dome, long, rng)
    spots = [
        *_disc(dome, mixed([s for s in round_ if s.use in ("line", "foliage")]), rng, Band.BACK),
        *_disc(dome, mixed([s for s in round_ if s.use == "filler"]), rng, Band.MIDDLE),
        *_disc(dome, mixed([s for s in round_ if s.use == "focal"]), rng, Band.FRONT),
    ]
    settle(dome, spots)
    return [*outline, *(bloom for spot in spots for bloom in _heads(dome, spot, rng))]


def _outline(dome: Dome, stems: list[PictureStem], rng: Random) -> list[Bloom]:
    """Long forms: tips on the outline, spread over the fan by the golden angle."""
    blooms = []
    start = rng.uniform(0, 360)
    total = Counter(stem.use for stem in stems)
    seen: Counter[str] = Counter()
    for stem in stems:
        index = seen[stem.use]
        seen[stem.use] += 1
        fan = dome.line_fan if stem.use == "line" else dome.fan
        angle = _spread(index, total[stem.use], start) * fan
        part = dome.outer * (1 + give(rng, dome.loose))
        band = Band.BACK
        if stem.use in ("filler", "focal") or (stem.use == "foliage" and index % 3 == 2):
            part *= 0.72 + give(rng, 0.12)
            band = Band.MIDDLE
        tip = dome.at(part, angle)
        if FORMS[stem.form].facing is Facing.HANGING:
            blooms.append(_hanging(dome, stem, index, rng))
        else:
            blooms.extend(_long(dome, stem, tip, band, rng))
    return blooms


def _spread(index: int, total: int, start: float) -> float:
    """A place from -1 to 1: an even row of `total`, met in the order of the golden angle.

    The even row keeps both sides full; the order keeps kinds from standing together.
    """
    order = sorted(range(total), key=lambda n: (n * GOLDEN_DEGREES + start) % 360)
    return 2 * (order.index(index) + 0.5) / total - 1


def _long(dome: Dome, stem: PictureStem, tip: Point, band: Band, rng: Random) -> list[Bloom]:
    """A spike or spray from its tip back towards the hold, cut to what room there is."""
    blooms = []
    held = dome.hold.passed_by(tip, dome.half_cm)
    for head in range(min(3, heads_of(stem))):
        lean = held.angle_to(tip) + (0 if head == 0 else (11 if head % 2 else -11))
        lean = max(-104.0, min(104.0, lean + give(rng, 3)))
        room = held.distance(tip)
        length = min(head_length(stem), room * 0.84) * (1 - 0.12 * head)
        foot = held.towards(lean, room * (1 - 0.06 * head) - length)
        blooms.append(
            Bloom(
                stem, foot, lean, band, length, mirrored=rng.random() < 0.5, piece=rng.randrange(2)
            )
        )
    return blooms


def _hanging(dome: Dome, stem: PictureStem, index: int, rng: Random) -> Bloom:
    """A trail leaves low at the side, in front, and hangs no further than the ground."""
    side = 1 if index % 2 == 0 else -1
    at = dome.at(0.62 + give(rng, 0.12), side * (112 + give(rng, 14)))
    room = max(stem.head_cm, (dome.hold.end_y - at.y) * 0.9)
    length = min(head_length(stem), room)
    return Bloom(
        stem, at, side * 70.0, Band.FRONT, length, mirrored=side < 0, piece=rng.randrange(2)
    )


def _disc(dome: Dome, stems: list[PictureStem], rng: Random, band: Band) -> list[Spot]:
    """Round heads over the dome: focal near the middle and low, others further out."""
    start, spots = rng.uniform(0, 360), []
    inner = {Band.BACK: 0.5, Band.MIDDLE: 0.2, Band.FRONT: 0.0}[band]
    outer = dome.focal_reach if band is Band.FRONT else 1.0
    for index, stem in enumerate(stems):
        radius = stem.head_cm / 2 * _bunch(heads_of(stem))
        edge = max(0.2, 1 - 0.75 * radius / dome.half_cm)
        last = min(outer, edge)
        share = (index + 0.5) / len(stems) if len(stems) > 1 else 0.02
        part = math.sqrt(inner**2 + max(0.0, last**2 - inner**2) * share)
        angle = start + index * GOLDEN_DEGREES
        if band is Band.BACK:
            angle = _spread(index, len(stems), start) * dome.fan * 0.8
        at = dome.at(part, angle)
        low = dome.focal_low * dome.down_cm if band is Band.FRONT else 0.0
        stray = dome.loose * dome.half_cm
        at = Point(at.x + give(rng, stray), at.y + low + give(rng, stray))
        spots.append(Spot(stem, at, radius, band, inner * 0.5, min(last + 0.12, edge)))
    return spots


def _bunch(heads: int) -> float:
    """How much wider than one head a spray of several is."""
    return 1.0 if heads == 1 else 0.55 + 0.62 * math.sqrt(heads)


def settle(dome: Dome, spots: list[Spot]) -> None:
    """Push heads apart until they share the dome; the smaller one gives way more."""
    covered = sum(math.pi * spot.radius**2 for spot in spots)
    if not spots:
        return
    close = min(1.08, max(0.5, 0.88 * math.sqrt(dome.area_cm2 / covered)))
    for _ in range(SETTLING):
        for i, one in enumerate(spots):
            for other in spots[:i]:
                _part(one, other, close)
        for spot in spots:
            part, angle = dome.within(spot.at)
            kept = min(spot.outer, max(spot.inner, part))
            if kept != part:
                spot.at = spot.at.between(dome.at(kept, angle), 0.7)


def _part(one: Spot, other: Spot, close: float) -> None:
    dx, dy = one.at.x - other.at.x, one.at.y - other.at.y
    apart, want = math.hypot(dx, dy) or 0.01, close * (one.radius + other.radius)
    if apart >= want:
        return
    push = (want - apart) / apart * 0.4
    share = other.radius / (one.radius + other.radius)
    one.at = Point(one.at.x + dx * push * share, one.at.y + dy * push * share)
    other.at = Point(other.at.x - dx * push * (1 - share), other.at.y - dy * push * (1 - share))


def _heads(dome: Dome, spot: Spot, rng: Random) -> list[Bloom]:
    """The head, or the several heads, of one stem that has found its place."""
    heads, stem = heads_of(spot.stem), spot.stem
    blooms, start = [], rng.uniform(0, 360)
    spread = spot.radius - stem.head_cm / 2
    for head in range(heads):
        reach = spread * math.sqrt((head + 0.5) / heads) if heads > 1 else 0.0
        at = spot.at.towards(start + head * GOLDEN_DEGREES, reach)
        part, angle = dome.within(at)
        lean = dome.hold.passed_by(at, dome.half_cm).angle_to(at)
        if FORMS[stem.form].facing is Facing.SIDE:
            lean += give(rng, 8)
            at = at.towards(lean, -stem.head_cm / 2)
        length = head_length(stem)
        blooms.append(
            Bloom(
                stem,
                at,
                lean,
                spot.band,
                length,
                turn=lean * 0.25 + give(rng, 22),
                away=angle,
                tilt=1 - 0.34 * min(1.0, part) ** 2,
                mirrored=rng.random() < 0.5,
                piece=rng.randrange(2),
            )
        )
    return blooms
