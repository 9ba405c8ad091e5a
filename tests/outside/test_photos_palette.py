"""A flat picture of three CSS colours gives those three back.

Source: derived by hand from the picture's areas; distances by CIEDE2000 (coloraide).
"""

import io

import pytest
from coloraide import Color
from PIL import Image

from corymb.photos.palette import palette

AREAS = [("#dc143c", 0.50), ("#228b22", 0.30), ("#e6e6fa", 0.20)]


def flat_picture() -> Image.Image:
    image = Image.new("RGB", (300, 200), "#dc143c")
    image.paste("#228b22", (150, 0, 240, 200))
    image.paste("#e6e6fa", (240, 0, 300, 200))
    return image


@pytest.mark.parametrize(
    ("kind", "settings", "distance", "points"),
    [("PNG", {}, 1.0, 0.01), ("JPEG", {"quality": 90}, 3.0, 0.03)],
)
def test_three_flat_colours_come_back(
    kind: str, settings: dict[str, int], distance: float, points: float
) -> None:
    file = io.BytesIO()
    flat_picture().save(file, kind, **settings)
    found = palette(Image.open(file))
    assert len(found) == len(AREAS)
    for (hex_colour, share), colour in zip(AREAS, found, strict=True):
        assert Color(hex_colour).delta_e(colour.hex, method="2000") <= distance
        assert colour.share == pytest.approx(share, abs=points)
