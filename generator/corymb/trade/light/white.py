"""What colour is a light of so many kelvin?

Below 4000 K a light is taken to glow as a black body does (candle, lamps, the lowest sun), from
there on to be daylight: the black body by coloraide (A. R. Robertson, Computation of correlated
color temperature and distribution temperature, Journal of the Optical Society of America
58:1528-1535, 1968); daylight by D. B. Judd, D. L. MacAdam, G. Wyszecki, Spectral distribution of
typical daylight as a function of correlated color temperature, Journal of the Optical Society of
America 54:1031-1040, 1964, with the equations of CIE 15 (4000 to 25 000 K).
"""

from __future__ import annotations

from coloraide import Color

Xy = tuple[float, float]
Xyz = tuple[float, float, float]

D65: Xy = (0.3127, 0.3290)
"""The white of a screen, and the daylight that a studio's colour numbers are true in."""

WARMEST, DAYLIGHT_FROM, BLUEST = 1000.0, 4000.0, 25000.0


def xy_of(kelvin: float) -> Xy:
    """The chromaticity (CIE 1931) of a light. Raises ValueError outside 1000 to 25 000 K."""
    if not WARMEST <= kelvin <= BLUEST:
        raise ValueError(f"a light has {WARMEST:.0f} to {BLUEST:.0f} kelvin, not {kelvin:g}")
    return daylight(kelvin) if kelvin >= DAYLIGHT_FROM else black_body(kelvin)


def black_body(kelvin: float) -> Xy:
    """Up to 4000 K."""
    x, y = Color.blackbody("xyz-d65", kelvin, scale=False).xy()
    return x, y


def daylight(kelvin: float) -> Xy:
    """From 4000 K on."""
    t = 1e3 / kelvin
    if kelvin <= 7000:
        x = _cubic(t, -4.6070, 2.9678, 0.09911, 0.244063)
    else:
        x = _cubic(t, -2.0064, 1.9018, 0.24748, 0.237040)
    return x, -3.000 * x**2 + 2.870 * x - 0.275


def xyz_of(xy: Xy) -> Xyz:
    """A white of this chromaticity, as light as white paper (Y is 1)."""
    x, y = xy
    return x / y, 1.0, (1 - x - y) / y


def _cubic(t: float, a: float, b: float, c: float, d: float) -> float:
    return ((a * t + b) * t + c) * t + d
