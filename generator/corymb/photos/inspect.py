"""Can this photo be published, and how large is it? Answered without making anything."""

from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from corymb.photos.opening import open_photo
from corymb.photos.stat_index import Stamp, stamp_of
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


_SEEN: dict[str, tuple[Stamp, PhotoFacts]] = {}


def inspect(source: Path) -> PhotoFacts:
    """Raise PhotoError for every file that `prepare` would refuse.

    Only the header and the ends of a JPEG are looked at, and nothing of a photo that is as it was
    when this program looked last: a live server asks of all of them again and again.
    """
    name, stamp = str(source.absolute()), _stamp(source)
    known = _SEEN.get(name)
    if known and known[0] == stamp:
        return known[1]
    facts = _look(source)
    if stamp:
        _SEEN[name] = (stamp, facts)
    return facts


def _stamp(source: Path) -> Stamp | None:
    """None where there is nothing to stamp, of which `open_photo` says what is wrong."""
    with suppress(OSError, ValueError):
        return stamp_of(source)
    return None


def _look(source: Path) -> PhotoFacts:
    with open_photo(source) as image:
        width, height = swap_if_sideways(image.size, orientation(image))
        kind = _KIND_OF.get(image.format or "", image.format or "")
        load_unless_whole(image, source)
    return PhotoFacts(width, height, kind, source.stat().st_size)
