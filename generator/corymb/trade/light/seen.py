"""How does a colour look in this light, shown on a screen in daylight?

The studio's colour numbers are true in daylight (D65). A colour is carried to the light's white
(Bradford), veiled where the sun stands high, seen there by an eye that is used to the light in
part (CAM16, `cam16`), and shown in the colour that looks the same on a screen: the same lightness,
chroma and hue. What the eye doesn't make good is left as a tint, and blues lose their light where
the light has no blue.

Indicative: petals of the same colour by day may part by candle, since their spectra differ, and
numbers don't hold spectra.
"""

from __future__ import annotations

from functools import lru_cache

from coloraide import Color

from corymb.language import noted
from corymb.trade.light.cam16 import appearance, xyz_looking
from corymb.trade.light.lights import SCREEN, Light
from corymb.trade.light.matrices import from_white_to_white, times
from corymb.trade.light.white import D65, Xyz, xyz_of

INDICATIVE = noted("Indicative: a guide to what changes, not a promise of colours.")
"""What every page says that shows colours in a light."""


@lru_cache(maxsize=1 << 15)
def seen(hex_: str, light: Light) -> str:
    """The colour (`#rrggbb`) that looks so."""
    veiled = _veiled(in_light(hex_, light), light)
    look = appearance([100 * part for part in veiled], light.viewing)
    shown = xyz_looking(look.lightness, look.chroma, look.hue, SCREEN)
    return _hex(shown)


def in_light(hex_: str, light: Light) -> Xyz:
    """What comes to the eye of a colour in a light (Y is 1 for white); never less than nothing."""
    x, y, z = times(from_white_to_white(xyz_of(D65), light.white), xyz_of_hex(hex_))
    return max(0.0, x), max(0.0, y), max(0.0, z)


@lru_cache(maxsize=4096)
def xyz_of_hex(hex_: str) -> Xyz:
    """A colour in XYZ under D65, its Y 1 for white."""
    x, y, z = Color(hex_).convert("xyz-d65").coords(nans=False)
    return x, y, z


def _veiled(xyz: Xyz, light: Light) -> Xyz:
    x, y, z = (
        (1 - light.veil) * part + light.veil * white
        for part, white in zip(xyz, light.white, strict=True)
    )
    return x, y, z


def _hex(xyz: Xyz) -> str:
    """As near as a screen comes to it: each of red, green and blue is held within its ends."""
    colour = Color("xyz-d65", [part / 100 for part in xyz]).convert("srgb")
    return str(colour.clip().to_string(hex=True))
