"""The colours of lights against published formulas and tables.

Sources: C. S. McCamy, Color Research and Application 17:142-144, 1992, with values of
colour-science's tests; CIE 15:2004; Planck's law over the CIE 1931 observer, integrated by
colour-science; the CIE daylight locus; `data/low_sun_direct_cct.csv` (named there); handbook values
of candles.
"""

from __future__ import annotations

import csv
from itertools import pairwise
from pathlib import Path

import pytest

from corymb.trade.light.lights import CANDLE, DUSK, SHOWN, Light, low_sun
from corymb.trade.light.low_sun import air_mass, sun_kelvin
from corymb.trade.light.white import D65, Xy, black_body, daylight, xy_of

FILE = Path(__file__).parent / "data" / "low_sun_direct_cct.csv"

KELVIN = {
    "D65": ((0.31270, 0.32900), 6505.081, 0.01),
    "A": ((0.44757, 0.40745), 2857.290, 0.01),
    "D50": ((0.34567, 0.35850), 5002.10, 0.1),
    "D55": ((0.33242, 0.34743), 5502.62, 0.1),
    "D75": ((0.29902, 0.31485), 7501.81, 0.1),
    "F11": ((0.38052, 0.37713), 4009.36, 0.1),
}


def mccamy(xy: Xy) -> float:
    """The colour temperature of a chromaticity; good from 2000 to 12 500 K."""
    n = (xy[0] - 0.3320) / (xy[1] - 0.1858)
    return -449.0 * n**3 + 3525.0 * n**2 - 6823.3 * n + 5520.33


@pytest.mark.parametrize(("xy", "told", "within"), KELVIN.values(), ids=KELVIN)
def test_the_formula_that_lights_are_measured_with_gives_the_published_temperatures(
    xy: Xy, told: float, within: float
) -> None:
    assert mccamy(xy) == pytest.approx(told, abs=within)


@pytest.mark.parametrize("name", ["D50", "D55", "D65", "D75"])
def test_a_standard_daylight_of_a_temperature_has_its_published_chromaticity(name: str) -> None:
    xy, kelvin, _ = KELVIN[name]
    assert xy_of(kelvin) == pytest.approx(xy, abs=3e-4)


@pytest.mark.parametrize("light", (*SHOWN, DUSK), ids=lambda light: light.kind)
def test_a_light_has_the_colour_temperature_it_says(light: Light) -> None:
    assert mccamy(xy_of(light.kelvin)) == pytest.approx(light.kelvin, rel=0.02)


def test_daylight_s_white_is_the_screen_s() -> None:
    assert mccamy(D65) == pytest.approx(6504, abs=10)


BLACK_BODY = {
    1900: (0.5378, 0.4112),
    2500: (0.4770, 0.4137),
    3000: (0.4369, 0.4040),
    4000: (0.3804, 0.3768),
}


@pytest.mark.parametrize(("kelvin", "told"), BLACK_BODY.items(), ids=map(str, BLACK_BODY))
def test_a_glowing_body_is_as_planck_s_law_has_it(kelvin: float, told: tuple[float, float]) -> None:
    assert black_body(kelvin) == pytest.approx(told, abs=3e-4)


DAYLIGHT = {
    4000: (0.382344, 0.383766),
    5000: (0.345741, 0.358666),
    6504: (0.312714, 0.329119),
    10000: (0.278800, 0.291967),
}


@pytest.mark.parametrize(("kelvin", "told"), DAYLIGHT.items(), ids=map(str, DAYLIGHT))
def test_daylight_lies_on_the_published_line(kelvin: float, told: tuple[float, float]) -> None:
    assert daylight(kelvin) == pytest.approx(told, abs=2e-6)


def beam() -> list[dict[str, str]]:
    with FILE.open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


@pytest.mark.parametrize("row", beam(), ids=lambda row: f"{row['sun_elevation_deg']} degrees")
def test_the_sun_s_beam_is_as_warm_as_its_spectrum_makes_it(row: dict[str, str]) -> None:
    height = float(row["sun_elevation_deg"])
    assert air_mass(height) == pytest.approx(float(row["airmass_kasten_young_1989"]), abs=1e-3)
    hazy, clear = float(row["CCT_direct_AOD0.20"]), float(row["CCT_direct_AOD0.05"])
    assert hazy <= sun_kelvin(height) <= clear
    assert sun_kelvin(height) == pytest.approx(float(row["CCT_direct_AOD0.10"]), abs=40)


def test_the_higher_the_sun_the_whiter_its_light() -> None:
    for lower, higher in pairwise(range(1, 91)):
        assert sun_kelvin(lower) < sun_kelvin(higher)


@pytest.mark.parametrize("height", [-4, -0.833, 0, 0.5])
def test_a_sun_on_the_horizon_has_a_light_too(height: float) -> None:
    assert 1500 < low_sun(height).kelvin < 2100
    assert min(low_sun(height).white) > 0


def test_a_candle_is_within_the_handbooks() -> None:
    assert 1850 <= CANDLE.kelvin <= 1930


@pytest.mark.parametrize("kelvin", [0, 999, 25001, -5])
def test_what_is_no_light_is_refused(kelvin: float) -> None:
    with pytest.raises(ValueError, match="kelvin"):
        xy_of(kelvin)
