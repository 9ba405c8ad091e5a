"""What does a phone get in place of a drawing where it stands small? The drawing's pixels.

Many hundred papers weigh as much however small they are shown: in a list, pixels of the width of
half a phone's screen come to half of it, and a recipe's sizes side by side to a third. A page's
own large picture stays a drawing, and so does every one on a wide screen.
"""

from __future__ import annotations

from PIL import Image

from corymb.photos import encode
from corymb.photos.finish import HOUSE_FINISH
from corymb.site.raster.pixels import pixels
from corymb.site.raster.share_card import drawn_size, middle_of, sheet_of
from corymb.site.raster.sheet import view_box

LOOK_PX = 480
"""Half the width of a phone's 390 points, margins taken off, at nearly three pixels each."""
SIZES_PX = 720
"""The whole of that width at two pixels each: side by side no piece is looked at closely."""
HIGH, WIDE = 6 / 5, 3 / 4
"""How high for its width a frame is, in most lists and in those of wide arrangements."""
QUALITY = 50
"""Below a photo's, for flat papers lose little by it: our own choice, made by eye."""


def small_look(svg: str, shape: float = HIGH) -> bytes:
    """A look as AVIF, with as much of its wall and table as fills the frame. Raises NotDrawnError.

    `shape` is the frame's height for its width, one of `HIGH` and `WIDE`.
    """
    card = HOUSE_FINISH.card_size
    across, down = drawn_size(svg, card)
    size = max(across, round(down / shape)), max(down, round(across * shape))
    image = middle_of(sheet_of(svg, card), size)
    return _avif(image.resize((LOOK_PX, round(LOOK_PX * shape)), Image.Resampling.LANCZOS))


def small_wide_look(svg: str) -> bytes:
    """The same for a list of wide arrangements."""
    return small_look(svg, WIDE)


def small_sizes(svg: str) -> bytes:
    """A recipe's sizes side by side as AVIF. Raises NotDrawnError."""
    *_, width, height = view_box(svg)
    return _avif(pixels(svg, (SIZES_PX, round(SIZES_PX * height / width))))


def _avif(image: Image.Image) -> bytes:
    return encode.avif(image, QUALITY, HOUSE_FINISH.avif_speed)
