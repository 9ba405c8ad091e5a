"""Which plain colour word would someone use for this colour when looking for it?

The families are our own, wide on purpose, for filtering a list: by OKLCh hue, with lightness
and chroma telling white, cream, brown and near-black apart. The borders are house values set
by eye on the demo's stems.
"""

from __future__ import annotations

from functools import cache

from coloraide import Color

WORDS = (
    "white",
    "cream",
    "yellow",
    "orange",
    "red",
    "pink",
    "plum",
    "purple",
    "blue",
    "green",
    "brown",
)
HUES = ((20, "pink"), (42, "red"), (75, "orange"), (108, "yellow"), (165, "green"), (285, "blue"))
PALE = 0.93
FAINT = 0.035
DULL = 0.055


@cache
def colour_word(hex_: str) -> str:
    """The family a colour (`#rrggbb`) belongs to: one of WORDS."""
    light, chroma, hue = Color(hex_).convert("oklch").coords(nans=False)
    if chroma < FAINT:
        return "white" if light > 0.85 else "brown"
    if light > PALE and chroma < 0.06:
        return "cream"
    if chroma < DULL and light < 0.6 and not 108 < hue < 200:
        return "brown"
    return _by_hue(light, chroma, hue)


def _by_hue(light: float, chroma: float, hue: float) -> str:
    if hue >= 285:
        family = "purple" if hue < 325 else "pink"
    else:
        family = next(word for border, word in HUES if hue < border)
    if family == "pink" and light < 0.5:
        return "plum"
    if family == "red" and light > 0.7:
        return "pink"
    if family == "orange" and light < 0.5:
        return "brown"
    return family
