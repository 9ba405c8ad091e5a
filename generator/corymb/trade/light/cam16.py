"""How does a colour appear, in a given light, to an eye that has got used to it in part?

CIECAM16 by C. Li, Z. Li, Z. Wang, Y. Xu, M. R. Luo, G. Cui, M. Melgosa, M. H. Brill, M. Pointer,
Comprehensive color solutions: CAM16, CAT16, and CAM16-UCS, Color Research and Application
42:703-718, 2017. Written out here and not taken from coloraide, since there the degree of
adaptation can't be told; a test holds the two to each other.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from math import atan2, copysign, cos, degrees, exp, hypot, radians, sin, sqrt
from typing import NamedTuple

from corymb.trade.light.matrices import CAT16, CAT16_BACK, times
from corymb.trade.light.white import Xyz

C, N_C = 0.69, 1.0
"""Surround `average`: what lies around is about as bright as the flowers."""


class Appearance(NamedTuple):
    """The correlates of a colour's appearance."""

    lightness: float
    """J, 0 to 100."""
    chroma: float
    """C."""
    hue: float
    """h, in degrees."""
    brightness: float
    """Q."""
    colourfulness: float
    """M."""


def adaptation(luminance: float, surround: float = 1.0) -> float:
    """D: how far the eye gets used to the light's colour, 0 to 1.

    `luminance` is that of the adapting field in candelas per square metre; `surround` is F: 1.0
    in daylight, 0.9 in a dim room, 0.8 in the dark.
    """
    return min(1.0, max(0.0, surround * (1 - exp(-(luminance + 42) / 92) / 3.6)))


@dataclass(frozen=True)
class Viewing:
    """A light, and an eye that is used to it to a degree."""

    white: Xyz
    """Of white paper in this light; its Y is 100."""
    luminance: float
    """L_A: of the adapting field, in candelas per square metre."""
    degree: float
    """D, 0 to 1."""
    background: float = 20.0
    """Y_b: how light what lies around is, 100 for white."""

    @cached_property
    def gains(self) -> tuple[float, float, float]:
        """What getting used to the light does to the three cones."""
        r, g, b = (
            self.degree * self.white[1] / cone + 1 - self.degree
            for cone in times(CAT16, self.white)
        )
        return r, g, b

    @cached_property
    def f_l(self) -> float:
        k = 1 / (5 * self.luminance + 1)
        bright = (5 * self.luminance) ** (1 / 3)
        return float(0.2 * k**4 * 5 * self.luminance + 0.1 * (1 - k**4) ** 2 * bright)

    @cached_property
    def n(self) -> float:
        return self.background / self.white[1]

    @cached_property
    def n_bb(self) -> float:
        return float(0.725 * (1 / self.n) ** 0.2)

    @cached_property
    def z(self) -> float:
        return 1.48 + sqrt(self.n)

    @cached_property
    def of_white(self) -> float:
        """A_w."""
        return self.response(self.cones(self.white))

    def cones(self, xyz: Sequence[float]) -> tuple[float, float, float]:
        """R'_a, G'_a, B'_a of a colour."""
        r, g, b = (
            _pressed(self.f_l * gain * cone)
            for gain, cone in zip(self.gains, times(CAT16, xyz), strict=True)
        )
        return r, g, b

    def response(self, cones: tuple[float, float, float]) -> float:
        """A: the response to lightness."""
        r, g, b = cones
        return (2 * r + g + b / 20) * self.n_bb


def appearance(xyz: Sequence[float], viewing: Viewing) -> Appearance:
    """Of a colour as it comes to the eye in this light (Y is 100 for white)."""
    r, g, b = cones = viewing.cones(xyz)
    red, yellow = r - 12 * g / 11 + b / 11, (r + g - 2 * b) / 9
    hue = degrees(atan2(yellow, red)) % 360
    light = max(0.0, viewing.response(cones) / viewing.of_white)
    lightness = 100 * light ** (C * viewing.z)
    total = r + g + 1.05 * b + 0.305
    t = _scale(hue, viewing) * hypot(red, yellow) / total if total > 0 else 0.0
    chroma = t**0.9 * sqrt(lightness / 100) * _of_background(viewing)
    stretch = viewing.f_l**0.25
    brightness = 4 / C * sqrt(lightness / 100) * (viewing.of_white + 4) * stretch
    return Appearance(lightness, chroma, hue, brightness, chroma * stretch)


def xyz_looking(lightness: float, chroma: float, hue: float, viewing: Viewing) -> Xyz:
    """The colour that looks so in this light (Y is 100 for white); black where it has no light."""
    if lightness <= 0:
        return 0.0, 0.0, 0.0
    t = (chroma / (sqrt(lightness / 100) * _of_background(viewing))) ** (1 / 0.9)
    p2 = viewing.of_white * (lightness / 100) ** (1 / (C * viewing.z)) / viewing.n_bb
    turn = radians(hue)
    size = (
        23
        * (p2 + 0.305)
        * t
        / (23 * _scale(hue, viewing) + 11 * t * cos(turn) + 108 * t * sin(turn))
    )
    red, yellow = size * cos(turn), size * sin(turn)
    cones = (
        (460 * p2 + 451 * red + 288 * yellow) / 1403,
        (460 * p2 - 891 * red - 261 * yellow) / 1403,
        (460 * p2 - 220 * red - 6300 * yellow) / 1403,
    )
    eased = [
        _eased(cone) / viewing.f_l / gain for cone, gain in zip(cones, viewing.gains, strict=True)
    ]
    return times(CAT16_BACK, eased)


def _scale(hue: float, viewing: Viewing) -> float:
    """What hue differences count for at this hue: e_t with the constants of t."""
    return 50000 / 13 * N_C * viewing.n_bb * 0.25 * (cos(radians(hue) + 2) + 3.8)


def _of_background(viewing: Viewing) -> float:
    return float((1.64 - 0.29**viewing.n) ** 0.73)


def _pressed(signal: float) -> float:
    """The cones' response, which grows ever more slowly (without the 0.1 of noise, which falls
    out of every sum but the two that name it)."""
    part = (abs(signal) / 100) ** 0.42
    return copysign(400 * part / (part + 27.13), signal)


def _eased(response: float) -> float:
    """The signal behind a response; those beyond the most there can be are held just below it."""
    size = min(abs(response), 399.99)
    return copysign(100 * (27.13 * size / (400 - size)) ** (1 / 0.42), response)
