"""How far apart do two colours look? About 1 is just seen side by side, 20 is another colour.

CIEDE2000, by the formulas and with the constants of G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000
color-difference formula: implementation notes, supplementary test data, and mathematical
observations, Color Research and Application 30(1):21-30, 2005 (equations 2 to 22; all weights 1).

Written out here, because a studio compares tens of thousands of pairs at a time and coloraide
takes some 25 microseconds for one; a test holds the two to each other.
"""

from __future__ import annotations

from functools import lru_cache
from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

from coloraide import Color

Lab = tuple[float, float, float]
"""CIELAB under D65: lightness 0 to 100, red (+) or green (-), yellow (+) or blue (-)."""

_25_TO_THE_7TH = 25.0**7


@lru_cache(maxsize=4096)
def lab_of(hex_: str) -> Lab:
    """A colour (`#rrggbb`) in CIELAB under D65."""
    light, red, yellow = Color(hex_).convert("lab-d65").coords(nans=False)
    return light, red, yellow


def difference(one: str, other: str) -> float:
    """How far apart two colours (`#rrggbb`) look; the same either way round."""
    return _difference(one, other) if one <= other else _difference(other, one)


@lru_cache(maxsize=1 << 18)
def _difference(one: str, other: str) -> float:
    return ciede2000(lab_of(one), lab_of(other)) if one != other else 0.0


def ciede2000(one: Lab, other: Lab) -> float:
    """CIEDE2000 of two colours in CIELAB."""
    (light_1, red_1, yellow_1), (light_2, red_2, yellow_2) = one, other
    stretch = 1 + _redness(hypot(red_1, yellow_1), hypot(red_2, yellow_2))
    chroma_1, hue_1 = _polar(stretch * red_1, yellow_1)
    chroma_2, hue_2 = _polar(stretch * red_2, yellow_2)
    turn, hue = _hues(chroma_1 * chroma_2, hue_1, hue_2)
    light, chroma = (light_1 + light_2) / 2, (chroma_1 + chroma_2) / 2

    by_light = (light_2 - light_1) / _light_weight(light)
    by_chroma = (chroma_2 - chroma_1) / (1 + 0.045 * chroma)
    by_hue = 2 * sqrt(chroma_1 * chroma_2) * sin(radians(turn / 2))
    by_hue /= 1 + 0.015 * chroma * _hue_weight(hue)
    blues = _blue_turn(hue, chroma) * by_chroma * by_hue
    return sqrt(max(0.0, by_light**2 + by_chroma**2 + by_hue**2 + blues))


def _redness(chroma_1: float, chroma_2: float) -> float:
    """G: how much the red-green axis is stretched near grey (equation 4)."""
    seventh = ((chroma_1 + chroma_2) / 2) ** 7
    return 0.5 * (1 - sqrt(seventh / (seventh + _25_TO_THE_7TH)))


def _polar(red: float, yellow: float) -> tuple[float, float]:
    """Chroma, and hue in degrees from 0 to 360 (equations 6 and 7)."""
    return hypot(red, yellow), degrees(atan2(yellow, red)) % 360


def _hues(both: float, hue_1: float, hue_2: float) -> tuple[float, float]:
    """The way from one hue to the other and the hue between them (equations 10 and 14).

    `both` is 0 where either colour is grey and has no hue.
    """
    turn = hue_2 - hue_1
    if both == 0:
        return 0.0, hue_1 + hue_2
    if abs(turn) <= 180:
        return turn, (hue_1 + hue_2) / 2
    around = 360 if hue_1 + hue_2 < 360 else -360
    return turn + (360 if turn < 0 else -360), (hue_1 + hue_2 + around) / 2


def _light_weight(light: float) -> float:
    """S_L (equation 16)."""
    off = (light - 50) ** 2
    return 1 + 0.015 * off / sqrt(20 + off)


def _hue_weight(hue: float) -> float:
    """T (equation 15)."""
    return (
        1
        - 0.17 * cos(radians(hue - 30))
        + 0.24 * cos(radians(2 * hue))
        + 0.32 * cos(radians(3 * hue + 6))
        - 0.20 * cos(radians(4 * hue - 63))
    )


def _blue_turn(hue: float, chroma: float) -> float:
    """R_T: chroma and hue pull on each other in the blues (equations 17 to 19, 21)."""
    turn = 30 * exp(-(((hue - 275) / 25) ** 2))
    seventh = chroma**7
    return -2 * sqrt(seventh / (seventh + _25_TO_THE_7TH)) * sin(radians(2 * turn))
