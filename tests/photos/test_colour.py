"""Colours reach the page as the photographer saw them, whatever the file calls them."""

from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from corymb.photos import HOUSE_FINISH, PhotoCache, prepare

from .camera import bare_png, grey_profile, petals, profile, save, srgb_profile

Rgb = tuple[int, int, int]
PAPER: Rgb = (0xF7, 0xF2, 0xE8)

# The same primaries in another order: red means green. Nothing could hide a profile unread.
GREEN_FOR_RED = profile(
    red=(0.38515, 0.71687, 0.09708),
    green=(0.43607, 0.22249, 0.01392),
    blue=(0.14307, 0.06061, 0.7141),
)


def published(
    photos: Path, cache: PhotoCache, image: Image.Image, kind: str, **more: object
) -> Rgb:
    """The middle pixel of the largest JPEG."""
    photo = prepare(save(image, photos / f"flat.{kind}", **more), cache)
    jpeg = Image.open(photo.of_format("jpeg")[0].path)
    pixel = jpeg.getpixel((jpeg.width // 2, jpeg.height // 2))
    assert isinstance(pixel, tuple)
    return (int(pixel[0]), int(pixel[1]), int(pixel[2]))


def flat(mode: str, colour: object) -> Image.Image:
    return Image.new(mode, (64, 64), colour)  # type: ignore[arg-type]


def see_through() -> Image.Image:
    image = flat("P", 1)
    image.putpalette([0, 0, 0, 220, 20, 60])
    return image


def near(expected: Rgb, within: int = 3) -> object:
    return pytest.approx(expected, abs=within)


STORED: dict[str, tuple[Image.Image, str, dict[str, Any], Rgb]] = {
    "plain": (flat("RGB", (90, 120, 60)), "jpg", {}, (90, 120, 60)),
    "sRGB profile": (
        flat("RGB", (90, 120, 60)),
        "jpg",
        {"icc_profile": srgb_profile()},
        (90, 120, 60),
    ),
    "grey": (flat("L", 128), "jpg", {}, (128, 128, 128)),
    "black and white": (flat("1", 1), "png", {}, (255, 255, 255)),
    "sixteen-bit grey": (flat("I;16", 0x8080), "png", {}, (128, 128, 128)),
    "sixteen-bit grey TIFF": (flat("I;16", 0x4040), "tif", {}, (64, 64, 64)),
    "palette": (see_through(), "png", {}, (220, 20, 60)),
    "palette GIF": (see_through(), "gif", {}, (220, 20, 60)),
    "CMYK white": (flat("CMYK", (0, 0, 0, 0)), "jpg", {}, (255, 255, 255)),
    "CMYK magenta": (flat("CMYK", (0, 255, 0, 0)), "tif", {}, (255, 0, 255)),
    "Lab": (flat("LAB", (128, 128, 128)), "tif", {}, (119, 119, 119)),
    "YCbCr": (flat("YCbCr", (128, 128, 128)), "jpg", {}, (128, 128, 128)),
    "clear": (flat("RGBA", (0, 0, 0, 0)), "png", {}, PAPER),
    "half clear": (flat("RGBA", (0, 0, 0, 128)), "webp", {}, (123, 121, 116)),
    "clear grey": (flat("LA", (0, 0)), "png", {}, PAPER),
    "clear palette entry": (see_through(), "png", {"transparency": 1}, PAPER),
    "clear by key colour": (flat("RGB", (1, 2, 3)), "png", {"transparency": (1, 2, 3)}, PAPER),
}


@pytest.mark.parametrize("name", STORED)
def test_every_way_of_storing_a_colour_is_read(photos: Path, cache: PhotoCache, name: str) -> None:
    image, kind, more, expected = STORED[name]
    assert published(photos, cache, image, kind, **more) == near(expected)


@pytest.mark.parametrize("kind", ["jpg", "png", "tif", "webp", "avif"])
def test_the_profile_decides_what_the_numbers_mean(
    photos: Path, cache: PhotoCache, kind: str
) -> None:
    image = flat("RGB", (200, 0, 0))
    red, green, blue = published(photos, cache, image, kind, icc_profile=GREEN_FOR_RED)
    assert green > 180
    assert max(red, blue) < 60


def test_a_profile_that_says_srgb_moves_no_pixel(photos: Path, cache: PhotoCache) -> None:
    plain = prepare(save(petals(), photos / "plain.png"), cache)
    told = prepare(save(petals(), photos / "told.png", icc_profile=srgb_profile()), cache)
    for one, other in zip(plain.files, told.files, strict=True):
        assert one.path.read_bytes() == other.path.read_bytes()


def test_a_profile_holds_where_a_picture_is_transparent(photos: Path, cache: PhotoCache) -> None:
    image = flat("RGBA", (200, 0, 0, 255))
    assert published(photos, cache, image, "png", icc_profile=GREEN_FOR_RED)[1] > 180


def test_a_grey_photo_follows_its_grey_profile(photos: Path, cache: PhotoCache) -> None:
    # (128/255) ^ 1.0 is half the light, which sRGB writes as 188 (IEC 61966-2-1).
    image = flat("L", 128)
    grey = published(photos, cache, image, "png", icc_profile=grey_profile(1.0))
    assert grey == near((188, 188, 188))


@pytest.mark.parametrize(
    "icc",
    [b"not a profile", GREEN_FOR_RED[:200], grey_profile(1.0)[:16] + b"CMYK" + bytes(200)],
    ids=["nonsense", "cut short", "of another kind"],
)
def test_a_broken_profile_is_as_good_as_none(photos: Path, cache: PhotoCache, icc: bytes) -> None:
    image = flat("RGB", (90, 120, 60))
    assert published(photos, cache, image, "jpg", icc_profile=icc) == near((90, 120, 60))


def test_avif_and_jpeg_show_the_same_colours(photos: Path, cache: PhotoCache) -> None:
    photo = prepare(save(flat("RGB", (180, 60, 90)), photos / "flat.png"), cache)
    for file in photo.files:
        assert Image.open(file.path).convert("RGB").getpixel((30, 30)) == near((180, 60, 90))


def test_sixteen_bits_a_channel_become_eight(photos: Path, cache: PhotoCache) -> None:
    row = b"\0" + 64 * bytes.fromhex("b480 3c80 5a80")
    source = photos / "deep.png"
    source.write_bytes(bare_png((64, 64), 16, 2, 64 * row))
    with Image.open(prepare(source, cache).files[1].path) as jpeg:
        assert jpeg.getpixel((30, 30)) == near((0xB4, 0x3C, 0x5A))


def test_the_paper_is_the_pages_own() -> None:
    assert HOUSE_FINISH.paper == "#{:02x}{:02x}{:02x}".format(*PAPER)
