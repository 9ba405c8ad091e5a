"""A photo's flowers are told from the wall, cloth or table behind them, as far as can be."""

from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, PhotoColour, prepare
from corymb.photos.palette import flower_palette, palette

from .camera import save

PLUM, SHELL, LINEN, OAK, WALL = "#4b1f2e", "#e8c2b4", "#f4efe6", "#8a6a48", "#7d8a90"

Box = tuple[int, int, int, int]


def laid(size: tuple[int, int], ground: str, *patches: tuple[str, Box]) -> Image.Image:
    """Oblongs on a ground, their edges where the pixels of the small picture have theirs."""
    image = Image.new("RGB", size, ground)
    for colour, box in patches:
        image.paste(colour, box)
    return image


def scene(wall: str, table: str, *flowers: str) -> Image.Image:
    """Flowers of equal size side by side, before a wall and on a table."""
    stand = [
        (flower, (200 - 40 * len(flowers) + 80 * at, 100, 280 - 40 * len(flowers) + 80 * at, 180))
        for at, flower in enumerate(flowers)
    ]
    return laid((400, 300), wall, (table, (0, 220, 400, 300)), *stand)


WHITE_IN_LEAF = laid((400, 300), LINEN, (PLUM, (100, 40, 300, 240)), (LINEN, (152, 92, 252, 192)))
SOFT_LIGHT = laid(
    (400, 300), "#8c8c8c", ("#9b9b9b", (60, 40, 340, 260)), (PLUM, (160, 112, 240, 192))
)


@pytest.mark.parametrize(
    ("image", "expected"),
    [
        pytest.param(scene(WALL, OAK, PLUM), {PLUM: 1.0}, id="one flower"),
        pytest.param(scene(WALL, OAK, PLUM, SHELL), {PLUM: 0.5, SHELL: 0.5}, id="two flowers"),
        pytest.param(
            scene(LINEN, LINEN, PLUM, SHELL, SHELL), {PLUM: 1 / 3, SHELL: 2 / 3}, id="on linen"
        ),
        pytest.param(WHITE_IN_LEAF, {PLUM: 0.75, LINEN: 0.25}, id="white on white, leaf around it"),
        pytest.param(SOFT_LIGHT, {PLUM: 1.0}, id="a wall in a soft light"),
        pytest.param(Image.new("RGB", (90, 60), PLUM), {PLUM: 1.0}, id="nothing but flower"),
        pytest.param(Image.new("RGB", (1, 1), PLUM), {PLUM: 1.0}, id="one pixel"),
        pytest.param(scene(LINEN, LINEN, LINEN), {LINEN: 1.0}, id="white on white, nothing else"),
    ],
)
def test_what_lies_behind_is_left_out(image: Image.Image, expected: dict[str, float]) -> None:
    found = {each.hex: each.share for each in flower_palette(image)}
    assert found == pytest.approx(expected, abs=0.001)


def test_all_of_the_photo_has_the_wall_in_it() -> None:
    assert WALL in {each.hex for each in palette(scene(WALL, OAK, PLUM))}


def test_the_flowers_colours_are_kept_in_the_cache(photos: Path, tmp_path: Path) -> None:
    source = save(scene(WALL, OAK, PLUM), photos / "plum.png")
    found = []
    for _ in range(2):
        with PhotoCache(tmp_path / "cache") as cache:
            found.append(prepare(source, cache).flowers)
    assert found[0] == found[1]
    assert isinstance(found[1][0], PhotoColour)
