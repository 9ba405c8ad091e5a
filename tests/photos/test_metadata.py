"""Nothing a camera or a person wrote into a photo is published with it."""

import io
import shutil
import struct
import subprocess
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PIL import Image, PngImagePlugin

from corymb.photos import PhotoCache, PreparedPhoto, prepare

from .camera import jpeg_bytes, petals, srgb_profile, with_png_chunk, with_segment

SECRET = b"PlantedWord"
WORD = SECRET.decode()

# The segments a picture can't do without, and the bare JFIF header (ITU-T T.81, table B.1).
NEEDED_MARKERS = {0xE0, 0xDB, 0xC2, 0xC4, 0xDA}


def notes(word: str = WORD) -> Image.Exif:
    exif = Image.Exif()
    for tag in (0x010E, 0x010F, 0x0110, 0x0131, 0x013B, 0x8298):
        exif[tag] = word
    data = word.encode()
    exif.get_ifd(0x8769).update({0x9003: word, 0xA431: word, 0x927C: data, 0x9286: data})
    exif.get_ifd(0x8825).update({1: "N", 2: (52.0, 18.0, 0.0), 0x1D: word})
    return exif


def xmp() -> bytes:
    return b"<x:xmpmeta xmlns:x='adobe:ns:meta/'>" + SECRET + b"</x:xmpmeta>"


def named_profile() -> bytes:
    """An sRGB profile whose copyright is someone's."""
    profile = srgb_profile()
    text = "No copyright".encode("utf-16-be")
    assert text in profile
    return profile.replace(text, SECRET.ljust(len(text), b"\0"))


def jpeg() -> bytes:
    """Every note a JPEG has room for: also a thumbnail's, and what hangs on after its end."""
    settings = {"exif": notes(), "xmp": xmp(), "icc_profile": named_profile(), "comment": SECRET}
    made = jpeg_bytes(petals(), **settings)
    thumbnail = b"Exif\0\0MM\0*\0\0\0\x08\0\0\0\0\0\0" + jpeg_bytes(
        petals((16, 12)), comment=SECRET
    )
    iptc = b"Photoshop 3.0\x008BIM\x04\x04\0\0\0\0\0\x10\x1c\x02\x5a\0\x0b" + SECRET
    for marker, payload in [(0xE1, thumbnail), (0xED, iptc), (0xE3, SECRET), (0xEF, SECRET)]:
        made = with_segment(made, marker, payload)
    return made + SECRET


def png() -> bytes:
    text = PngImagePlugin.PngInfo()
    text.add_text("Author", WORD)
    text.add_text("Comment", WORD, zip=True)
    text.add_itxt("XML:com.adobe.xmp", xmp().decode())
    output = io.BytesIO()
    petals().save(output, "PNG", pnginfo=text, exif=notes(), icc_profile=named_profile())
    return with_png_chunk(output.getvalue(), b"tIME", struct.pack(">HBBBBB", 2025, 9, 20, 6, 0, 0))


def tiff() -> bytes:
    output = io.BytesIO()
    tags = {270: WORD, 271: WORD, 305: WORD, 315: WORD, 700: xmp(), 33432: WORD}
    petals().save(output, "TIFF", tiffinfo=tags, icc_profile=named_profile())
    return output.getvalue()


def other(kind: str) -> bytes:
    output = io.BytesIO()
    petals().save(output, kind, exif=notes(), xmp=xmp(), icc_profile=named_profile())
    return output.getvalue()


def gif() -> bytes:
    output = io.BytesIO()
    petals().save(output, "GIF", comment=SECRET)
    return output.getvalue()


SOURCES: dict[str, Callable[[], bytes]] = {
    "jpg": jpeg,
    "png": png,
    "tif": tiff,
    "webp": lambda: other("WEBP"),
    "avif": lambda: other("AVIF"),
    "gif": gif,
}


@pytest.fixture(scope="module", params=SOURCES)
def photo(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> PreparedPhoto:
    """The photo as published, from a file in which the word really was planted; made once."""
    kind = str(request.param)
    folder = tmp_path_factory.mktemp(kind)
    source = folder / f"{kind}.{kind}"
    source.write_bytes(SOURCES[kind]())
    assert SECRET in source.read_bytes()
    with PhotoCache(folder / "cache") as cache:
        return prepare(source, cache)


def published(photo: PreparedPhoto) -> Iterator[Path]:
    yield from (file.path for file in (*photo.files, photo.share_card))


def test_no_planted_word_is_in_any_byte(photo: PreparedPhoto) -> None:
    assert [path for path in published(photo) if SECRET in path.read_bytes()] == []


def test_jpegs_hold_only_what_draws_them(photo: PreparedPhoto) -> None:
    for path in published(photo):
        if path.suffix == ".jpg":
            assert set(markers(path.read_bytes())) <= NEEDED_MARKERS


def markers(jpeg: bytes) -> Iterator[int]:
    """Each segment up to the first scan; in a progressive file, tables may follow it."""
    at = 2
    while at < len(jpeg):
        yield jpeg[at + 1]
        if jpeg[at + 1] == 0xDA:
            return
        at += 2 + int.from_bytes(jpeg[at + 2 : at + 4], "big")


def test_avifs_hold_one_picture_and_no_notes(photo: PreparedPhoto) -> None:
    for path in published(photo):
        if path.suffix == ".avif":
            head = path.read_bytes()[:400]
            assert head.count(b"infe") == 1
            assert not any(note in head for note in (b"Exif", b"mime", b"prof", b"rICC"))


def test_pillow_finds_no_notes(photo: PreparedPhoto) -> None:
    for path in published(photo):
        with Image.open(path) as image:
            image.load()
            assert not image.getexif()
            assert not {"exif", "xmp", "comment", "icc_profile", "photoshop"} & set(image.info)


@pytest.mark.skipif(not shutil.which("exiftool"), reason="exiftool is not installed")
def test_exiftool_finds_only_what_describes_the_picture(photo: PreparedPhoto) -> None:
    shown = subprocess.run(
        ["exiftool", "-G1", "-a", "-s", *published(photo)],
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    tags = [line for line in shown.splitlines() if line.startswith("[")]
    groups = {line.partition("]")[0][1:] for line in tags}
    assert groups <= {"ExifTool", "System", "File", "JFIF", "QuickTime", "Meta", "Composite"}
    assert not [line for line in tags if "Comment" in line or "Warning" in line]
    assert not [line for line in tags if "Date" in line and not line.startswith("[System]")]
