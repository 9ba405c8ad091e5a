"""Can this photo be published, and how large is it? Answered without making anything."""

from dataclasses import dataclass
from pathlib import Path

from corymb.photos.opening import open_photo
from corymb.photos.upright import orientation, swap_if_sideways
from corymb.photos.whole import load_unless_whole

_KIND_OF = {"MPO": "JPEG", "WEBP": "WebP", "HEIF": "HEIC"}


@dataclass(frozen=True)
class PhotoFacts:
    """`width` and `height` are in pixels, the right way up; `kind` is JPEG, PNG, HEIC and so on."""

    width: int
    height: int
    kind: str
    size_bytes: int


def inspect(source: Path) -> PhotoFacts:
    """Raise PhotoError for every file that `prepare` would refuse.

    Only the header and the ends of a JPEG are looked at, so that a whole studio's
    photos are checked in the time it takes to read them.
    """
    with open_photo(source) as image:
        width, height = swap_if_sideways(image.size, orientation(image))
        kind = _KIND_OF.get(image.format or "", image.format or "")
        load_unless_whole(image, source)
    return PhotoFacts(width, height, kind, source.stat().st_size)
