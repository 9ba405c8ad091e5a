"""Something small stands in the photo's place until it is there."""

import base64
import io
from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, prepare
from corymb.photos.placeholder import average_hex, placeholder

from .camera import petals, save

PICTURES = {
    "petals": petals(),
    "standing petals": petals((600, 900)),
    "noise": Image.merge("RGB", [Image.effect_noise((900, 600), 250) for _ in range(3)]),
    "coarse noise": Image.merge("RGB", [Image.effect_noise((24, 24), 250) for _ in range(3)]),
    "panorama": petals((3000, 40)),
    "one pixel": Image.new("RGB", (1, 1), "crimson"),
}


@pytest.mark.parametrize("name", PICTURES)
def test_a_placeholder_is_a_picture_under_400_bytes(name: str) -> None:
    uri = placeholder(PICTURES[name])
    assert len(uri) < 400
    data = base64.b64decode(uri.removeprefix("data:image/webp;base64,"))
    assert max(Image.open(io.BytesIO(data)).size) <= 24


def test_a_placeholder_looks_like_its_photo_from_afar() -> None:
    image = petals()
    data = base64.b64decode(placeholder(image).partition(",")[2])
    small = Image.open(io.BytesIO(data)).convert("RGB").resize((2, 2), Image.Resampling.BOX)
    expected = image.resize((2, 2), Image.Resampling.BOX)
    assert list(small.tobytes()) == pytest.approx(list(expected.tobytes()), abs=16)


@pytest.mark.parametrize(
    ("image", "expected"),
    [
        (Image.new("RGB", (40, 30), "#dc143c"), "#dc143c"),
        (Image.new("RGB", (40, 30), "#000001"), "#000001"),
    ],
    ids=["crimson", "nearly black"],
)
def test_the_mean_colour_of_a_flat_photo_is_its_colour(image: Image.Image, expected: str) -> None:
    assert average_hex(image) == expected


def test_the_mean_colour_weighs_every_part() -> None:
    image = Image.new("RGB", (100, 10), "#000000")
    image.paste("#c80000", (0, 0, 50, 10))
    assert average_hex(image) == "#640000"


def test_a_prepared_photo_carries_both(photos: Path, cache: PhotoCache) -> None:
    photo = prepare(save(Image.new("RGB", (64, 64), "#dc143c"), photos / "flat.png"), cache)
    assert photo.average_hex == "#dc143c"
    assert photo.placeholder.startswith("data:image/webp;base64,")
