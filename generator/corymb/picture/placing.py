"""Where does each head go? By use: leaf and line to the outline, filler between, focal in front.

Places come from Vogel's spiral (see `shapes.spiral`), which leaves no gap and makes no row.
"""

import math
from collections import Counter
from random import Random

from corymb.picture.arrangement import PictureStem
from corymb.picture.dome import Dome
from corymb.picture.forms import FORMS, Facing
from corymb.picture.geometry import Point
from corymb.picture.layout import Band, Bloom
from corymb.picture.seed import give
from corymb.picture.settling import Spot, settle
from corymb.picture.shapes import GOLDEN_DEGREES
from corymb.picture.stringing import is_strung, strung

MOST_HEADS = 10  # of one stem; more are too small to tell apart
ROOM = 0.45  # the widest a spray may be, as a part of the dome
LONG = 1.5  # a head so many times longer than wide is placed by its tip
ALONE = 0.3  # a leaf by itself leans so far aside, as a part of the fan
RIM = (0.8, 1.12)  # between these parts of the dome small heads look out behind large ones
SHOWN = (1.0, 0.6, 0.8)  # of short lines, by turns, so much stands above the heads
BENT = 104.0  # degrees from straight up; no stem is bent further


def head_length(stem: PictureStem) -> float:
    return stem.head_length_cm or stem.head_cm * FORMS[stem.form].length


def is_long(stem: PictureStem) -> bool:
    """Whether a stem's head is a length of stem (a spike, a spray) rather than a round head."""
    facing = FORMS[stem.form].facing
    return facing is not Facing.FRONT and head_length(stem) >= LONG * stem.head_cm


def heads_of(stem: PictureStem, room_cm: float = math.inf) -> int:
    """How many of a stem's heads are shown: where there is little room it is taken apart."""
    heads = max(1, min(MOST_HEADS, stem.heads_per_stem))
    while heads > 1 and _bunch(heads) * stem.head_cm / 2 > room_cm:
        heads -= 1
    return heads


def mixed(stems: list[PictureStem]) -> list[PictureStem]:
    """Every single stem, the kinds mixed evenly: a third of each before the next third."""
    singles = [
        ((index + 0.5) / stem.count, order, stem)
        for order, stem in enumerate(stems)
        for index in range(stem.count)
    ]
    return [stem for _, _, stem in sorted(singles, key=lambda single: single[:2])]


def place(dome: Dome, stems: tuple[PictureStem, ...], rng: Random) -> list[Bloom]:
    """All heads of an arrangement that stands in a dome."""
    long = mixed([stem for stem in stems if is_long(stem) or is_strung(stem)])
    round_ = [stem for stem in stems if not (is_long(stem) or is_strung(stem))]
    outline = _outline(dome, long, rng)
    widest = max((stem.head_cm for stem in round_ if stem.use == "focal"), default=0.0)
    spots = []
    for uses, band in (
        (("line", "foliage"), Band.BACK),
        (("filler",), Band.MIDDLE),
        (("focal",), Band.FRONT),
    ):
        spots += _disc(
            dome, mixed([stem for stem in round_ if stem.use in uses]), rng, band, widest
        )
    settle(dome, spots)
    return [*outline, *(bloom for spot in spots for bloom in _heads(dome, spot, rng))]


def _outline(dome: Dome, stems: list[PictureStem], rng: Random) -> list[Bloom]:
    """Long heads: their tips on the outline, the kinds taking turns round the fan."""
    blooms = []
    start = rng.uniform(0, 360)
    total = Counter(stem.use for stem in stems)
    seen: Counter[str] = Counter()
    for stem in stems:
        index = seen[stem.use]
        seen[stem.use] += 1
        angle = _spread(index, total[stem.use], start)
        if FORMS[stem.form].facing is Facing.HANGING:
            blooms.append(_hanging(dome, stem, index, angle, rng))
            continue
        part, band = 1 + give(rng, dome.loose), Band.BACK
        if stem.use == "line":
            angle *= dome.line_fan
            part *= dome.line_out * (1 - dome.loose * 2.2 * (index * 0.618 % 1))
            if dome.seated:
                part = min(part, _seated(dome, angle, head_length(stem) * SHOWN[index % 3]))
        else:
            angle *= dome.fan
            part *= dome.leaf_out
        if stem.use == "foliage" and total[stem.use] == 1:
            angle = math.copysign(ALONE * dome.fan, start - 180)
        if stem.use in ("filler", "focal"):
            angle *= 1 - 1 / total[stem.use]  # between the leaves, not before them
        if stem.use in ("filler", "focal") or (stem.use == "foliage" and index % 3 == 2):
            part *= 0.78 + give(rng, 0.12)
            band = _among(dome, stem, index, total[stem.use])
        blooms.extend(_long(dome, stem, dome.at(part, angle), band, rng))
    return blooms


def _seated(dome: Dome, angle: float, shown_cm: float) -> float:
    """How far out a tip may stand of which so much is to be seen above the heads."""
    return 1 + shown_cm / dome.middle.distance(dome.at(1, angle))


def _among(dome: Dome, stem: PictureStem, index: int, of: int) -> Band:
    """Among the round heads: of slim fillers one in three before them, of pods half behind."""
    if is_strung(stem):
        return Band.BACK if index % 2 else Band.MIDDLE
    slim = stem.head_cm < 0.3 * dome.half_cm
    forward = stem.use == "filler" and slim and of > 3 and index % 3 == 1
    return Band.FRONT if forward else Band.MIDDLE


def _spread(index: int, total: int, start: float) -> float:
    """A place from -1 to 1: an even row of `total`, met in the order of the golden angle.

    The even row keeps both sides full; the order keeps kinds from standing together.
    """
    order = sorted(range(total), key=lambda n: (n * GOLDEN_DEGREES + start) % 360)
    return 2 * (order.index(index) + 0.5) / total - 1


def _long(dome: Dome, stem: PictureStem, tip: Point, band: Band, rng: Random) -> list[Bloom]:
    """A spike or spray from its tip back towards the hold, stripped to what room there is."""
    blooms = []
    held = dome.hold.passed_by(tip, dome.half_cm)
    if is_strung(stem):
        lean, room = held.angle_to(tip), held.distance(tip) * 0.84
        foot = tip.towards(lean, -room)
        return strung(stem, foot, lean, room, heads_of(stem), band, rng)
    for head in range(min(3, heads_of(stem))):
        aside = 0 if head == 0 else (11 if head % 2 else -11)
        lean = max(-BENT, min(BENT, held.angle_to(tip) + aside + give(rng, 3)))
        room = held.distance(tip)
        length = min(head_length(stem), room * 0.84) * (1 - 0.12 * head)
        foot = held.towards(lean, room * (1 - 0.06 * head) - length)
        mirrored = rng.random() < 0.5
        blooms.append(
            Bloom(stem, foot, lean, band, length, mirrored=mirrored, piece=rng.randrange(2))
        )
    return blooms


def _hanging(dome: Dome, stem: PictureStem, index: int, spread: float, rng: Random) -> Bloom:
    """A trail leaves low at the side, in front; half of those that are line hang from above.

    Neither hangs further than the ground.
    """
    raised = stem.use == "line" and index % 2 == 1
    side = 1 if (index // 2 if stem.use == "line" else index) % 2 == 0 else -1
    at, lean, band = dome.at(0.5 + give(rng, 0.12), side * (118 + give(rng, 14))), 70.0, Band.FRONT
    if raised:
        side, lean, band = (1 if spread > 0 else -1), 40.0, Band.BACK
        at = dome.at(0.92 + give(rng, dome.loose), spread * dome.line_fan)
    room = max(stem.head_cm, -at.y * (0.9 if band is Band.FRONT else 0.5))
    length = min(head_length(stem), room)
    return Bloom(stem, at, side * lean, band, length, mirrored=side < 0, piece=rng.randrange(2))


def _disc(
    dome: Dome, stems: list[PictureStem], rng: Random, band: Band, widest: float
) -> list[Spot]:
    """Round heads over the dome: focal near the middle and low, others further out.

    Where the `widest` focal head takes up most of the dome, others look out at its rim.
    """
    inner = {Band.BACK: 0.5, Band.MIDDLE: 0.2, Band.FRONT: 0.0}[band]
    outer = dome.focal_reach if band is Band.FRONT else 1.0
    rim = band is Band.MIDDLE and widest > dome.crowded * dome.half_cm
    if rim:
        inner, outer = RIM
    places = _spiral_places(dome, len(stems), inner, outer, band, rng)
    spots = []
    for index, (stem, at) in enumerate(dealt(stems, places)):
        radius = stem.head_cm / 2 * _bunch(heads_of(stem, ROOM * dome.half_cm))
        edge = max(0.2, 1 - 0.75 * radius / dome.half_cm)
        last = outer if rim else min(outer + 0.12, edge)
        # One small filler in three comes forward between the focal heads.
        small = radius < 0.3 * dome.half_cm
        forward = band is Band.MIDDLE and small and index % 3 == 1
        own_band = Band.FRONT if forward else band
        spots.append(Spot(stem, at, radius, own_band, inner if rim else inner * 0.5, last))
    return spots


def _spiral_places(
    dome: Dome, count: int, inner: float, outer: float, band: Band, rng: Random
) -> list[Point]:
    """Vogel's spiral between two parts of the dome; a single head takes the middle."""
    start, places = rng.uniform(0, 360), []
    stray = dome.loose * dome.half_cm
    for index in range(count):
        share = (index + 0.5) / count if count > 1 else 0.02
        part = math.sqrt(inner**2 + (outer**2 - inner**2) * share)
        angle = start + index * GOLDEN_DEGREES
        if band is Band.BACK:
            angle = _spread(index, count, start) * dome.fan * 0.8
        at = dome.at(part, angle)
        if band is Band.FRONT:
            low = dome.middle.y + dome.focal_low * dome.down_cm
            at = Point(at.x, low + (at.y - dome.middle.y) * dome.focal_tall)
        places.append(Point(at.x + give(rng, stray), at.y + give(rng, stray)))
    return places


def dealt(stems: list[PictureStem], places: list[Point]) -> list[tuple[PictureStem, Point]]:
    """Each stem takes, of the places still free, the one farthest from others of its kind."""
    free, dealt = list(places), list[tuple[PictureStem, Point]]()
    for stem in stems:
        own = [at for kind, at in dealt if kind is stem]
        best = max(free, key=lambda at: min((at.distance(other) for other in own), default=0))
        free.remove(best)
        dealt.append((stem, best))
    return dealt


def _bunch(heads: int) -> float:
    """How much wider than one head a spray of several is."""
    return 1.0 if heads == 1 else 0.55 + 0.62 * math.sqrt(heads)


def _heads(dome: Dome, spot: Spot, rng: Random) -> list[Bloom]:
    """The head, or the several heads, of one stem that has found its place."""
    heads, stem = heads_of(spot.stem, ROOM * dome.half_cm), spot.stem
    blooms, start = [], rng.uniform(0, 360)
    spread = spot.radius - stem.head_cm / 2
    for head in range(heads):
        reach = spread * math.sqrt((head + 0.5) / heads) if heads > 1 else 0.0
        at = spot.at.towards(start + head * GOLDEN_DEGREES, reach)
        blooms.append(_head(dome, stem, at, spot.band, rng))
    return blooms


def _head(dome: Dome, stem: PictureStem, at: Point, band: Band, rng: Random) -> Bloom:
    """One round head; the further out, the more it looks past us."""
    part, angle = dome.within(at)
    lean = dome.hold.passed_by(at, dome.half_cm).angle_to(at)
    if FORMS[stem.form].facing is Facing.SIDE:
        lean = max(-BENT, min(BENT, lean + give(rng, 8)))
        at = at.towards(lean, -stem.head_cm / 2)
    return Bloom(
        stem,
        at,
        lean,
        band,
        head_length(stem),
        turn=lean * 0.25 + give(rng, 22),
        away=angle,
        tilt=1 - 0.34 * min(1.0, part) ** 2,
        mirrored=rng.random() < 0.5,
        piece=rng.randrange(2),
    )
