"""Which colours make up a photo, and how much of it is each?

The pixels are gathered in CIELAB, where equal steps look equal, by Pillow's median cut and
k-means; groups that the eye would call one colour are then joined.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from PIL import Image, ImageCms, ImageStat

from corymb.photos.background import behind
from corymb.photos.prepared import PhotoColour

_LOOKED_AT = (100, 100)  # Enough pixels to tell shares to a hundredth.
_GROUPS = 12
# Gathering ends when no more than this many pixels would change their group.
_SETTLED = 20
# Lab distance below which two groups are one colour. House value: common practice, no source.
_ONE_COLOUR = 10.0
_SMALLEST_SHARE = 0.02

Lab = tuple[float, float, float]


@dataclass(frozen=True)
class _Group:
    pixels: int
    lab: Lab
    rgb: tuple[float, float, float]

    def joined(self, other: "_Group") -> "_Group":
        return _Group(
            self.pixels + other.pixels,
            _mean(self.lab, self.pixels, other.lab, other.pixels),
            _mean(self.rgb, self.pixels, other.rgb, other.pixels),
        )


@dataclass(frozen=True)
class _Sorted:
    """A small picture, its CIELAB, and the number of each pixel's group (`L`)."""

    image: Image.Image
    posing: Image.Image
    numbers: Image.Image


def palette(image: Image.Image) -> tuple[PhotoColour, ...]:
    """The colours of an sRGB picture, the largest share first; crumbs are left out."""
    return _colours_of(_sort(glance(image)))


def flower_palette(image: Image.Image) -> tuple[PhotoColour, ...]:
    """The same for what stands before the wall, cloth or table, which `background` finds.

    Of the whole picture, where nothing is left of it.
    """
    return _flowers_of(_sort(glance(image)))


def both_palettes(image: Image.Image) -> tuple[tuple[PhotoColour, ...], tuple[PhotoColour, ...]]:
    """The palette and the flowers', at hardly more work than one."""
    whole = _sort(glance(image))
    return _colours_of(whole), _flowers_of(whole)


def glance(image: Image.Image) -> Image.Image:
    """The picture as small as suffices to tell its colours."""
    small = image.copy()
    small.thumbnail(_LOOKED_AT, Image.Resampling.BOX)
    return small


def _flowers_of(whole: _Sorted) -> tuple[PhotoColour, ...]:
    kept = _pixels_before(whole.image, _behind(whole))
    enough = kept.width >= _SMALLEST_SHARE * whole.image.width * whole.image.height
    return _colours_of(_sort(kept) if enough else whole)


def _behind(whole: _Sorted) -> Image.Image:
    labs = {number: _average(whole.posing, mask) for number, _, mask in _masks(whole.numbers)}
    return behind(whole.numbers, lambda one, other: _apart(labs[one], labs[other]))


def _pixels_before(image: Image.Image, left_out: Image.Image) -> Image.Image:
    """The pixels that the mask doesn't leave out, in one row; of no width where it leaves none."""
    step = len(image.getbands())
    data, mask = image.tobytes(), left_out.tobytes()
    kept = b"".join(
        data[step * at : step * (at + 1)] for at, masked in enumerate(mask) if not masked
    )
    return Image.frombytes(image.mode, (len(kept) // step, 1), kept)


def _colours_of(picture: _Sorted) -> tuple[PhotoColour, ...]:
    groups = _join_alike(_groups(picture))
    total = picture.image.width * picture.image.height
    colours = [PhotoColour(_hex(each.rgb), round(each.pixels / total, 4)) for each in groups]
    kept = [each for each in colours if each.share >= _SMALLEST_SHARE]
    return tuple(sorted(kept, key=lambda each: (-each.share, each.hex)))


def _sort(image: Image.Image) -> _Sorted:
    posing = _in_lab(image)
    sorted_out = posing.quantize(_GROUPS, Image.Quantize.MEDIANCUT, _SETTLED)
    numbers = Image.frombytes("L", sorted_out.size, sorted_out.tobytes())
    return _Sorted(image, posing, numbers)


def _in_lab(image: Image.Image) -> Image.Image:
    """CIELAB whose bands pose as red, green and blue: Pillow sorts nothing else."""
    return Image.merge("RGB", _to_lab().apply(image).split())


@cache
def _to_lab() -> ImageCms.ImageCmsTransform:
    """Made once: making it takes longer than using it."""
    srgb, lab = ImageCms.createProfile("sRGB"), ImageCms.createProfile("LAB")
    return ImageCms.buildTransform(srgb, lab, "RGB", "LAB")


def _masks(numbers: Image.Image) -> Iterator[tuple[int, int, Image.Image]]:
    """Each group's number, how many pixels it has, and which."""
    for number, pixels in enumerate(numbers.histogram()):
        if pixels:
            yield number, pixels, numbers.point([255 * (n == number) for n in range(256)], "1")


def _groups(picture: _Sorted) -> list[_Group]:
    return [
        _Group(pixels, _average(picture.posing, mask), _average(picture.image, mask))
        for _, pixels, mask in _masks(picture.numbers)
    ]


def _join_alike(groups: list[_Group]) -> list[_Group]:
    """Join the two nearest, again and again, until all that are left differ."""
    while len(groups) > 1:
        pairs = [(a, b) for n, a in enumerate(groups) for b in groups[n + 1 :]]
        one, other = min(pairs, key=lambda pair: _apart(pair[0].lab, pair[1].lab))
        if _apart(one.lab, other.lab) >= _ONE_COLOUR:
            break
        rest = [each for each in groups if each is not one and each is not other]
        groups = [*rest, one.joined(other)]
    return groups


def _average(image: Image.Image, mask: Image.Image) -> tuple[float, float, float]:
    first, second, third = ImageStat.Stat(image, mask).mean
    return first, second, third


def _mean(one: Lab, weight: int, other: Lab, other_weight: int) -> Lab:
    first, second, third = (
        (a * weight + b * other_weight) / (weight + other_weight)
        for a, b in zip(one, other, strict=True)
    )
    return first, second, third


def _apart(one: Lab, other: Lab) -> float:
    """Distance with lightness brought from Pillow's 0-255 back to 0-100."""
    lightness = (one[0] - other[0]) * 100 / 255
    return float((lightness**2 + (one[1] - other[1]) ** 2 + (one[2] - other[2]) ** 2) ** 0.5)


def _hex(rgb: tuple[float, float, float]) -> str:
    return "#" + "".join(f"{round(part):02x}" for part in rgb)
