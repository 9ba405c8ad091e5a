"""Is this file one still photo of a bearable size, and in what shape is it stored?

Only the header is read here. The kinds are listed, so that no file can wake a decoder
that nobody needs (some of Pillow's call other programs).
"""

import stat
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from PIL import Image, PngImagePlugin, UnidentifiedImageError

from corymb.photos import errors, heif
from corymb.photos.signature import begins_like_a_photo, is_heif

KINDS = ("JPEG", "PNG", "TIFF", "WEBP", "AVIF", "GIF", "BMP")
# Kinds that can move. A second picture in a JPEG or TIFF is a preview or a depth map.
MOVING_KINDS = {"GIF", "PNG", "WEBP", "AVIF"}
START_OF_SCAN = b"\xff\xda"  # ITU-T T.81, table B.1
# Most raw files are TIFFs whose first picture is a thumbnail: they'd open, and look dreadful.
RAW_SUFFIXES = {
    *{".arw", ".cr2", ".cr3", ".dng", ".nef", ".nrw"},
    *{".orf", ".pef", ".raf", ".raw", ".rw2", ".srw"},
}

# Pillow's own guard would refuse at 179 megapixels and grumble from 89, within reach of
# today's cameras. Ours refuses in words, at a limit for each way of decoding. What
# else it grumbles about is odd notes, and no note is kept.
Image.MAX_IMAGE_PIXELS = errors.LARGEST_PIXELS
warnings.filterwarnings("ignore", module=r"PIL\.")
# Editing programs leave their whole history in a PNG's packed texts. Pillow calls a text over
# one megabyte a damaged file; sixteen are what a JPEG's profile may have.
PngImagePlugin.MAX_TEXT_CHUNK = 16 * 1024 * 1024


@contextmanager
def open_photo(source: Path) -> Iterator[Image.Image]:
    """Open one still photo; whatever goes wrong while it is open is told as a PhotoError."""
    check_file(source)
    with _failures_in_words(source), Image.open(source, formats=_formats(source)) as image:
        _check_picture(source, image)
        yield image


def _formats(source: Path) -> tuple[str, ...]:
    if not is_heif(source):
        return KINDS
    heif.learn_to_read(source)
    return ("HEIF",)


def check_file(source: Path) -> None:
    """Raise PhotoError for what can be told without looking inside."""
    if "\0" in str(source):  # no file's name holds one, and to ask for it is an error in Python
        raise errors.missing(source)
    try:
        status = source.stat()
        size = status.st_size
        if stat.S_ISDIR(status.st_mode):
            raise errors.is_folder(source)
        if not stat.S_ISREG(status.st_mode):  # to open a pipe could be to wait for ever
            raise errors.not_a_photo(source)
        with source.open("rb"):
            pass
    except PermissionError as denied:
        raise errors.forbidden(source) from denied
    except OSError as absent:
        raise errors.missing(source) from absent
    if size == 0:
        raise errors.empty(source)
    if source.suffix.lower() in RAW_SUFFIXES:
        raise errors.raw(source)


def _check_picture(source: Path, image: Image.Image) -> None:
    width, height = image.size
    most = errors.LARGEST_PIXELS if _is_drafted(image) else errors.LARGEST_WHOLE_PIXELS
    if width * height > most:
        raise errors.too_large(source, width, height, most)
    if image.info.get("progressive"):
        _check_layers(source)
    pictures = getattr(image, "n_frames", 1) if image.format in MOVING_KINDS else 1
    if pictures > 1:
        raise errors.animated(source, pictures)


def _is_drafted(image: Image.Image) -> bool:
    """Whether it can be decoded at a smaller scale; a progressive JPEG is held whole for that."""
    return image.format in ("JPEG", "MPO") and not image.info.get("progressive")


def _check_layers(source: Path) -> None:
    """Every layer of a progressive JPEG is a run over all of the picture; a dozen are usual."""
    layers = source.read_bytes().count(START_OF_SCAN)
    if layers > errors.MOST_LAYERS:
        raise errors.too_many_layers(source, layers)


@contextmanager
def _failures_in_words(source: Path) -> Iterator[None]:
    """A damaged file can make a decoder raise nearly anything; all of it means the same here."""
    try:
        yield
    except errors.PhotoError:
        raise
    except UnidentifiedImageError as unknown:
        refusal = errors.damaged if begins_like_a_photo(source) else errors.not_a_photo
        raise refusal(source) from unknown
    except Image.DecompressionBombError as bomb:
        raise errors.far_too_large(source) from bomb
    except Exception as broken:
        raise errors.damaged(source) from broken
