"""Colours of wide-gamut photos come out as the published conversions say.

Sources:
- the sRGB colours written in Display P3 and in A98 RGB: the test tables of coloraide
  (github.com/facelessuser/coloraide, tests/test_display_p3.py and tests/test_a98_rgb.py), whose
  green row is also W3C's (web-platform-tests, css/css-color, predefined-005 and a98rgb-001);
- primaries under D50: SMPTE RP 431-2 adapted by Bradford's matrix as ICC.1 annex E says,
  computed with coloraide 8.13;
- CIELAB under D50 of CSS colours: IEC 61966-2-1 and CIE 15, computed with coloraide
  and colour-science, which agree to 0.03.
"""

import struct

import pytest
from PIL import ExifTags, Image

from corymb.photos.adobe_rgb import matrix_profile
from corymb.photos.colour import profile_of, to_srgb
from corymb.photos.modes import plain

Numbers = tuple[float, float, float]

# Eight bits a channel in, eight out: one step each way, and a second for rounding between.
STEPS = 2

DISPLAY_P3 = {
    b"rXYZ": (0.51515, 0.24120, -0.00105),
    b"gXYZ": (0.29201, 0.69222, 0.04188),
    b"bXYZ": (0.15714, 0.06658, 0.78428),
}

IN_DISPLAY_P3 = [
    ("#ff0000", (0.91749, 0.20029, 0.13856)),
    ("#ffa500", (0.94965, 0.6629, 0.23297)),
    ("#ffff00", (1, 1, 0.3309)),
    ("#008000", (0.21604, 0.49418, 0.13151)),
    ("#0000ff", (0, 0, 0.95959)),
    ("#4b0082", (0.26681, 0.03018, 0.48951)),
    ("#ee82ee", (0.87709, 0.53133, 0.91095)),
    ("#ffffff", (1, 1, 1)),
    ("#000000", (0, 0, 0)),
]

IN_A98_RGB = [
    ("#ff0000", (0.85859, 0, 0)),
    ("#ffa500", (0.91489, 0.64117, 0.15031)),
    ("#ffff00", (1, 1, 0.23442)),
    ("#008000", (0.28137, 0.49802, 0.11675)),
    ("#0000ff", (0, 0, 0.98107)),
    ("#4b0082", (0.25684, 0, 0.4961)),
    ("#ffffff", (1, 1, 1)),
    ("#000000", (0, 0, 0)),
]

LAB_D50 = [
    ("#dc143c", (47.879, 71.276, 35.482)),
    ("#e6e6fa", (91.742, 2.775, -9.724)),
    ("#ff69b4", (65.860, 63.258, -9.644)),
    ("#ffd700", (87.468, 2.910, 86.553)),
    ("#228b22", (50.642, -45.716, 44.032)),
    ("#c71585", (45.174, 69.566, -14.066)),
    ("#fffff0", (99.698, -1.898, 7.194)),
    ("#ff7f50", (67.983, 47.383, 48.603)),
    ("#777777", (50.034, 0, 0)),
    ("#ffffff", (100, 0, 0)),
]


def srgb_curve() -> bytes:
    """The curve of IEC 61966-2-1 as a table of 1024 steps, as Display P3 uses it."""
    light = [_to_light(step / 1023) for step in range(1024)]
    table = struct.pack(">1024H", *(round(value * 65535) for value in light))
    return b"curv" + struct.pack(">4xI", 1024) + table


def _to_light(value: float) -> float:
    return value / 12.92 if value <= 0.04045 else float(((value + 0.055) / 1.055) ** 2.4)


def flat(numbers: Numbers) -> Image.Image:
    red, green, blue = (round(number * 255) for number in numbers)
    return Image.new("RGB", (4, 4), (red, green, blue))


def hex_of(image: Image.Image) -> Numbers:
    red, green, blue = image.convert("RGB").tobytes()[:3]
    return red, green, blue


def expected(hex_colour: str) -> object:
    return pytest.approx(tuple(bytes.fromhex(hex_colour[1:])), abs=STEPS)


@pytest.mark.parametrize(("srgb", "numbers"), IN_DISPLAY_P3)
def test_a_phones_display_p3_becomes_srgb(srgb: str, numbers: Numbers) -> None:
    photo = flat(numbers)
    photo.info["icc_profile"] = matrix_profile(DISPLAY_P3, srgb_curve())
    assert hex_of(to_srgb(photo, profile_of(photo))) == expected(srgb)


@pytest.mark.parametrize(("srgb", "numbers"), IN_A98_RGB)
def test_a_cameras_adobe_rgb_is_known_by_its_mark_alone(srgb: str, numbers: Numbers) -> None:
    photo = flat(numbers)
    marked = Image.Exif()
    marked.get_ifd(ExifTags.IFD.Exif)[ExifTags.IFD.Interop] = {1: "R03"}
    photo.info["exif"] = marked.tobytes()
    assert hex_of(to_srgb(photo, profile_of(photo))) == expected(srgb)


@pytest.mark.parametrize(("srgb", "lab"), LAB_D50)
def test_a_printers_lab_becomes_srgb(srgb: str, lab: Numbers) -> None:
    stored = (round(lab[0] * 255 / 100), round(lab[1]) + 128, round(lab[2]) + 128)
    photo = Image.new("LAB", (4, 4), stored)
    found = hex_of(to_srgb(plain(photo), profile_of(photo)))
    assert found == pytest.approx(tuple(bytes.fromhex(srgb[1:])), abs=6)  # a step of a or b
