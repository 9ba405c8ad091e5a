"""ExifTool, which nobody here wrote, plants the notes and looks for them afterwards.

Sources: Exif 2.3 (CIPA DC-008), tag 274 Orientation; ExifTool's tag names.
"""

import shutil
import subprocess
from pathlib import Path

import pytest
from PIL import Image

from corymb.photos import PhotoCache, prepare

pytestmark = pytest.mark.skipif(not shutil.which("exiftool"), reason="exiftool is not installed")

SECRET = "Dunmallow"
TAGS = [
    f"-EXIF:{tag}={SECRET}"
    for tag in ("Make", "Model", "Software", "Artist", "Copyright", "SerialNumber", "LensModel")
] + [
    "-EXIF:DateTimeOriginal=2025:09:20 06:00:00",
    "-EXIF:GPSLatitude=52.3",
    "-EXIF:GPSLongitude=7.1",
    f"-EXIF:GPSAreaInformation={SECRET}",
    "-XMP-exif:GPSLatitude=52.3",
    f"-XMP-dc:Creator={SECRET}",
    f"-IPTC:City={SECRET}",
    f"-IPTC:By-line={SECRET}",
    f"-Comment={SECRET}",
]
DESCRIBES_THE_FILE = {"ExifTool", "System", "File", "JFIF", "QuickTime", "Meta", "Composite"}


def exiftool(*arguments: str | Path) -> str:
    return subprocess.run(
        ["exiftool", *arguments], capture_output=True, text=True, check=True
    ).stdout


def red_block() -> Image.Image:
    """White, 64 by 48, with a red block top left."""
    image = Image.new("RGB", (64, 48), "white")
    image.paste("red", (0, 0, 16, 16))
    return image


def test_no_note_exiftool_can_plant_is_published(tmp_path: Path) -> None:
    source, thumbnail = tmp_path / "jar.jpg", tmp_path / "thumbnail.jpg"
    red_block().save(source)
    red_block().save(thumbnail, comment=SECRET)
    exiftool("-q", "-overwrite_original", *TAGS, f"-ThumbnailImage<={thumbnail}", source)
    assert exiftool("-G1", "-a", "-s", source).count(SECRET) >= 10
    with PhotoCache(tmp_path / "cache") as cache:
        photo = prepare(source, cache)
    for file in (*photo.files, photo.share_card):
        shown = exiftool("-G1", "-a", "-s", file.path).splitlines()
        groups = {line.split("]")[0].removeprefix("[") for line in shown}
        assert groups <= DESCRIBES_THE_FILE
        assert not [line for line in shown if "Comment" in line or "GPS" in line]
        assert SECRET.encode() not in file.path.read_bytes()


# Where the block appears to someone who holds the camera as noted: Exif 2.3, tag 274.
SEEN = [
    (1, (64, 48), (8, 8)),
    (2, (64, 48), (56, 8)),
    (3, (64, 48), (56, 40)),
    (4, (64, 48), (8, 40)),
    (5, (48, 64), (8, 8)),
    (6, (48, 64), (40, 8)),
    (7, (48, 64), (40, 56)),
    (8, (48, 64), (8, 56)),
]


@pytest.mark.parametrize(("orientation", "size", "block"), SEEN)
def test_the_noted_turn_is_applied_and_the_note_is_gone(
    tmp_path: Path, orientation: int, size: tuple[int, int], block: tuple[int, int]
) -> None:
    source = tmp_path / "jar.jpg"
    red_block().save(source)
    exiftool("-q", "-overwrite_original", "-n", f"-Orientation={orientation}", source)
    with PhotoCache(tmp_path / "cache") as cache:
        photo = prepare(source, cache)
    for file in photo.files:
        with Image.open(file.path) as published:
            assert published.size == size
            red = published.convert("RGB").getpixel(block)
        assert red == pytest.approx((255, 0, 0), abs=40)
        assert exiftool("-Orientation", file.path) == ""
