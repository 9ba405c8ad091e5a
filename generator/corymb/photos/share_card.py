"""Which part of the photo shows beside a link in a message?"""

from PIL import Image, ImageOps

# The flowers of a held or standing piece are in the upper half, its stems in the lower:
# where a tall photo must lose something, it loses more from below.
CENTRE = (0.5, 0.4)  # across, down


def share_card(image: Image.Image, size: tuple[int, int]) -> Image.Image:
    """Fill the card's shape, cutting off what stands over.

    The one place where a small photo is enlarged: messengers leave small cards out altogether.
    """
    return ImageOps.fit(image, size, Image.Resampling.LANCZOS, centering=CENTRE)
