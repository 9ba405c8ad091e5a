"""Which head goes where on the plan? One head a stem, true to size, from the middle out.

Focal heads lie innermost, filler and accents about them, line and leaf at the edge; the order of
placing is another thing (see `numbering`): the edge is made first.
"""

import math
from dataclasses import dataclass
from statistics import median

from corymb.picture.arrangement import Arrangement, PictureStem
from corymb.picture.geometry import Point
from corymb.picture.placing import dealt, mixed
from corymb.picture.plan.numbering import in_order
from corymb.picture.plan.outlines import Fan, Ground, Long, Round, Wreath
from corymb.picture.plan.parting import parted
from corymb.picture.styles import STYLES, style_of
from corymb.picture.styles.crown import ring_of

INSIDE_OUT = (("focal",), ("filler",), ("line",), ("foliage",))
FRONT_ROUND = (("focal",), ("filler", "line", "foliage"))  # on a ring all but the focal is mixed
ALL_ROUND = (("focal", "filler", "line", "foliage"),)
FRONT_HOLDS = 5  # more focal heads than these go all the way round a ring, as in the picture
WIDEST_PART = 0.48  # no head takes more of the room's half depth: it is cut or opens less there
DEPTH = 0.42  # of a trough's flowers: so deep for their length (common practice, no source)
NUMBER = 0.037  # of the plan's width is kept between two heads however small, for their numbers
FULLNESS = 0.72
"""How near the heads come, against discs that would fill the room without a gap between them.

Heads stand at different heights, so where there is little room they lie over one another; two
heads then are this much of sqrt(room / all heads) apart, against the sum of their radii, or, in
a narrow room that leaves no such places, as near to it as `parting.LESS` allows.
"""


@dataclass(frozen=True)
class Placed:
    """One stem's head on the plan, in cm from the middle; y grows towards us."""

    number: int
    stem: PictureStem
    at: Point
    radius: float


@dataclass(frozen=True)
class Plan:
    """An arrangement from above."""

    arrangement: Arrangement
    ground: Ground
    heads: tuple[Placed, ...]
    crowding: float  # any two heads lie at least so much of their radii together apart


def plan_of(arrangement: Arrangement) -> Plan:
    """Every stem in its place."""
    style = style_of(arrangement)
    used = style.as_used(arrangement)
    ground = ground_of(used)
    numbers = {id(stem): n for n, stem in enumerate(in_order(used.stems), 1)}
    groups = [_of_uses(used.stems, uses) for uses in _order(used.stems, style.ring)]
    most = _narrowest(ground) * WIDEST_PART * 2
    stems, places = _told_apart(ground, groups, most)
    radii = [_radius(stem, most) for stem in stems]
    at, crowding = parted(
        ground,
        places,
        radii,
        crowding_of(ground.area_cm2, radii),
        ground.box.width * NUMBER,
    )
    heads = [
        Placed(numbers[id(stem)], stem, point, radius)
        for stem, point, radius in zip(stems, at, radii, strict=True)
    ]
    return Plan(used, ground, tuple(sorted(heads, key=lambda head: head.number)), crowding)


def crowding_of(room_cm2: float, radii: list[float]) -> float:
    """The part of their radii together that two heads are apart; 1 where they only touch."""
    covered = sum(math.pi * radius**2 for radius in radii)
    return min(1.0, FULLNESS * math.sqrt(room_cm2 / covered)) if covered else 1.0


def ground_of(arrangement: Arrangement) -> Ground:
    """By the style: a ring, a fan against the wall, rows in a trough; round for all else."""
    half, style = arrangement.across_cm / 2, style_of(arrangement)
    if style.ring:
        ring = ring_of(arrangement).half
        return Wreath(ring, max(0.1, half - ring))
    if style is STYLES["standing-piece"]:
        return Fan(half)
    if arrangement.vessel.kind == "trough":
        deep = half * DEPTH
        return Long(half, deep, max(2, min(4, round(2 * deep / _middling(arrangement.stems)))))
    return Round(half)


def _middling(stems: tuple[PictureStem, ...]) -> float:
    """The width that half of the heads are narrower than: by it the rows are counted."""
    widths = [stem.head_cm for stem in stems for _ in range(stem.count)]
    return median(widths) if widths else 1.0


def _narrowest(ground: Ground) -> float:
    """Half of the room's depth where it is least deep."""
    if isinstance(ground, Wreath):
        return ground.half
    return min(ground.box.width, ground.box.height) / 2


def _order(stems: tuple[PictureStem, ...], ring: bool) -> tuple[tuple[str, ...], ...]:
    """Which uses lie further in, or nearer to a ring's front, than which."""
    if not ring:
        return INSIDE_OUT
    focal = sum(stem.count for stem in stems if stem.use == "focal")
    return FRONT_ROUND if focal <= FRONT_HOLDS else ALL_ROUND


def _of_uses(stems: tuple[PictureStem, ...], uses: tuple[str, ...]) -> list[PictureStem]:
    return mixed([stem for stem in stems if stem.use in uses])


def _radius(stem: PictureStem, most: float) -> float:
    return min(stem.head_cm / 2, most)


def _told_apart(
    ground: Ground, groups: list[list[PictureStem]], most: float
) -> tuple[list[PictureStem], list[Point]]:
    """Within its group a kind takes places far from one another, as it does in the picture."""
    radii = [_radius(stem, most) for group in groups for stem in group]
    places, stems, begun = _first_places(ground, radii), list[PictureStem](), 0
    for group in groups:
        own = places[begun : begun + len(group)]
        begun += len(group)
        stems += [stem for stem, _ in sorted(dealt(group, own), key=lambda one: own.index(one[1]))]
    return stems, places


def _first_places(ground: Ground, radii: list[float]) -> list[Point]:
    """Each head as far out as the area of those further in asks for."""
    whole, before, places = sum(radius**2 for radius in radii), 0.0, []
    for index, radius in enumerate(radii):
        places.append(ground.place(index, (before + radius**2 / 2) / whole))
        before += radius**2
    return places
