"""In which lights are flowers looked at, and what is each like?

Colour temperatures of candles and lamps are handbook values (candle 1900 K, warm lamps 2700 K,
cool lamps 4000 K); how bright it is, how far the eye gets used to it and what sun on petals veils
are house values, common practice, no source. All of it is indicative: no two rooms or skies are
alike.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from math import pi

from corymb.language import noted
from corymb.trade.light.cam16 import Viewing, adaptation
from corymb.trade.light.low_sun import sun_kelvin
from corymb.trade.light.white import D65, Xyz, xy_of, xyz_of

LOW_UP_TO = 12.0
"""A sun below this many degrees is called low."""

VEIL_FROM, VEIL_FULL, VEIL_MOST = 25.0, 60.0, 0.05
"""Sun that stands high lies on petals as a white sheen: none up to the first height, in degrees,
growing to this share of white light at the second."""

SKY_IN_SHADE, SKY_AT_DUSK = 7500.0, 9000.0
NOON, CANVAS = 6000.0, 5200.0


@dataclass(frozen=True)
class Light:
    """One light that flowers are looked at in."""

    kind: str
    """`noon`, `low sun`, `shade`, `window`, `dusk`, `canvas`, `candle` or a kind of lamps."""
    name: str
    """How it is called on a page."""
    kelvin: float
    lux: float
    """How much of it falls on the flowers."""
    surround: float = 1.0
    """F: 1.0 for a bright place, 0.9 for a dim room, 0.8 for a dark one."""
    veil: float = 0.0
    """Share of white light that lies over the colours."""
    full: bool = False
    """Whether the eye is wholly used to it, as to every daylight."""

    @cached_property
    def white(self) -> Xyz:
        """Of white paper in it; its Y is 1."""
        return xyz_of(xy_of(self.kelvin))

    @property
    def dim(self) -> bool:
        """Whether dark flowers have too little light to be told from the dark around them."""
        return self.lux < DIM_BELOW

    @cached_property
    def viewing(self) -> Viewing:
        """The eye in it: a field of a fifth of white's luminance, lux x 0.2 / pi."""
        luminance = min(self.lux * 0.2 / pi, SCREEN.luminance)
        degree = 1.0 if self.full else adaptation(luminance, self.surround)
        x, y, z = self.white
        return Viewing((100 * x, 100 * y, 100 * z), luminance, degree)


DIM_BELOW = 50.0

_X, _Y, _Z = xyz_of(D65)
SCREEN = Viewing((100 * _X, 100 * _Y, 100 * _Z), luminance=64.0, degree=1.0)
"""Where the colours are looked at in the end: sRGB's white, with 64 candelas per square metre as
CAM16 is commonly set for a screen. Brighter lights are taken to be as bright as this, since a
screen can't be brighter than it is."""


def noon(height: float = 50.0, name: str = noted("noon daylight")) -> Light:
    """Sun and sky, with the sun so many degrees high."""
    rise = (height - VEIL_FROM) / (VEIL_FULL - VEIL_FROM)
    veil = VEIL_MOST * min(1.0, max(0.0, rise))
    return Light("noon", name, NOON, 80_000, veil=veil, full=True)


def low_sun(height: float = 5.0) -> Light:
    """The sun itself, so many degrees high, with little else."""
    return Light("low sun", noted("low sun"), sun_kelvin(height), 10_000, surround=0.9)


SHADE = Light("shade", noted("open shade"), SKY_IN_SHADE, 8_000, full=True)
WINDOW = replace(SHADE, kind="window", name=noted("daylight from a window"))
"""As in open shade it is the sky that lights, not the sun."""
DUSK = Light("dusk", noted("dusk"), SKY_AT_DUSK, 100, surround=0.9)
UNDER_CANVAS = Light("canvas", noted("daylight under canvas"), CANVAS, 3_000, full=True)
CANDLE = Light("candle", noted("candlelight"), 1900, 15, surround=0.8)
WARM_LAMPS = Light("warm lamps", noted("warm lamps"), 2700, 150, surround=0.9)
COOL_LAMPS = Light("cool lamps", noted("cool lamps"), 4000, 300)

NAMED = {light.kind: light for light in (CANDLE, WARM_LAMPS, COOL_LAMPS)}
"""Lights that an order may name, beside daylight."""

SHOWN = (noon(), low_sun(), SHADE, UNDER_CANVAS, CANDLE, WARM_LAMPS, COOL_LAMPS)
"""Those that any arrangement can be shown in."""
