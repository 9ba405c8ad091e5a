"""What stands in the photo's place while it is on its way?"""

import base64

from PIL import Image

from corymb.photos import encode

LONGEST_URI = 399
# Tried in turn until one is short enough; the last can't fail for any picture.
_TRIES = ((24, 30), (16, 20), (8, 10))


def placeholder(image: Image.Image) -> str:
    """A data URI under 400 bytes: the photo's main patches of colour, to be shown blurred."""
    return next(
        (uri for uri in (_uri(image, *each) for each in _TRIES) if len(uri) <= LONGEST_URI),
        average_hex(image),
    )


def _uri(image: Image.Image, longest: int, quality: int) -> str:
    small = image.copy()
    small.thumbnail((longest, longest), Image.Resampling.BOX)
    coded = base64.b64encode(encode.webp(small, quality)).decode("ascii")
    return f"data:image/webp;base64,{coded}"


def average_hex(image: Image.Image) -> str:
    """The mean colour, as the eye takes a blurred picture: averaged in sRGB, not in light."""
    red, green, blue = image.resize((1, 1), Image.Resampling.BOX).tobytes()
    return f"#{red:02x}{green:02x}{blue:02x}"
