"""What does one stem add to what is measured of a mix?

All that is measured of a mix is worked out from sums over its visible area, so a stem more or
less is a sum more or less, and trying a thousand changes takes no time.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from math import cos, degrees, log, radians, sin, sqrt
from typing import NamedTuple

from coloraide import Color

from corymb.studio.models import Stem
from corymb.trade.colour.areas import visible_area
from corymb.trade.colour.ciede2000 import difference, lab_of
from corymb.trade.colour.warmth import temper
from corymb.trade.room import ALL, Room

GREY = 0.03
"""Below this chroma (OKLCh) a colour has no hue that counts."""


class Backing(NamedTuple):
    """The cloth or wall that a mix is seen against."""

    hex: str
    within: float
    """A colour nearer to it than this (CIEDE2000) is lost against it."""


class Tally(NamedTuple):
    """Sums over an area in square centimetres."""

    area: float
    light: float
    light_squared: float
    warm: float
    cool: float
    strength: float
    """Chroma (OKLCh)."""
    hued: float
    """Chroma of what has a hue, and in the next two its direction: cosine and sine."""
    east: float
    north: float
    contrast: float
    """CIEDE2000 from the backing."""
    lost: float
    """Area that is lost against it."""

    def plus(self, other: Tally, times: float = 1.0) -> Tally:
        """With so many times another; a number below 0 takes away."""
        return Tally(*(mine + times * its for mine, its in zip(self, other, strict=True)))


NEXT_TO_NOTHING = 1e-9
"""What sums may be off by once stems have been taken away again."""

NOTHING = Tally(*(0.0 for _ in Tally._fields))


class Measures(NamedTuple):
    """What is said of a mix as a whole."""

    lightness: float
    """Mean CIELAB lightness of what is seen, 0 to 100."""
    spread: float
    """Standard deviation of lightness over the area (of a population)."""
    warm: float
    cool: float
    """Shares of the area, 0 to 1; what is neither makes up the rest."""
    strength: float
    """Mean chroma (OKLCh)."""
    hue_spread: float
    """Circular standard deviation of OKLCh hue in degrees, weighted by chroma and area."""
    contrast: float | None
    """Mean CIEDE2000 from the cloth or wall behind, where there is one."""
    lost: float | None
    """Share of the area that is lost against it."""


@lru_cache(maxsize=4096)
def oklch_of(hex_: str) -> tuple[float, float, float]:
    """Lightness (0 to 1), chroma and hue (degrees) of a colour, in OKLCh."""
    light, chroma, hue = Color(hex_).convert("oklch").coords(nans=False)
    return light, chroma, hue


@lru_cache(maxsize=8192)
def tally_of_colour(hex_: str, backing: Backing | None) -> Tally:
    """Of one square centimetre of a colour."""
    light, (_, chroma, hue) = lab_of(hex_)[0], oklch_of(hex_)
    turn, hued = radians(hue), chroma if chroma >= GREY else 0.0
    apart = difference(hex_, backing.hex) if backing else 0.0
    return Tally(
        area=1.0,
        light=light,
        light_squared=light**2,
        warm=float(temper(hex_) == "warm"),
        cool=float(temper(hex_) == "cool"),
        strength=chroma,
        hued=hued,
        east=hued * cos(turn),
        north=hued * sin(turn),
        contrast=apart,
        lost=float(backing is not None and apart < backing.within),
    )


def tally_of_stem(stem: Stem, backing: Backing | None, room: Room = ALL) -> Tally:
    """Of all that one stem shows where there is so much room."""
    return added(
        (tally_of_colour(part.hex, backing), visible_area(stem, room) * float(part.share or 0))
        for part in stem.colours
    )


def added(parts: Iterable[tuple[Tally, float]]) -> Tally:
    """The sum of some, each so many times."""
    total = NOTHING
    for tally, times in parts:
        total = total.plus(tally, times)
    return total


def measures_of(tally: Tally, backing: Backing | None) -> Measures:
    """Raises ValueError where nothing is seen."""
    area = tally.area
    if area <= 0:
        raise ValueError("no colours to measure")
    lightness = tally.light / area
    return Measures(
        lightness=lightness,
        spread=sqrt(max(0.0, tally.light_squared / area - lightness**2)),
        warm=tally.warm / area,
        cool=tally.cool / area,
        strength=tally.strength / area,
        hue_spread=_hue_spread(tally),
        contrast=tally.contrast / area if backing else None,
        lost=tally.lost / area if backing else None,
    )


def _hue_spread(tally: Tally) -> float:
    """K. V. Mardia, P. E. Jupp, Directional Statistics, 2000, section 2.3; 0 for greys alone."""
    if tally.hued <= NEXT_TO_NOTHING * tally.area:
        return 0.0
    together = sqrt(tally.east**2 + tally.north**2) / tally.hued
    return degrees(sqrt(-2 * log(min(1.0, max(together, 1e-9)))))
