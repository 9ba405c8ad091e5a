"""What does every style share? The hold its vessel gives it, and a dome laid out in full."""

import math
from dataclasses import replace

from corymb.picture.arrangement import Arrangement
from corymb.picture.dome import Dome, Hold
from corymb.picture.fairness import Shared, shared
from corymb.picture.gaps import mend
from corymb.picture.geometry import Box, Point
from corymb.picture.layout import Bloom, Layout
from corymb.picture.placing import place
from corymb.picture.seed import dice
from corymb.picture.stems import run
from corymb.picture.vessels import kind_of, size_cm

USUAL = (1.15, 1.25)
"""How much further than the style's own leaf and line stand out of the heads."""
FURTHER, NEARER = ((1.3, 1.0), (1.3, 1.25), (1.4, 1.1)), ((1.0, 1.5), (1.0, 1.0), (1.15, 1.5))
"""What is tried where too little of leaf and line is seen, and where too much is."""
FAIR = 0.09  # so much of the picture may be another stem's than should be, and no more is tried

BOUND = ("hand", "wire")  # held by a tie: the stems below it are seen


def hold_of(arrangement: Arrangement) -> Hold:
    """Where the vessel or the tie holds the stems."""
    kind = kind_of(arrangement)
    half, high = size_cm(arrangement)
    if arrangement.vessel.kind in BOUND:
        half = tie_half_cm(arrangement)
        return Hold(Point(0, -high), half * kind.mouth, 0.0, half * kind.foot + high * 0.16)
    return Hold(
        Point(0, -high), half * kind.mouth, -kind.ends * high, half * kind.foot, crossing=0.25
    )


def tie_half_cm(arrangement: Arrangement) -> float:
    """Half the thickness of the tied stems: their cut area, packed (three quarters is stem)."""
    area: float = sum(stem.count * (0.12 + 0.032 * stem.head_cm) ** 2 for stem in arrangement.stems)
    return max(0.3, min(arrangement.across_cm * 0.09, 0.58 * math.sqrt(area / 0.75)))


def lay_dome(arrangement: Arrangement, dome: Dome) -> Layout:
    """Heads, stalks and leaves of an arrangement in a dome, and how far all of it reaches."""
    dome, blooms = _fairest(arrangement, dome)
    stalks = run(dome, blooms, dice(arrangement.id, "stalks"))
    # Where a vessel is wider than the heads its mouth is filled too.
    mouth = replace(dome, half_cm=max(dome.half_cm, dome.hold.half_cm))
    leaves = mend(mouth, blooms, arrangement.stems, dice(arrangement.id, "leaves"))
    half, high = size_cm(arrangement)
    box = Box(-half, -high, half, 0.0)
    for bloom in blooms:
        box = box.joined(bloom.reach)
    return Layout(tuple(blooms), tuple(stalks), tuple(leaves), box)


def _fairest(arrangement: Arrangement, dome: Dome) -> tuple[Dome, list[Bloom]]:
    """The first dome in which each stem shows its share, or the one that comes nearest.

    The further leaf and line stand out, the closer the heads, and the more they hide each other.
    """

    def tried(leaf: float, line: float) -> tuple[Dome, Shared]:
        out = dome.standing_out(leaf, line)
        return out, shared(place(out, arrangement.stems, dice(arrangement.id, "places")))

    best = tried(*USUAL)
    for leaf, line in FURTHER if best[1].leaf_missing > 0 else NEARER:
        if best[1].unfair < FAIR:
            break
        best = min(best, tried(leaf, line), key=lambda one: one[1].unfair)
    return best[0], best[1].blooms


def dome_over(
    arrangement: Arrangement,
    hold: Hold,
    below: float,
    middle: float,
    leaf_out: float = 1.0,
    line_out: float = 1.0,
) -> Dome:
    """A dome from `below` (a part of its height) under the hold to the arrangement's top.

    Where leaf and line stand out of the dome it is made smaller, so that the whole keeps its size.
    """
    rise = arrangement.high_cm + hold.at.y
    bottom = hold.at.y + below * rise
    tall = arrangement.high_cm + bottom
    up = tall * (1 - middle)
    centre = Point(0, bottom - tall * middle)
    half = arrangement.across_cm / 2 / leaf_out
    return Dome(
        centre, half, up / line_out, tall * middle, hold, leaf_out=leaf_out, line_out=line_out
    )
