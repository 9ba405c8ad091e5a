"""Colours, mixes and appearance against published values and other libraries' figures.

Sources: `data/srgb_reference.csv` and `data/adaptation.csv` (named there); B. Ottosson, A
perceptual color space for image processing, 2020, table of test values; L.-C. Ou and others, Color
Research and Application 29:232-240, 2004, with values that materialyoucolor gives too; C. Li and
others, Color Research and Application 42:703-718, 2017, with values of colour-science's tests;
coloraide's CAM16.
"""

from __future__ import annotations

import csv
from itertools import product
from math import isfinite
from pathlib import Path

import pytest
from coloraide import Color
from coloraide.spaces.cam16 import Environment, xyz_to_cam

from corymb.trade.colour.ciede2000 import difference, lab_of
from corymb.trade.colour.tally import added, measures_of, oklch_of, tally_of_colour
from corymb.trade.colour.warmth import temper, warmth
from corymb.trade.light.cam16 import Viewing, adaptation, appearance, xyz_looking
from corymb.trade.light.lights import CANDLE, SHOWN, Light
from corymb.trade.light.matrices import BRADFORD, CAT16, carried, from_white_to_white
from corymb.trade.light.seen import in_light, seen, xyz_of_hex
from corymb.trade.light.white import D65, xyz_of

D50 = (0.3457, 0.3585)
"""CIE 15:2004; the light that printed colours are judged in."""

DATA = Path(__file__).parent / "data"


def rows(name: str) -> list[dict[str, str]]:
    with (DATA / name).open(encoding="utf-8", newline="") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("# ")))


def numbers(row: dict[str, str], *keys: str) -> list[float]:
    return [float(row[key]) for key in keys]


@pytest.mark.parametrize("row", rows("srgb_reference.csv"), ids=lambda row: row["name"])
def test_a_colour_s_number_comes_out_as_published_in_every_space_used(row: dict[str, str]) -> None:
    hex_ = row["hex"]
    assert xyz_of_hex(hex_) == pytest.approx(numbers(row, "X", "Y", "Z"), abs=1e-4)
    assert lab_of(hex_) == pytest.approx(numbers(row, "L_d65", "a_d65", "b_d65"), abs=0.03)
    ok = Color("oklch", oklch_of(hex_)).convert("oklab").coords()
    assert ok == pytest.approx(numbers(row, "okL", "oka", "okb"), abs=2e-4)


@pytest.mark.parametrize("row", rows("srgb_reference.csv"), ids=lambda row: row["name"])
def test_a_colour_carried_to_printers_daylight_has_its_published_lab(row: dict[str, str]) -> None:
    there = carried(xyz_of_hex(row["hex"]), xyz_of(D65), xyz_of(D50), BRADFORD)
    lab = Color("xyz-d50", there).convert("lab").coords()
    assert lab == pytest.approx(numbers(row, "L_d50", "a_d50", "b_d50"), abs=0.03)


OKLAB = {
    "white": ((0.950, 1.000, 1.089), (1.000, 0.000, 0.000), 1e-3),
    "X alone": ((1, 0, 0), (0.450, 1.236, -0.019), 1e-3),
    "Y alone": ((0, 1, 0), (0.922, -0.671, 0.263), 1e-3),
    "Z alone": ((0, 0, 1), (0.153, -1.415, -0.449), 1e-3),
    "a red of colour-science's": (
        (0.20654008, 0.12197225, 0.05136952),
        (0.51634019, 0.15469500, 0.06289579),
        2e-4,
    ),
}


@pytest.mark.parametrize(("xyz", "lab", "within"), OKLAB.values(), ids=OKLAB)
def test_oklab_is_the_one_that_was_published(
    xyz: tuple[float, ...], lab: tuple[float, ...], within: float
) -> None:
    assert Color("xyz-d65", xyz).convert("oklab").coords() == pytest.approx(lab, abs=within)


BRADFORD_TO_D50 = {
    "whites of ASTM E308": (
        (0.95047, 1.0, 1.08883),
        (0.96422, 1.0, 0.82521),
        (
            (1.0478112, 0.0228866, -0.0501270),
            (0.0295424, 0.9904844, -0.0170491),
            (-0.0092345, 0.0150436, 0.7521316),
        ),
        2e-7,
    ),
    "whites of colour-science's tests": (
        (0.95045593, 1.0, 1.08905775),
        (0.96429568, 1.0, 0.82510460),
        (
            (1.04792979, 0.02294687, -0.05019227),
            (0.02962781, 0.99043443, -0.01707380),
            (-0.00924304, 0.01505519, 0.75187428),
        ),
        1e-7,
    ),
}


@pytest.mark.parametrize(
    ("one", "other", "told", "within"), BRADFORD_TO_D50.values(), ids=BRADFORD_TO_D50
)
def test_the_matrix_from_white_to_white_is_the_published_one(
    one: tuple[float, float, float],
    other: tuple[float, float, float],
    told: tuple[tuple[float, ...], ...],
    within: float,
) -> None:
    for row, published in zip(from_white_to_white(one, other), told, strict=True):
        assert row == pytest.approx(published, abs=within)


ADAPTED = {f"{r['hex']} {r['to_light']} {r['method']}": r for r in rows("adaptation.csv")}


@pytest.mark.parametrize("row", ADAPTED.values(), ids=ADAPTED)
def test_a_colour_carried_to_another_light_is_as_two_libraries_have_it(
    row: dict[str, str],
) -> None:
    x, y = numbers(row, "to_white_x", "to_white_y")
    cones = {"Bradford": BRADFORD, "CAT16": CAT16}[row["method"]]
    there = carried(xyz_of_hex(row["hex"]), xyz_of(D65), xyz_of((x, y)), cones)
    assert there == pytest.approx(numbers(row, "X", "Y", "Z"), abs=1e-5)


def test_a_strong_yellow_by_candle_that_one_transform_makes_impossible_is_held_to_what_can_be() -> (
    None
):
    xyz = carried(xyz_of_hex("#ffd700"), xyz_of(D65), xyz_of((0.53776, 0.41118)), CAT16)
    assert xyz[2] == pytest.approx(-0.01326, abs=1e-4)
    assert min(in_light("#ffd700", CANDLE)) >= 0
    shown = Color(seen("#ffd700", CANDLE))
    assert all(isfinite(part) and 0 <= part <= 1 for part in shown.coords())


ENDS = [f"#{r}{g}{b}" for r, g, b in product(("00", "80", "ff"), repeat=3)]


@pytest.mark.parametrize("light", SHOWN, ids=lambda light: light.kind)
def test_no_colour_fails_in_any_light(light: Light) -> None:
    for hex_ in ENDS:
        assert min(in_light(hex_, light)) >= 0, hex_
        shown = seen(hex_, light)
        assert len(shown) == 7 and int(shown[1:], 16) >= 0, hex_


APPEARANCE = {
    "a grey in daylight": (
        (19.01, 20, 21.78),
        (95.05, 100, 108.88),
        (41.73120791, 0.10335574, 217.06795977, 195.37170899, 0.10743677),
    ),
    "a green by tungsten": (
        (3.53, 6.56, 2.14),
        (109.85, 100, 35.58),
        (21.36052893, 50.99381895, 178.86724266, 139.78582768, 53.00732582),
    ),
}


@pytest.mark.parametrize(("xyz", "white", "told"), APPEARANCE.values(), ids=APPEARANCE)
def test_colours_appear_as_cam16_s_published_examples(
    xyz: tuple[float, ...], white: tuple[float, float, float], told: tuple[float, ...]
) -> None:
    viewing = Viewing(white, 318.31, adaptation(318.31))
    look = appearance(xyz, viewing)
    assert look == pytest.approx(told, abs=1e-5)
    assert xyz_looking(*look[:3], viewing) == pytest.approx(xyz, abs=1e-9)


@pytest.mark.parametrize("luminance", [4, 64, 318.31])
@pytest.mark.parametrize("hex_", ["#dc143c", "#e6e6fa", "#228b22", "#2f3a4f", "#f4efe6"])
def test_colours_appear_as_another_library_has_it(hex_: str, luminance: float) -> None:
    x, y, z = (100 * part for part in xyz_of(D65))
    theirs = xyz_to_cam(
        list(xyz_of_hex(hex_)),
        Environment(
            white=D65,
            adapting_luminance=luminance,
            background_luminance=20,
            surround="average",
            discounting=False,
        ),
    )
    ours = appearance(
        [100 * part for part in xyz_of_hex(hex_)],
        Viewing((x, y, z), luminance, adaptation(luminance)),
    )
    assert ours[:3] == pytest.approx(theirs[:3], abs=1e-2)


WARMTH = {
    "#ff0000": 2.3514,
    "#ffd700": 1.2913,
    "#0000ff": -1.3936,
    "#228b22": -0.4298,
    "#e6e6fa": -0.6182,
    "#cd853f": 0.8315,
    "#808080": -0.5,
    "#ffffff": -0.5,
}


@pytest.mark.parametrize(("hex_", "told"), WARMTH.items(), ids=WARMTH)
def test_a_colour_is_as_warm_as_the_formula_has_it(hex_: str, told: float) -> None:
    assert warmth(hex_) == pytest.approx(told, abs=1e-3)


TEMPERS = {
    "#ff0000": "warm",
    "#cd853f": "warm",
    "#0000ff": "cool",
    "#e6e6fa": "cool",
    "#808080": "neutral",
    "#ffffff": "neutral",
    "#000000": "neutral",
    "#fffff0": "neutral",
}


@pytest.mark.parametrize(("hex_", "told"), TEMPERS.items(), ids=TEMPERS)
def test_white_and_grey_are_called_neither_warm_nor_cool(hex_: str, told: str) -> None:
    assert temper(hex_) == told


MIX = {"#dc143c": 12, "#e6e6fa": 20, "#228b22": 8}


def test_a_mix_is_as_light_as_varied_and_as_warm_as_its_definitions_make_it() -> None:
    mix = measures_of(added((tally_of_colour(hex_, None), n) for hex_, n in MIX.items()), None)
    assert mix.lightness == pytest.approx(70.143, abs=0.01)
    assert mix.spread == pytest.approx(21.720, abs=0.01)
    assert mix.warm == pytest.approx(0.300, abs=1e-9)
    lights = [lab_of(hex_)[0] for hex_ in MIX]
    assert max(lights) - min(lights) == pytest.approx(44.794, abs=0.01)
    assert difference("#dc143c", "#e6e6fa") == pytest.approx(46.892, abs=0.01)
