"""Is a colour warm, cool, or neither?

Warm and cool by L.-C. Ou, M. R. Luo, A. Woodcock, A. Wright, A study of colour emotion and colour
preference, part I: colour emotions for single colours, Color Research and Application 29:232-240,
2004: WC = -0.5 + 0.02 C*^1.07 cos(h - 50 degrees), from CIELAB under D65. A grey comes out at -0.5
by it, and nobody calls grey cool: so a colour is warm above 0, cool only below a grey, and what
lies between, like most leaf green, is neither. White, grey and black are neither at any hue.
"""

from __future__ import annotations

from functools import lru_cache
from math import atan2, cos, hypot, radians
from typing import Literal

from corymb.trade.colour.ciede2000 import lab_of

Temper = Literal["warm", "cool", "neutral"]

WARM_ABOVE = 0.0
COOL_BELOW = -0.5
"""What the formula gives for a grey."""

HARDLY_A_COLOUR = 5.0
"""Below this chroma (C*) it is white, grey or black: common practice, no source."""


def warmth(hex_: str) -> float:
    """WC of a colour (`#rrggbb`): about -2 for the coolest, 2 for the warmest."""
    _, red, yellow = lab_of(hex_)
    strength: float = hypot(red, yellow) ** 1.07
    return -0.5 + 0.02 * strength * cos(atan2(yellow, red) - radians(50))


@lru_cache(maxsize=4096)
def temper(hex_: str) -> Temper:
    """Whether a colour is warm, cool or neutral."""
    _, red, yellow = lab_of(hex_)
    if hypot(red, yellow) < HARDLY_A_COLOUR:
        return "neutral"
    degree = warmth(hex_)
    return "warm" if degree > WARM_ABOVE else "cool" if degree < COOL_BELOW else "neutral"
