"""Which mean a mix of colours is taken to have: there are several, and they are not the same.

Source: definitions, over crimson x 12, lavender x 20 and forest green x 8 of CSS. The mean of these
in OKLab is #caa397, that of their light is #cdb3bb (worked out with two libraries).
"""

from __future__ import annotations

import pytest
from coloraide import Color
from PIL import Image

from corymb.photos.placeholder import average_hex
from corymb.picture.colour import mix
from corymb.trade.colour.ciede2000 import lab_of
from corymb.trade.colour.tally import added, measures_of, tally_of_colour

MIX = {"#dc143c": 12, "#e6e6fa": 20, "#228b22": 8}
IN_OKLAB, IN_LIGHT = "#caa397", "#cdb3bb"


def channels(hex_: str) -> list[int]:
    return [int(hex_[at : at + 2], 16) for at in (1, 3, 5)]


def mean_in(space: str) -> str:
    """By the definition: each coordinate's mean, weighted."""
    parts = [(Color(hex_).convert(space).coords(), count) for hex_, count in MIX.items()]
    mean = [sum(at[axis] * count for at, count in parts) / 40 for axis in range(3)]
    return str(Color(space, mean).convert("srgb").to_string(hex=True))


@pytest.mark.parametrize(("space", "told"), [("oklab", IN_OKLAB), ("srgb-linear", IN_LIGHT)])
def test_the_means_are_those_that_were_worked_out(space: str, told: str) -> None:
    assert channels(mean_in(space)) == pytest.approx(channels(told), abs=1)


def test_a_picture_s_vessel_and_backdrop_are_mixed_in_oklab() -> None:
    crimson, lavender, green = MIX
    mixed = mix(mix(crimson, lavender, 20 / 32), green, 8 / 40)
    assert channels(mixed) == pytest.approx(channels(IN_OKLAB), abs=1)


def test_a_mix_is_as_light_as_the_mean_of_its_lightnesses_not_as_its_mixed_light() -> None:
    mean = measures_of(added((tally_of_colour(hex_, None), n) for hex_, n in MIX.items()), None)
    assert mean.lightness == pytest.approx(70.143, abs=0.01)
    assert lab_of(IN_LIGHT)[0] - mean.lightness > 4


def test_a_photo_s_first_colour_is_the_mean_of_its_numbers() -> None:
    """As a browser blurs: (12 x 220 + 20 x 230 + 8 x 34) / 40 = 187.8, and so on."""
    photo = Image.new("RGB", (40, 10), "#dc143c")
    photo.paste("#e6e6fa", (12, 0, 32, 10))
    photo.paste("#228b22", (32, 0, 40, 10))
    assert channels(average_hex(photo)) == pytest.approx([187.8, 148.8, 149.8], abs=1)
