"""Photos are published in a few widths, never larger than they came."""

from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, prepare
from corymb.photos.sizes import Size, published_sizes

from .camera import petals, save

WIDTHS = (480, 960, 1600)


@pytest.mark.parametrize(
    ("photo", "expected"),
    [
        pytest.param((4000, 3000), [(1600, 1200), (960, 720), (480, 360)], id="a camera's"),
        pytest.param((3000, 4000), [(1600, 2133), (960, 1280), (480, 640)], id="standing"),
        pytest.param((1600, 900), [(1600, 900), (960, 540), (480, 270)], id="just the largest"),
        pytest.param((1200, 800), [(1200, 800), (960, 640), (480, 320)], id="between two widths"),
        pytest.param((1000, 500), [(1000, 500), (480, 240)], id="hardly more than a width"),
        pytest.param((300, 200), [(300, 200)], id="smaller than any"),
        pytest.param((1, 1), [(1, 1)], id="one pixel"),
        pytest.param((6000, 2), [(1600, 1), (960, 1), (480, 1)], id="a hair"),
        pytest.param((1, 20_000), [(1, 4800)], id="a hair on end"),
        pytest.param((1600, 64_000), [(120, 4800)], id="a roll of paper"),
        pytest.param((1600, 4800), [(1600, 4800), (960, 2880), (480, 1440)], id="three screens"),
    ],
)
def test_widths_suit_the_photo(photo: Size, expected: list[Size]) -> None:
    assert list(published_sizes(photo, WIDTHS)) == expected


def test_files_are_the_size_they_say_in_both_formats(photos: Path, cache: PhotoCache) -> None:
    photo = prepare(save(petals((2000, 1500)), photos / "jar.jpg"), cache)
    assert [(file.format, file.width) for file in photo.files] == [
        ("avif", 1600),
        ("jpeg", 1600),
        ("avif", 960),
        ("jpeg", 960),
        ("avif", 480),
        ("jpeg", 480),
    ]
    for file in photo.files:
        with Image.open(file.path) as image:
            assert (image.size, image.format) == ((file.width, file.height), file.format.upper())


def test_jpegs_are_progressive(photos: Path, cache: PhotoCache) -> None:
    photo = prepare(save(petals(), photos / "jar.png"), cache)
    for file in (*photo.of_format("jpeg"), photo.share_card):
        with Image.open(file.path) as image:
            assert image.info.get("progressive")


@pytest.mark.parametrize("size", [(4000, 3000), (600, 2000), (300, 200), (3000, 300)])
def test_the_share_card_is_always_1200_by_630(photos: Path, cache: PhotoCache, size: Size) -> None:
    card = prepare(save(petals(size), photos / "jar.jpg"), cache).share_card
    with Image.open(card.path) as image:
        assert image.size == (card.width, card.height) == (1200, 630)


def test_a_tall_photo_keeps_more_of_its_top_on_the_card(photos: Path, cache: PhotoCache) -> None:
    tall = Image.new("RGB", (1200, 1890), "white")
    tall.paste("black", (0, 945, 1200, 1890))
    card = prepare(save(tall, photos / "tall.png"), cache).share_card
    with Image.open(card.path) as image:
        dark_rows = sum(value < 128 for value in image.convert("L").resize((1, 630)).tobytes())
    assert 0 < dark_rows < 300


def test_a_file_kept_beside_the_card_can_be_read_by_a_web_server(
    photos: Path, cache: PhotoCache
) -> None:
    photo = prepare(save(petals(), photos / "jar.jpg"), cache)
    plain = save(petals(), photos / "plain.jpg")
    assert {file.path.stat().st_mode for file in photo.files} == {plain.stat().st_mode}
