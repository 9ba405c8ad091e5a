"""How warm is the light of the sun itself, by its height?

The lower it stands the more air its light comes through, and the more of its blue is lost on the
way. In mired (a million over kelvin) the loss is nearly a straight line over the air mass. The
line is fitted to colour temperatures of the direct beam worked out with SPECTRL2 (R. E. Bird,
C. Riordan, Simple solar spectral model for direct and diffuse irradiance, Journal of Climate and
Applied Meteorology 25:87-97, 1986) for fairly clear air (aerosol optical depth 0.10) from 2 to 60
degrees; it lies within 40 K of them. The air mass is that of F. Kasten, A. T. Young, Revised
optical air mass tables and approximation formula, Applied Optics 28:4735-4738, 1989.

Haze makes the sun redder, clean air after rain whiter; and what stands in the sun gets blue light
from the sky besides.
"""

from __future__ import annotations

from math import radians, sin

AT_NO_AIR, A_MASS_OF_AIR = 170.0, 16.2
"""Mired of the line: without air, and more for each mass of air."""

LOWEST, HIGHEST = 1.0, 90.0
"""Below a degree above the horizon hardly any of the beam comes through."""


def air_mass(height: float) -> float:
    """How many times as much air as straight above; height in degrees above the horizon."""
    bent: float = 0.50572 * (height + 6.07995) ** -1.6364
    return 1 / (sin(radians(height)) + bent)


def sun_kelvin(height: float) -> float:
    """The colour temperature of the direct beam, for a sun so many degrees high."""
    mass = air_mass(min(max(height, LOWEST), HIGHEST))
    return 1e6 / (AT_NO_AIR + A_MASS_OF_AIR * mass)
