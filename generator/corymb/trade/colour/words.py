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
    "grey",
    "brown",
)
HUES = ((19, "pink"), (42, "red"), (75, "orange"), (108, "yellow"), (175, "green"), (285, "blue"))
"""Where each family ends, in degrees of OKLCh hue, from 0 upwards."""

GREY = 0.03
"""Below this chroma a colour has no family of its own."""


@cache
def colour_word(hex_: str) -> str:
    """The family a colour (`#rrggbb`) belongs to: one of WORDS."""
    light, chroma, hue = Color(hex_).convert("oklch").coords(nans=False)
    if light > 0.86 and chroma < 0.075 and 60 < hue < 115:
        return "cream" if chroma > 0.025 else "white"
    if chroma < GREY:
        return "white" if light > 0.88 else "grey" if light > 0.44 else "brown"
    return _by_hue(light, chroma, hue)


def _by_hue(light: float, chroma: float, hue: float) -> str:
    if hue >= 285:
        family = "purple" if hue < 340 else "pink"
    else:
        family = next(word for border, word in HUES if hue < border)
    if family == "purple" and light < 0.4 and hue > 310:
        return "plum"
    if (
        family in ("pink", "red")
        and chroma >= 0.06
        and light < (0.48 if family == "pink" else 0.36)
    ):
        return "plum"
    if family == "red" and light > 0.66:
        return "pink"
    dull = light < 0.66 and chroma < (0.06 if family == "red" else 0.095)
    if family in ("red", "orange", "yellow") and (dull or (family != "red" and light < 0.5)):
        return "brown"
    return family
