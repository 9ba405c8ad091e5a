"""A photo that can't be used is refused in words, and the words say what to do."""

import io
import os
import struct
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from corymb.photos import PhotoCache, PhotoError, inspect, prepare
from corymb.photos.errors import missing

from .camera import bare_png, jpeg_bytes, petals, save, turned_exif, with_segment


def cut(path: Path, kind: str, keep: float) -> Path:
    """A photo of which only a part was copied."""
    data = save(petals(), path.with_suffix(f".{kind}")).read_bytes()
    path.with_suffix(f".{kind}").write_bytes(data[: int(len(data) * keep)])
    return path.with_suffix(f".{kind}")


def moving(path: Path) -> Path:
    frames = [petals((40, 30)), petals((40, 30)).rotate(180)]
    return save(frames[0], path, save_all=True, append_images=frames[1:])


def huge_png(path: Path, width: int, height: int) -> Path:
    """A few bytes that claim to be a picture of any size."""
    return written(path, bare_png((width, height), 1, 0, bytes(100)))


def claiming(path: Path, width: int, height: int, progressive: bool = False) -> Path:
    """A small JPEG whose frame header (ITU-T T.81, B.2.2) tells of any size."""
    data = jpeg_bytes(petals((40, 30)), progressive=progressive)
    size = data.index(b"\xff\xc2" if progressive else b"\xff\xc0") + 5
    return written(path, data[:size] + struct.pack(">HH", height, width) + data[size + 4 :])


def layered(path: Path) -> Path:
    """A progressive JPEG whose last scan comes four hundred times."""
    data = jpeg_bytes(petals((40, 30)), progressive=True)
    last = data.rindex(b"\xff\xda")
    return written(path, data[:-2] + 400 * data[last:-2] + data[-2:])


def written(path: Path, data: bytes) -> Path:
    path.write_bytes(data)
    return path


def folder(path: Path) -> Path:
    path.mkdir()
    return path


def pipe(path: Path) -> Path:
    os.mkfifo(path)
    return path


def near_miss(path: Path) -> Path:
    save(petals((40, 30)), path.with_name("hedgerow-jar.JPG"))
    return path


HEIC_HEAD = struct.pack(">I", 24) + b"ftypheic" + bytes(4) + b"mif1heic"
CUT_SHORT = "is cut short or damaged: copy it again from the camera or phone."
NOT_A_PHOTO = (
    "is not a photo that can be read here: save it as JPEG, PNG, TIFF, WebP, AVIF or HEIC."
)
MOVES = "moves: it holds 2 pictures in a row. Save the one to show as a JPEG and name that instead."
RAW = "is a raw camera file: develop it in your photo program and export a JPEG."

REFUSED: dict[str, tuple[str, Callable[[Path], Path], str]] = {
    "missing": ("a.jpg", lambda path: path, "check the name, or copy the photo there."),
    "misnamed": ("hedgerow-jar.jpg", near_miss, "Did you mean hedgerow-jar.JPG?"),
    "in no folder": ("no/a.jpg", lambda path: path, "check the name, or copy the photo there."),
    "empty": (
        "a.jpg",
        lambda path: written(path, b""),
        "a.jpg is empty: copy it again from the camera or phone.",
    ),
    "a name that none can have": ("a\0.jpg", lambda path: path, "copy the photo there."),
    "folder": ("jars", folder, "jars is a folder, not a photo: name one of the files in it."),
    "text": ("a.jpg", lambda path: written(path, b"name: Hedgerow jar\n"), f"a.jpg {NOT_A_PHOTO}"),
    "drawing": ("a.svg", lambda path: written(path, b"<svg/>"), f"a.svg {NOT_A_PHOTO}"),
    "printer's file": ("a.eps", lambda path: save(petals(), path), f"a.eps {NOT_A_PHOTO}"),
    "page": ("a.jpg", lambda path: written(path, b"<!doctype html><p>"), f"a.jpg {NOT_A_PHOTO}"),
    "document": ("a.jpg", lambda path: written(path, b"%PDF-1.7\n"), f"a.jpg {NOT_A_PHOTO}"),
    "pipe": ("a.jpg", pipe, f"a.jpg {NOT_A_PHOTO}"),
    "film": ("a.mp4", lambda path: written(path, b"\0\0\0\x14ftypisom" + bytes(90)), NOT_A_PHOTO),
    "raw": ("a.NEF", lambda path: written(path, b"MM\0*"), f"a.NEF {RAW}"),
    "cut JPEG": ("a.jpg", lambda path: cut(path, "jpg", 0.5), f"a.jpg {CUT_SHORT}"),
    "nearly whole JPEG": ("a.jpg", lambda path: cut(path, "jpg", 0.98), f"a.jpg {CUT_SHORT}"),
    "cut PNG": ("a.png", lambda path: cut(path, "png", 0.5), f"a.png {CUT_SHORT}"),
    "cut TIFF": ("a.tif", lambda path: cut(path, "tif", 0.5), f"a.tif {CUT_SHORT}"),
    "cut WebP": ("a.webp", lambda path: cut(path, "webp", 0.5), f"a.webp {CUT_SHORT}"),
    "hardly begun": ("a.jpg", lambda path: cut(path, "jpg", 0.001), f"a.jpg {CUT_SHORT}"),
    "cut AVIF": ("a.avif", lambda path: cut(path, "avif", 0.5), f"a.avif {CUT_SHORT}"),
    "GIF film": ("a.gif", lambda path: moving(path), f"a.gif {MOVES}"),
    "PNG film": ("a.png", lambda path: moving(path), f"a.png {MOVES}"),
    "AVIF film": ("a.avif", lambda path: moving(path), f"a.avif {MOVES}"),
    "WebP film": ("a.webp", lambda path: moving(path), f"a.webp {MOVES}"),
    "too large": (
        "a.jpg",
        lambda path: claiming(path, 20_000, 10_001),
        "a.jpg is too large: 20000 x 10001 is 200 megapixels, and 200 is the most that is read. "
        "Save it smaller; 4000 across is plenty.",
    ),
    "too large to be held whole": (
        "a.png",
        lambda path: huge_png(path, 10_000, 10_001),
        "a.png is too large: 10000 x 10001 is 100 megapixels, and 100 is the most that is read of "
        "its kind. Save it smaller; 4000 across is plenty.",
    ),
    "too large in layers": (
        "a.jpg",
        lambda path: claiming(path, 10_000, 10_001, progressive=True),
        "100 is the most that is read of its kind. Save it smaller; 4000 across is plenty.",
    ),
    "as large as a JPEG can say": (
        "a.jpg",
        lambda path: claiming(path, 65_535, 65_535),
        "a.jpg is too large: 200 megapixels is the most that is read. "
        "Save it smaller; 4000 across is plenty.",
    ),
    "layer on layer": (
        "a.jpg",
        layered,
        "a.jpg is a JPEG in 410 layers, and 64 is the most that is read: open it in your photo "
        "program and save it as a JPEG again.",
    ),
    "far too large": (
        "a.png",
        lambda path: huge_png(path, 60_000, 60_000),
        "a.png is too large: 200 megapixels is the most that is read. "
        "Save it smaller; 4000 across is plenty.",
    ),
}


def test_a_name_alone_is_looked_for_in_this_folder() -> None:
    told = "nope.jpg is not in this folder: check the name, or copy the photo here."
    assert str(missing(Path("nope.jpg"))) == told


@pytest.mark.filterwarnings("ignore::PIL.Image.DecompressionBombWarning")
@pytest.mark.parametrize("name", REFUSED)
@pytest.mark.parametrize("use", ["inspect", "prepare"])
def test_a_photo_that_cannot_be_used_is_refused_in_words(
    photos: Path, cache: PhotoCache, name: str, use: str
) -> None:
    file, make, sentence = REFUSED[name]
    source = make(photos / file)
    with pytest.raises(PhotoError) as refusal:
        _ = inspect(source) if use == "inspect" else prepare(source, cache)
    assert str(refusal.value).endswith(sentence)
    assert refusal.value.source == source


def test_a_photo_without_permission_is_told_apart_from_a_missing_one(
    photos: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def denied(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    source = save(petals(), photos / "a.jpg")
    monkeypatch.setattr(Path, "open", denied)
    with pytest.raises(PhotoError, match="may not be read: change the file's permissions"):
        inspect(source)


def test_heic_without_its_extra_names_the_extra(
    photos: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "pillow_heif", None)
    source = written(photos / "a.heic", HEIC_HEAD + bytes(200))
    with pytest.raises(PhotoError) as refusal:
        inspect(source)
    assert str(refusal.value) == (
        'a.heic is an HEIC photo, which needs one more piece: run  pip install "corymb[heic]"  '
        "or save the photo as a JPEG."
    )


def test_heic_is_read_with_its_extra(photos: Path, cache: PhotoCache) -> None:
    heif: Any = pytest.importorskip("pillow_heif")
    heif.register_heif_opener()
    save(Image.new("RGB", (64, 48), "#b43c5a"), photos / "a.heic", exif=turned_exif(6).tobytes())
    facts = inspect(photos / "a.heic")
    assert (facts.width, facts.height, facts.kind) == (48, 64, "HEIC")
    photo = prepare(photos / "a.heic", cache)
    assert (photo.width, photo.height) == (48, 64)
    with Image.open(photo.files[0].path) as published:
        assert published.size == (48, 64)
        pixel = published.convert("RGB").getpixel((24, 32))
    assert pixel == pytest.approx((0xB4, 0x3C, 0x5A), abs=4)


def test_a_damaged_heic_is_refused(photos: Path) -> None:
    pytest.importorskip("pillow_heif")
    with pytest.raises(PhotoError, match="cut short or damaged"):
        inspect(written(photos / "a.heic", HEIC_HEAD + bytes(200)))


def two_pictures(kind: str) -> bytes:
    output = io.BytesIO()
    petals().save(output, kind, save_all=True, append_images=[petals((80, 60))])
    return output.getvalue()


USABLE: dict[str, tuple[str, Callable[[], bytes], str]] = {
    "with a depth map": ("a.jpg", lambda: two_pictures("MPO"), "JPEG"),
    "with a preview page": ("a.tif", lambda: two_pictures("TIFF"), "TIFF"),
    "by the wrong name": ("a.png", lambda: jpeg_bytes(petals()), "JPEG"),
    "with padding": ("a.jpg", lambda: with_segment(jpeg_bytes(petals()), 0xFF, b""), "JPEG"),
    "with a tail": ("a.jpg", lambda: jpeg_bytes(petals()) + bytes(500), "JPEG"),
}


@pytest.mark.parametrize("name", USABLE)
def test_an_unusual_photo_is_used(photos: Path, cache: PhotoCache, name: str) -> None:
    file, make, kind = USABLE[name]
    source = written(photos / file, make())
    facts = inspect(source)
    assert (facts.width, facts.height, facts.kind) == (800, 600, kind)
    assert facts.size_bytes == source.stat().st_size
    assert prepare(source, cache).width == 800


def test_a_photo_of_many_megapixels_is_used_without_a_grumble(
    photos: Path, recwarn: pytest.WarningsRecorder
) -> None:
    source = save(Image.new("1", (9_500, 9_500)), photos / "a.png")
    assert inspect(source).width == 9_500
    assert not list(recwarn)
