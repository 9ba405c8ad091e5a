"""What does a file say it is, in its first few bytes?

Asked where Pillow can't tell: to read HEIC only where one is met, and to know a damaged
photo from a file that never was one.
"""

from contextlib import suppress
from pathlib import Path

# The brands of ISO/IEC 23008-12 (HEIF): pictures coded with HEVC, and the container's own.
HEIF_BRANDS = {b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"mif1", b"msf1"}
AVIF_BRANDS = {b"avif", b"avis"}
_STARTS = (b"\xff\xd8\xff", b"\x89PNG", b"II*\0", b"MM\0*", b"GIF8")
_HEAD = 64


def is_heif(source: Path) -> bool:
    """AVIF lives in the same container and is not HEIC."""
    brands = _brands(_head(source))
    return bool(brands & HEIF_BRANDS) and not brands & AVIF_BRANDS


def begins_like_a_photo(source: Path) -> bool:
    head = _head(source)
    is_webp = head[:4] == b"RIFF" and head[8:12] == b"WEBP"
    return head.startswith(_STARTS) or is_webp or bool(_brands(head) & (HEIF_BRANDS | AVIF_BRANDS))


def _head(source: Path) -> bytes:
    """A file that has gone in the meantime begins like nothing."""
    with suppress(OSError), source.open("rb") as file:
        return file.read(_HEAD)
    return b""


def _brands(head: bytes) -> set[bytes]:
    """The main brand and the compatible ones of the file type box (ISO/IEC 14496-12, 4.3)."""
    if head[4:8] != b"ftyp":
        return set()
    end = min(int.from_bytes(head[:4], "big"), len(head))
    return {head[8:12], *(head[at : at + 4] for at in range(16, end, 4))}
