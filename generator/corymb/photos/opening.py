"""Is this file one still photo of a bearable size, and in what shape is it stored?

Only the header is read here. The kinds are listed, so that no file can wake a decoder
that nobody needs (some of Pillow's call other programs).
"""

import stat
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from PIL import Image, UnidentifiedImageError

from corymb.photos import errors, heif
from corymb.photos.signature import begins_like_a_photo, is_heif

KINDS = ("JPEG", "PNG", "TIFF", "WEBP", "AVIF", "GIF", "BMP")
# Kinds that can move. A second picture in a JPEG or TIFF is a preview or a depth map.
MOVING_KINDS = {"GIF", "PNG", "WEBP", "AVIF"}
# Most raw files are TIFFs whose first picture is a thumbnail: they'd open, and look dreadful.
RAW_SUFFIXES = {
    *{".arw", ".cr2", ".cr3", ".dng", ".nef", ".nrw"},
    *{".orf", ".pef", ".raf", ".raw", ".rw2", ".srw"},
}

# Pillow's own guard would refuse at 179 megapixels and grumble from 89, within reach of
# today's cameras. Ours refuses in words, at one limit for every kind of file. What else
# it grumbles about is odd notes, and no note is kept.
Image.MAX_IMAGE_PIXELS = errors.LARGEST_PIXELS
warnings.filterwarnings("ignore", module=r"PIL\.")


@contextmanager
def open_photo(source: Path) -> Iterator[Image.Image]:
    """Open one still photo; whatever goes wrong while it is open is told as a PhotoError."""
    check_file(source)
    formats: tuple[str, ...] = KINDS
    if is_heif(source):
        heif.learn_to_read(source)
        formats = ("HEIF",)
    with _failures_in_words(source), Image.open(source, formats=formats) as image:
        _check_picture(source, image)
        yield image


def check_file(source: Path) -> None:
    """Raise PhotoError for what can be told without looking inside."""
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
    if width * height > errors.LARGEST_PIXELS:
        raise errors.too_large(source, width, height)
    pictures = getattr(image, "n_frames", 1) if image.format in MOVING_KINDS else 1
    if pictures > 1:
        raise errors.animated(source, pictures)


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
