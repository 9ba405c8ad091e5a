"""What does a message show beside the link to a look that has no photo? Its picture, card-shaped.

The picture's wall and table go on to the sides, so that the card is filled and nothing is cut off.
"""

from __future__ import annotations

from corymb.photos import encode
from corymb.photos.finish import HOUSE_FINISH, Finish
from corymb.site.raster.pixels import pixels
from corymb.site.raster.sheet import reframed


def share_card(svg: str, finish: Finish = HOUSE_FINISH) -> bytes:
    """A drawn picture as a JPEG of the size that messages show. Raises NotDrawnError."""
    card = pixels(reframed(svg, finish.card_size), finish.card_size)
    return encode.jpeg(card, finish.jpeg_quality)
