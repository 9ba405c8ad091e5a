"""In what way is one colour not the other: paler, duller, warmer?

Differences of lightness, of chroma and of warmth are weighed as CIEDE2000 weighs lightness,
chroma and hue, and the largest is named. That is roughly so: its stretch of greys (G) and how
finely it tells some hues apart (T) are left out. Warmth is what a turn of the hue does to the
cosine of its distance from 50 degrees, the warmest hue of L.-C. Ou, M. R. Luo, A. Woodcock,
A. Wright, A study of colour emotion and colour preference, part I, Color Research and Application
29:232-240, 2004.
"""

from __future__ import annotations

from math import atan2, cos, hypot, radians, sqrt

from corymb.language import gettext as _
from corymb.language import noted
from corymb.trade.colour.ciede2000 import Lab, chroma_weight, hue_weight, light_weight
from corymb.trade.colour.likeness import Palette, mean_lab

WARMEST_HUE = radians(50)

NEARLY_GREY = 12.0
"""Below this chroma (a house value) a white or a grey isn't duller or brighter, but warmer or
cooler."""

PLAINLY = 12.0
"""From this distance on (CIEDE2000) a change isn't called little: a house value."""

TELLING = 0.4
"""A change is named when it is this part of the distance, a house value; otherwise it is another
shade."""


PALER, DARKER = noted("paler"), noted("darker")
BRIGHTER, DULLER = noted("brighter"), noted("duller")
WARMER, COOLER = noted("warmer"), noted("cooler")
SLIGHTLY = {
    PALER: noted("a little paler"),
    DARKER: noted("a little darker"),
    BRIGHTER: noted("a little brighter"),
    DULLER: noted("a little duller"),
    WARMER: noted("a little warmer"),
    COOLER: noted("a little cooler"),
}


def colour_shift(before: Palette, after: Palette, distance: float) -> str:
    """`a little paler`, `warmer`; from what was shown to what is."""
    word, much = max(_changes(mean_lab(before), mean_lab(after)), key=lambda change: change[1])
    much_of_it = much >= TELLING * distance
    if distance < PLAINLY:
        return _(SLIGHTLY[word]) if much_of_it else _("a slightly different shade")
    return _(word) if much_of_it else _("a different shade")


def _changes(before: Lab, after: Lab) -> list[tuple[str, float]]:
    """Each change by its word and size, those first that are named when sizes are alike."""
    lighter = (after[0] - before[0]) / light_weight((before[0] + after[0]) / 2)
    brighter, warmer = _brighter_and_warmer(before, after)
    return [
        (PALER if lighter > 0 else DARKER, abs(lighter)),
        (BRIGHTER if brighter > 0 else DULLER, abs(brighter)),
        (WARMER if warmer > 0 else COOLER, abs(warmer)),
    ]


def _brighter_and_warmer(before: Lab, after: Lab) -> tuple[float, float]:
    chroma_before, chroma_after = (hypot(lab[1], lab[2]) for lab in (before, after))
    chroma = (chroma_before + chroma_after) / 2
    warm_before, warm_after = (_warmth(lab) for lab in (before, after))
    if min(chroma_before, chroma_after) < NEARLY_GREY:
        more = chroma_after * warm_after - chroma_before * warm_before
        return 0.0, more / chroma_weight(chroma)
    brighter = (chroma_after - chroma_before) / chroma_weight(chroma)
    turned = sqrt(chroma_before * chroma_after) * (warm_after - warm_before)
    return brighter, turned / hue_weight(chroma)


def _warmth(lab: Lab) -> float:
    """1 for the warmest hue, -1 for the coolest."""
    return cos(atan2(lab[2], lab[1]) - WARMEST_HUE)
