"""A studio's photos are looked at again and again, and hardly read for it."""

from collections.abc import Callable
from pathlib import Path

import pytest

from corymb.photos import PhotoError, inspect, whole

from .camera import jpeg_bytes, petals, save, with_segment


@pytest.fixture
def jar(photos: Path) -> Path:
    return save(petals(), photos / "jar.jpg")


def test_a_photo_that_was_looked_at_is_not_opened_again(
    jar: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = inspect(jar)

    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("the photo was opened")

    monkeypatch.setattr(Path, "open", refuse)
    assert inspect(jar) == first


def test_a_photo_that_changed_is_looked_at_again(jar: Path) -> None:
    assert inspect(jar).width == 800
    save(petals((640, 480)), jar)
    assert inspect(jar).width == 640


@pytest.mark.parametrize(
    "harm",
    [
        pytest.param(lambda data: data[:-200], id="without its end"),
        pytest.param(lambda data: data[: len(data) // 2], id="half of it"),
        pytest.param(lambda data: b"", id="emptied"),
    ],
)
def test_a_photo_that_was_harmed_since_is_refused(
    jar: Path, harm: Callable[[bytes], bytes]
) -> None:
    inspect(jar)
    jar.write_bytes(harm(jar.read_bytes()))
    with pytest.raises(PhotoError, match="copy it again"):
        inspect(jar)


def test_a_photo_cut_off_right_after_its_thumbnail_is_refused(photos: Path) -> None:
    thumbnail = jpeg_bytes(petals((160, 120)))
    data = with_segment(jpeg_bytes(petals()), 0xE1, b"Exif\0\0" + thumbnail)
    source = photos / "jar.jpg"
    source.write_bytes(data[: data.index(b"\xff\xd9") + 2])
    with pytest.raises(PhotoError, match="cut short"):
        inspect(source)


def test_of_a_whole_jpeg_only_its_ends_are_read(jar: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(_: Path) -> bool:
        raise AssertionError("all of it was read")

    monkeypatch.setattr(whole, "_has_end", refuse)
    assert inspect(jar).kind == "JPEG"
