"""Did the whole photo arrive, or was the copying cut short?"""

import os
from pathlib import Path

from PIL import Image

_NOTES = 128 * 1024  # Room for a camera's notes, a thumbnail and a profile.
_START_OF_SCAN = 0xDA
_END_OF_IMAGE = b"\xff\xd9"
# Markers that stand alone, with no length after them (ITU-T T.81, table B.1).
_BARE_MARKERS = {0x01, *range(0xD0, 0xD9)}


def load_unless_whole(image: Image.Image, source: Path) -> None:
    """Raise what Pillow raises when part of the picture is missing.

    A JPEG with its end marker is whole, and most photos are JPEGs; the rest are decoded.
    """
    if image.format not in ("JPEG", "MPO") or not (_ends_as_a_jpeg(source) or _has_end(source)):
        image.load()


def _ends_as_a_jpeg(source: Path) -> bool:
    """Whether its last two bytes are the end marker, and its picture begins before them.

    Of a studio's thousand photos, so little is read. The end of a thumbnail in the camera's notes
    can be the last that was copied of a photo, but then no picture has begun.
    """
    with source.open("rb") as file:
        begun = _scan_start(file.read(_NOTES)) is not None
        file.seek(-len(_END_OF_IMAGE), os.SEEK_END)
        return begun and file.read() == _END_OF_IMAGE


def _has_end(source: Path) -> bool:
    return has_jpeg_end(source.read_bytes())


def has_jpeg_end(data: bytes) -> bool:
    """True when an end marker follows the start of the picture's own data.

    The thumbnail inside the camera's notes has an end marker too, so the search
    starts where the main picture does (ITU-T T.81, annex B).
    """
    start = _scan_start(data)
    return start is not None and data.find(_END_OF_IMAGE, start) != -1


def _scan_start(data: bytes) -> int | None:
    at = 2
    while at + 4 <= len(data) and data[at] == 0xFF:
        marker = data[at + 1]
        if marker == _START_OF_SCAN:
            return at
        if marker == 0xFF:  # padding
            at += 1
        elif marker in _BARE_MARKERS:
            at += 2
        else:
            at += 2 + int.from_bytes(data[at + 2 : at + 4], "big")
    return None
