"""A page's own colour, taken from its arrangement and moved until it can be read.

WCAG 2.2 asks for a contrast of 4.5:1 between text and its ground (success criterion 1.4.3).
The tint is the most telling colour of the arrangement: colourful, and with some share of it.
Its hue is kept; lightness alone is moved, in OKLCh, until the contrast holds on the theme's
paper in light mode and on its night paper in dark mode.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from functools import cache

from coloraide import Color

from corymb.views.frame import Tint
from corymb.views.pieces import Patch, RoleShare

PAPER = "#f7f2e8"
NIGHT = "#1a1614"
ENOUGH = 4.6  # a little above 4.5, for rounding to whole sRGB values
STEPS = 60
COLOURLESS = 0.02  # OKLCh chroma below which whites and greys have no hue to speak of
LEAFY = (100, 160)  # OKLCh hues from yellow-green to green
LEAF_TELLS = 0.3  # foliage is in nearly every mix, so its colour tells little
# The three above: our own choice, no source; they suit the colours of the demo's stems.
MIDDLE = 0.18  # luminance above which a ground is light enough for dark text


def tint_of(band: Iterable[RoleShare]) -> Tint | None:
    """The tint of a page that shows this band; none when there is no colour in it."""
    patches = [patch for role in band for patch in role.patches]
    telling = max(patches, key=_telling, default=None)
    if telling is None or _telling(telling) == 0:
        return None
    return Tint(readable(telling.hex, PAPER), readable(telling.hex, NIGHT))


def _telling(patch: Patch) -> float:
    return _chroma(patch.hex) * math.sqrt(patch.percent)


@cache
def _chroma(hex_: str) -> float:
    _, chroma, hue = Color(hex_).convert("oklch").coords(nans=False)
    leafy = LEAFY[0] < hue < LEAFY[1]
    return 0.0 if chroma < COLOURLESS else chroma * (LEAF_TELLS if leafy else 1.0)


@cache
def readable(hex_: str, ground: str) -> str:
    """The colour, lightened or darkened until it can be read on `ground`, as `#rrggbb`."""
    paper = Color(ground)
    towards = 1.0 if paper.luminance() < MIDDLE else 0.0
    colour = Color(hex_).convert("oklch")
    start = colour["l"]
    for step in range(STEPS + 1):
        colour["l"] = start + (towards - start) * step / STEPS
        if _shown(colour).contrast(paper, method="wcag21") >= ENOUGH:
            break
    return _shown(colour).to_string(hex=True)


def _shown(colour: Color) -> Color:
    return Color(colour.convert("srgb").fit(method="oklch-chroma").to_string(hex=True))
