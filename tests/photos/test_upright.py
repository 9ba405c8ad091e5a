"""Photos come out the right way up, whatever kind of file notes the turn."""

from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, inspect, prepare

from .camera import marked, save, turned_exif

# Where the block that is stored top left belongs, and whether the photo stands (Exif 2.3).
WHERE = {
    1: ("top left", False),
    2: ("top right", False),
    3: ("bottom right", False),
    4: ("bottom left", False),
    5: ("top left", True),
    6: ("top right", True),
    7: ("bottom right", True),
    8: ("bottom left", True),
}


def red_corner(path: Path) -> str:
    """The corner whose pixel is red rather than white."""
    image = Image.open(path).convert("RGB")
    far_x, far_y = image.width - 5, image.height - 5
    corners = {
        "top left": (4, 4),
        "top right": (far_x, 4),
        "bottom left": (4, far_y),
        "bottom right": (far_x, far_y),
    }
    red = [name for name, at in corners.items() if _is_red(image.getpixel(at))]
    assert len(red) == 1, red
    return red[0]


def _is_red(pixel: object) -> bool:
    assert isinstance(pixel, tuple)
    return bool(pixel[1] < 120)


@pytest.mark.parametrize("orientation", WHERE)
@pytest.mark.parametrize("kind", ["jpg", "png", "tif", "webp", "avif"])
def test_a_photo_is_published_upright(
    photos: Path, cache: PhotoCache, kind: str, orientation: int
) -> None:
    source = save(marked(), photos / f"jar.{kind}", exif=turned_exif(orientation))
    photo = prepare(source, cache)
    corner, stands = WHERE[orientation]
    assert (photo.width, photo.height) == ((48, 64) if stands else (64, 48))
    for file in photo.files:
        assert (file.width, file.height) == Image.open(file.path).size
        assert red_corner(file.path) == corner


@pytest.mark.parametrize("orientation", WHERE)
@pytest.mark.parametrize("kind", ["jpg", "png", "tif", "webp", "avif"])
def test_a_photo_is_measured_upright(photos: Path, kind: str, orientation: int) -> None:
    facts = inspect(save(marked(), photos / f"jar.{kind}", exif=turned_exif(orientation)))
    assert (facts.width, facts.height) == ((48, 64) if WHERE[orientation][1] else (64, 48))


def test_a_large_photo_on_its_side_is_drafted_to_the_right_size(
    photos: Path, cache: PhotoCache
) -> None:
    large = marked((4000, 3000), block=1000)
    photo = prepare(save(large, photos / "jar.jpg", exif=turned_exif(6)), cache)
    assert [(file.width, file.height) for file in photo.of_format("jpeg")] == [
        (1600, 2133),
        (960, 1280),
        (480, 640),
    ]
    assert {red_corner(file.path) for file in photo.files} == {"top right"}


@pytest.mark.parametrize("orientation", [0, 9, 77])
def test_a_turn_that_means_nothing_is_ignored(
    photos: Path, cache: PhotoCache, orientation: int
) -> None:
    photo = prepare(save(marked(), photos / "jar.jpg", exif=turned_exif(orientation)), cache)
    assert red_corner(photo.files[0].path) == "top left"
