"""What does a message show beside the link to a look that has no photo? Its picture, card-shaped.

The picture's wall and table go on to the sides, so that the card is filled and nothing is cut off.
"""

from __future__ import annotations

from functools import lru_cache

from PIL import Image

from corymb.photos import encode
from corymb.photos.finish import HOUSE_FINISH, Finish
from corymb.site.raster.pixels import pixels
from corymb.site.raster.sheet import on_sheet, reframed, view_box

HIGHEST = 6 / 5
"""How much higher than wide a picture's frame on a page is at most."""


def share_card(svg: str, finish: Finish = HOUSE_FINISH) -> bytes:
    """A drawn picture as a JPEG of the size that messages show. Raises NotDrawnError."""
    card = middle_of(sheet_of(svg, finish.card_size), finish.card_size)
    return encode.jpeg(card, finish.jpeg_quality)


@lru_cache(maxsize=1)  # what a phone's lists show is cut out of the same pixels, next in turn
def sheet_of(svg: str, card: tuple[int, int]) -> Image.Image:
    """A card's pixels with as much more above and below as a high frame needs."""
    across, down = card
    left, top, wide, high = view_box(reframed(svg, card))
    missing = drawn_size(svg, card)[0] * HIGHEST - down
    more = max(0, 2 * round(missing / 2 + 0.5))  # even, so that the card is whole pixels of it
    view = (left, top - high * more / down / 2, wide, high * (down + more) / down)
    return pixels(on_sheet(svg, view), (across, down + more))


def drawn_size(svg: str, card: tuple[int, int]) -> tuple[int, int]:
    """How large the drawing's own sheet is on its card, in pixels."""
    *_, width, height = view_box(svg)
    scale = min(card[0] / width, card[1] / height)
    return round(width * scale), round(height * scale)


def middle_of(image: Image.Image, size: tuple[int, int]) -> Image.Image:
    """What of an image lies in its middle, so large."""
    left, top = (image.width - size[0]) // 2, (image.height - size[1]) // 2
    return image.crop((left, top, left + size[0], top + size[1]))
