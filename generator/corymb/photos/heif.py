"""Is this one of the HEIC files phones make, and can it be read here?

HEIC needs a decoder that Pillow doesn't carry, so it is an extra to install: most studios
never meet one, because phones hand over JPEGs when a photo is sent or exported.
"""

import importlib
from pathlib import Path

from corymb.photos import errors

# The brands of ISO/IEC 23008-12 (HEIF) for pictures coded with HEVC, and its general brand.
HEIF_BRANDS = {b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"mif1", b"msf1"}
AVIF_BRANDS = {b"avif", b"avis"}


def is_heif(source: Path) -> bool:
    """Read from the file's first box; AVIF lives in the same container and is not HEIC."""
    with source.open("rb") as file:
        head = file.read(64)
    if head[4:8] != b"ftyp":
        return False
    end = min(int.from_bytes(head[:4], "big"), len(head))
    brands = {head[8:12], *(head[at : at + 4] for at in range(16, end, 4))}
    return bool(brands & HEIF_BRANDS) and not brands & AVIF_BRANDS


def learn_to_read(source: Path) -> None:
    """Teach Pillow the format, or say which extra is missing."""
    try:
        importlib.import_module("pillow_heif").register_heif_opener()
    except ImportError as absent:
        raise errors.needs_heic(source) from absent
