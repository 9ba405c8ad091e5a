"""A photo's colours are found, with how much of it is each."""

from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, PhotoColour, prepare
from corymb.photos.palette import palette

from .camera import petals, save


def halves(one: str, other: str, part: float = 0.5) -> Image.Image:
    """The first colour fills this part, from the left."""
    image = Image.new("RGB", (400, 200), other)
    image.paste(one, (0, 0, round(400 * part), 200))
    return image


@pytest.mark.parametrize(
    ("image", "expected"),
    [
        pytest.param(Image.new("RGB", (1, 1), "#dc143c"), [("#dc143c", 1.0)], id="one pixel"),
        pytest.param(Image.new("RGB", (90, 60), "#000000"), [("#000000", 1.0)], id="black"),
        pytest.param(
            halves("#4b1f2e", "#e8c2b4", 0.25),
            [("#e8c2b4", 0.75), ("#4b1f2e", 0.25)],
            id="the larger share first",
        ),
        pytest.param(halves("#808080", "#868686"), [("#838383", 1.0)], id="two greys as one"),
        pytest.param(halves("#ffffff", "#dc143c", 0.01), [("#dc143c", 0.99)], id="a crumb"),
    ],
)
def test_colours_are_found_with_their_shares(
    image: Image.Image, expected: list[tuple[str, float]]
) -> None:
    assert [(each.hex, each.share) for each in palette(image)] == expected


def test_shares_never_exceed_the_photo_and_no_colour_comes_twice() -> None:
    found = palette(petals())
    assert 0.9 < sum(each.share for each in found) <= 1.0001
    assert len({each.hex for each in found}) == len(found) <= 12


def test_a_prepared_photo_keeps_its_palette_in_the_cache(photos: Path, tmp_path: Path) -> None:
    source = save(halves("#4b1f2e", "#e8c2b4"), photos / "halves.png")
    for _ in range(2):
        with PhotoCache(tmp_path / "cache") as cache:
            assert set(prepare(source, cache).palette) == {
                PhotoColour("#4b1f2e", 0.5),
                PhotoColour("#e8c2b4", 0.5),
            }
