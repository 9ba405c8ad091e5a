"""What part does a colour play in a mix: depth, light or accent?

By itself it is what its lightness and strength make it. Where a recipe gives it a role it counts
as called unless it is plainly otherwise: plainly lighter or darker than the mix, or an accent that
takes so much that it is no accent any more. What is of the mix's middle, as green leaves mostly
are, may be called either.
"""

from __future__ import annotations

from corymb.studio.models import ColourThresholds
from corymb.trade.colour.ciede2000 import lab_of
from corymb.trade.colour.tally import Measures, oklch_of

STRONG = 0.09
STRONGER = 1.6
"""A colour that is strong (chroma in OKLCh) and so many times stronger than its mix catches the
eye, whether it is light or dark. House values: common practice, no source."""

PLAINLY = 3.0
MIDDLE = 0.5
"""So much lighter or darker than the mix (L*), and so many times what its lightness varies by (its
standard deviation), is plainly so: common practice, no source. Where half of a mix is dark and
half is pale, all of it lies twice as far from the mean as this middle goes."""


def part_played(hex_: str, share: float, measures: Measures, limits: ColourThresholds) -> str:
    """What a colour with such a share of a mix does there: accent, light or depth.

    However strong, what takes more than an accent may sets the colour of the whole and is none.
    """
    strength = oklch_of(hex_)[1]
    strong = strength >= STRONG and strength > STRONGER * measures.strength
    if strong and not too_much(share, limits):
        return "accent"
    return _end(lab_of(hex_)[0], measures)


def part_as_called(
    role: str, lightness: float, share: float, measures: Measures, limits: ColourThresholds
) -> str:
    """The role itself, or what is plainly played instead.

    `lightness` (L*) is a colour's own or a line's mean, `share` what the whole line takes.
    """
    end = _end(lightness, measures)
    if role == "accent":
        return end if too_much(share, limits) else role
    middle = max(PLAINLY, MIDDLE * measures.spread)
    return end if abs(lightness - measures.lightness) > middle else role


def too_much(share: float, limits: ColourThresholds) -> bool:
    """Whether something takes more of the whole than an accent may."""
    return share > float(limits.accent_above.fraction)


def _end(lightness: float, measures: Measures) -> str:
    return "light" if lightness > measures.lightness else "depth"
