"""Which way up was the camera held?

Cameras store the picture as the sensor lay and note how to turn it: tag 274, Orientation,
of Exif 2.3. Once turned, nothing needs to be noted.
"""

from PIL import ExifTags, Image

Size = tuple[int, int]

TURNS = {
    2: Image.Transpose.FLIP_LEFT_RIGHT,
    3: Image.Transpose.ROTATE_180,
    4: Image.Transpose.FLIP_TOP_BOTTOM,
    5: Image.Transpose.TRANSPOSE,
    6: Image.Transpose.ROTATE_270,
    7: Image.Transpose.TRANSVERSE,
    8: Image.Transpose.ROTATE_90,
}
_SIDEWAYS = {5, 6, 7, 8}


def orientation(image: Image.Image) -> int:
    """The noted turn, 1 to 8; anything else a camera wrote counts as upright.

    Pillow turns a TIFF by itself while decoding it, and gives its size as turned.
    """
    if image.format == "TIFF":
        return 1
    noted = image.getexif().get(ExifTags.Base.Orientation, 1)
    return noted if noted in TURNS else 1


def swap_if_sideways(size: Size, noted: int) -> Size:
    """From the stored size to the upright one, or back."""
    return (size[1], size[0]) if noted in _SIDEWAYS else size


def upright(image: Image.Image, noted: int) -> Image.Image:
    turn = TURNS.get(noted)
    return image if turn is None else image.transpose(turn)
