"""How is a very large picture made plain and smaller without a second one as large beside it?

Turning sixteen-bit greys, palettes or transparent pixels into others takes several times the
room of the picture. So it is done a strip of rows at a time, and each is averaged at once.
"""

from PIL import Image

from corymb.photos.modes import plain

# A picture of fewer pixels is brought down whole: 64 MB at four bytes each. House values.
LARGE = 16_000_000
_ROWS = 256


def thinned(image: Image.Image, factor: int) -> Image.Image:
    """In a plain mode, each square of `factor` pixels averaged into one."""
    if image.width * image.height <= LARGE:
        return plain(image)
    rows = _ROWS * factor
    first = _strip(image, 0, rows, factor)
    small = Image.new(first.mode, (first.width, -(-image.height // factor)))
    small.paste(first, (0, 0))
    for top in range(rows, image.height, rows):
        small.paste(_strip(image, top, rows, factor), (0, top // factor))
    return small


def _strip(image: Image.Image, top: int, rows: int, factor: int) -> Image.Image:
    bottom = min(top + rows, image.height)
    return plain(image.crop((0, top, image.width, bottom))).reduce(factor)
