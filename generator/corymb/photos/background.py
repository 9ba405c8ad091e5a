"""Which part of a photo lies behind the flowers: wall, cloth, table?

A colour that the picture's border is made of is taken for what lies behind, as far as it reaches
in from the border without a break: so a white cloth goes, and a white flower with something
darker around it stays. Vessels and leaves stay as well. It is a guess by colour and place, with
no knowledge of what a flower is: good enough to say how near a photo comes to a recipe.
"""

from collections.abc import Callable

from PIL import Image, ImageDraw

# The border's width, as a part of the shorter side. This and the next three are house values:
# common practice, no source.
BORDER = 0.06
# A colour with less of the border than this only happens to lie there,
LEAST_OF_BORDER = 0.03
# and so does one that takes so much less of the border than of the picture.
LEAST_BESIDE_WHOLE = 0.5

# A wall is lighter in its middle than at its edges, by so much (CIELAB).
SAME_WALL = 7.0

_REACHED = 128


def behind(numbers: Image.Image, apart: Callable[[int, int], float]) -> Image.Image:
    """A mask of what lies behind, in a picture (`L`) that holds each pixel's colour by number.

    `apart` tells how far apart two of its colours are in CIELAB.
    """
    whole, along = numbers.histogram(), numbers.histogram(_border(numbers.size))
    there = [number for number, pixels in enumerate(whole) if pixels]
    first = [number for number in there if _is_behind(number, whole, along)]
    found = {n for n in there if any(apart(n, other) <= SAME_WALL for other in first)}
    return _reached(numbers.point([255 * (number in found) for number in range(256)]))


def _is_behind(number: int, whole: list[int], along: list[int]) -> bool:
    of_border = along[number] / sum(along)
    of_whole = whole[number] / sum(whole)
    return of_border >= LEAST_OF_BORDER and of_border >= LEAST_BESIDE_WHOLE * of_whole


def _border(size: tuple[int, int]) -> Image.Image:
    """A mask of the picture's border; of all of it where there is no inside."""
    deep = max(1, round(BORDER * min(size)))
    mask = Image.new("L", size, 255)
    right, bottom = size[0] - deep - 1, size[1] - deep - 1
    if deep <= right and deep <= bottom:
        ImageDraw.Draw(mask).rectangle((deep, deep, right, bottom), 0)
    return mask


def _reached(mask: Image.Image) -> Image.Image:
    """What of a mask hangs together with the picture's edge."""
    wide, high = mask.size
    framed = Image.new("L", (wide + 2, high + 2), 255)
    framed.paste(mask, (1, 1))
    ImageDraw.floodfill(framed, (0, 0), _REACHED)
    reached = framed.crop((1, 1, wide + 1, high + 1))
    return reached.point([255 * (value == _REACHED) for value in range(256)])
