"""How far apart do two colours look? About 1 is just seen side by side, 20 is another colour.

CIEDE2000, by the formulas and with the constants of G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000
color-difference formula: implementation notes, supplementary test data, and mathematical
observations, Color Research and Application 30(1):21-30, 2005 (equations 2 to 22; all weights 1).

Written out here, because a studio compares tens of thousands of pairs at a time and coloraide
takes some 25 microseconds for one; a test holds the two to each other.
"""

from __future__ import annotations

from functools import lru_cache
from math import atan2, cos, exp, hypot, pi, radians, sin, sqrt, tau
from typing import NamedTuple

from coloraide import Color

Lab = tuple[float, float, float]
"""CIELAB under D65: lightness 0 to 100, red (+) or green (-), yellow (+) or blue (-)."""

_25_TO_THE_7TH = 25.0**7
_HALF_TURN = pi + 1e-12  # opposite hues are half a turn apart, whatever rounding makes of it
_6, _25, _30, _60, _63, _275 = (radians(angle) for angle in (6, 25, 30, 60, 63, 275))


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


class Between(NamedTuple):
    """What lies between two colours, and what it weighs there, by its names in table 1."""

    light: float
    chroma: float
    across: float
    """The differences of lightness and chroma, and that of hue as a length."""
    G: float
    hue: float
    """The mean hue in radians."""
    T: float
    SL: float
    SC: float
    SH: float
    RT: float


def between(one: Lab, other: Lab) -> Between:
    """The steps of the formula before they are put together (equations 2 to 21)."""
    (light_1, red_1, yellow_1), (light_2, red_2, yellow_2) = one, other
    stretch = 0.5 - 0.5 * _strong((hypot(red_1, yellow_1) + hypot(red_2, yellow_2)) / 2)
    red_1, red_2 = (1 + stretch) * red_1, (1 + stretch) * red_2
    chroma_1, chroma_2 = hypot(red_1, yellow_1), hypot(red_2, yellow_2)
    turn, hue = _hues(chroma_1 * chroma_2, atan2(yellow_1, red_1), atan2(yellow_2, red_2))
    chroma, warped = (chroma_1 + chroma_2) / 2, _warped(hue)
    return Between(
        light_2 - light_1,
        chroma_2 - chroma_1,
        2 * sqrt(chroma_1 * chroma_2) * sin(turn / 2),
        stretch,
        hue,
        warped,
        light_weight((light_1 + light_2) / 2),
        chroma_weight(chroma),
        hue_weight(chroma, warped),
        -2 * _strong(chroma) * sin(_blue_turn(hue)),
    )


def ciede2000(one: Lab, other: Lab) -> float:
    """CIEDE2000 of two colours in CIELAB (equation 22)."""
    light, chroma, across, _, _, _, for_light, for_chroma, for_hue, blues = between(one, other)
    by_light, by_chroma, by_hue = light / for_light, chroma / for_chroma, across / for_hue
    return sqrt(max(0.0, by_light**2 + by_chroma**2 + by_hue**2 + blues * by_chroma * by_hue))


def _strong(chroma: float) -> float:
    """From 0 for a grey to 1 for a strong colour: the root in equations 4 (G) and 17 (R_C)."""
    seventh = chroma**7
    return sqrt(seventh / (seventh + _25_TO_THE_7TH))


def _hues(both: float, hue_1: float, hue_2: float) -> tuple[float, float]:
    """The way from one hue to the other and the hue between them (equations 10 and 14).

    In radians. `both` is 0 where either colour is grey and has no hue.
    """
    hue_1, hue_2 = hue_1 % tau, hue_2 % tau
    turn = hue_2 - hue_1
    if both == 0:
        return 0.0, hue_1 + hue_2
    if abs(turn) <= _HALF_TURN:
        return turn, (hue_1 + hue_2) / 2
    around = tau if hue_1 + hue_2 < tau else -tau
    return turn + (tau if turn < 0 else -tau), (hue_1 + hue_2 + around) / 2


def light_weight(light: float) -> float:
    """S_L (equation 18): a difference of lightness tells less in very dark and very pale."""
    off = (light - 50) ** 2
    return 1 + 0.015 * off / sqrt(20 + off)


def chroma_weight(chroma: float) -> float:
    """S_C (equation 19): a difference of chroma tells less in strong colours."""
    return 1 + 0.045 * chroma


def hue_weight(chroma: float, warped: float = 1.0) -> float:
    """S_H (equation 20): so does one of hue, by how finely the eye tells it apart."""
    return 1 + 0.015 * chroma * warped


def _warped(hue: float) -> float:
    """T: how finely the eye tells hues apart here (equation 15)."""
    return (
        1
        - 0.17 * cos(hue - _30)
        + 0.24 * cos(2 * hue)
        + 0.32 * cos(3 * hue + _6)
        - 0.20 * cos(4 * hue - _63)
    )


def _blue_turn(hue: float) -> float:
    """Twice the angle by which chroma and hue pull on each other in the blues (equation 16)."""
    return _60 * exp(-(((hue - _275) / _25) ** 2))
