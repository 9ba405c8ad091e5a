"""How does a camera file become all the pictures a page needs?

The largest picture is decoded no larger than it must be, brought upright and to sRGB at its
final size, and the smaller ones are made from it: each step works on as few pixels as it can.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from PIL import Image

from corymb.photos import encode
from corymb.photos.colour import over_paper, profile_of, to_srgb
from corymb.photos.finish import Finish
from corymb.photos.modes import plain
from corymb.photos.opening import open_photo
from corymb.photos.palette import both_palettes, glance
from corymb.photos.placeholder import average_hex, placeholder
from corymb.photos.prepared import Format, PhotoColour
from corymb.photos.room import Room
from corymb.photos.share_card import share_card
from corymb.photos.sizes import Size, published_sizes
from corymb.photos.strips import thinned
from corymb.photos.upright import orientation, swap_if_sideways, upright

_ROOM = Room()
_GAP = 3.0  # Large steps are averaged first, to three times the final size: as good, and faster.


@dataclass(frozen=True)
class Print:
    """One finished picture, not yet filed."""

    format: Format
    size: Size
    data: bytes


@dataclass(frozen=True)
class Developed:
    """All that comes of one photo; `size` is the camera's, upright."""

    size: Size
    placeholder: str
    average_hex: str
    palette: tuple[PhotoColour, ...]
    flowers: tuple[PhotoColour, ...]
    prints: tuple[Print, ...]
    share_card: Print


def develop(source: Path, finish: Finish) -> Developed:
    """Raise PhotoError, in words for the photo's owner, when the file can't be used."""
    whole, sizes, largest = opened(source, finish)
    card = encode.jpeg(share_card(largest, finish.card_size), finish.jpeg_quality)
    small = glance(largest)
    palette, flowers = both_palettes(small)
    return Developed(
        size=whole,
        placeholder=placeholder(small),
        average_hex=average_hex(small),
        palette=palette,
        flowers=flowers,
        prints=tuple(_prints(largest, sizes, finish)),
        share_card=Print("jpeg", finish.card_size, card),
    )


def opened(source: Path, finish: Finish) -> tuple[Size, tuple[Size, ...], Image.Image]:
    """The camera's size, upright; the sizes to publish; and the photo in the largest of them."""
    with open_photo(source) as image:
        noted = orientation(image)
        whole = swap_if_sideways(image.size, noted)
        sizes = published_sizes(whole, finish.widths)
        picture = _decoded(image, swap_if_sideways(sizes[0], noted))
        profile = profile_of(image)
    return whole, sizes, over_paper(to_srgb(upright(picture, noted), profile), finish.paper)


def _decoded(image: Image.Image, size: Size) -> Image.Image:
    """The stored picture at this size; a JPEG is decoded near it, at no more work than that."""
    drafted = image.draft(None, size)
    with _ROOM.for_pixels(image.width * image.height):
        image.load()
        if drafted:
            picture, box = plain(image), drafted[1]
        else:
            picture, box = thinned(image, _factor(image.size, size)), None
        if picture.size == size:
            return picture
        return picture.resize(size, Image.Resampling.LANCZOS, box, _GAP)


def _factor(stored: Size, size: Size) -> int:
    return max(1, int(min(stored[0] / size[0], stored[1] / size[1]) / _GAP))


def _prints(largest: Image.Image, sizes: tuple[Size, ...], finish: Finish) -> Iterator[Print]:
    picture = largest
    for size in sizes:
        if size != picture.size:
            picture = picture.resize(size, Image.Resampling.LANCZOS)
        yield Print("avif", size, encode.avif(picture, finish.avif_quality, finish.avif_speed))
        yield Print("jpeg", size, encode.jpeg(picture, finish.jpeg_quality))
