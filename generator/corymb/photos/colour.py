"""Do the photo's numbers mean the colours a browser will show?

Phones write Display P3, cameras Adobe RGB, printers' files CMYK. Each is brought to sRGB
(IEC 61966-2-1), the one space every screen shows alike, through the profile it came with.
"""

import io
from functools import lru_cache
from itertools import product

from PIL import Image, ImageChops, ImageCms

from corymb.photos.adobe_rgb import adobe_rgb_profile, is_adobe_rgb

SRGB = ImageCms.createProfile("sRGB")
# Colours both spaces hold stay as they are; blacks are matched, so shadows keep their depth.
_INTENT = ImageCms.Intent.RELATIVE_COLORIMETRIC
_FLAGS = ImageCms.Flags.BLACKPOINTCOMPENSATION

# Which Pillow mode carries the numbers of a profile's colour space (ICC.1, table 19).
_MODE_OF_SPACE = {"RGB ": "RGB", "GRAY": "L", "CMYK": "CMYK"}

_STEPS = range(0, 256, 15)
_LATTICE = bytes(part for colour in product(_STEPS, repeat=3) for part in colour)


def profile_of(image: Image.Image) -> bytes | None:
    """The profile a photo came with, or the one its camera left out; None means sRGB."""
    attached = image.info.get("icc_profile")
    if attached:
        return bytes(attached)
    return adobe_rgb_profile() if is_adobe_rgb(image) else None


def to_srgb(image: Image.Image, profile: bytes | None) -> Image.Image:
    """RGB, or RGBA where the picture is partly transparent."""
    if "A" not in image.mode:
        return _convert(image, profile)
    colours = _convert(image.convert(image.mode.rstrip("A")), profile)
    colours.putalpha(image.getchannel("A"))
    return colours


def _convert(image: Image.Image, profile: bytes | None) -> Image.Image:
    """A profile that is broken, or of a space the pixels aren't in, says nothing: sRGB then."""
    if profile is None:
        return image.convert("RGB")
    try:
        mode, transform = _transform_of(profile)
        if transform is None or (mode == "CMYK") != (image.mode == "CMYK"):
            return image.convert("RGB")
        return transform.apply(image.convert(mode))
    except (ImageCms.PyCMSError, OSError, KeyError, ValueError):
        return image.convert("RGB")


@lru_cache(maxsize=4)
def _transform_of(profile: bytes) -> tuple[str, ImageCms.ImageCmsTransform | None]:
    """The mode a profile speaks of, and the way from it to sRGB; none for a profile of sRGB.

    A studio's photos come from a camera and a phone or two, so that few are kept, and a
    profile may be of sixteen megabytes.
    """
    meant = ImageCms.ImageCmsProfile(io.BytesIO(profile))
    mode = _MODE_OF_SPACE[meant.profile.xcolor_space]
    transform = ImageCms.buildTransform(meant, SRGB, mode, "RGB", _INTENT, _FLAGS)
    return mode, None if mode == "RGB" and _changes_nothing(transform) else transform


def _changes_nothing(transform: ImageCms.ImageCmsTransform) -> bool:
    """Whether no colour moves by more than one step: many cameras say "sRGB" by a profile."""
    lattice = Image.frombytes("RGB", (len(_STEPS) ** 2, len(_STEPS)), _LATTICE)
    moved = ImageChops.difference(lattice, transform.apply(lattice))
    return moved.point([255 * (step > 1) for step in range(256)] * 3).getbbox() is None


def over_paper(image: Image.Image, paper: str) -> Image.Image:
    """What is transparent shows the page's paper, as if the cut-out lay on it."""
    if image.mode != "RGBA":
        return image
    sheet = Image.new("RGBA", image.size, paper)
    return Image.alpha_composite(sheet, image).convert("RGB")
