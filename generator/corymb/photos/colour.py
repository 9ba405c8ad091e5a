"""Do the photo's numbers mean the colours a browser will show?

Phones write Display P3, cameras Adobe RGB, printers' files CMYK. Each is brought to sRGB
(IEC 61966-2-1), the one space every screen shows alike, through the profile it came with.
"""

import io

from PIL import Image, ImageCms

from corymb.photos.adobe_rgb import adobe_rgb_profile, is_adobe_rgb

SRGB = ImageCms.createProfile("sRGB")
# Colours both spaces hold stay as they are; blacks are matched, so shadows keep their depth.
_INTENT = ImageCms.Intent.RELATIVE_COLORIMETRIC
_FLAGS = ImageCms.Flags.BLACKPOINTCOMPENSATION

# Which Pillow mode carries the numbers of a profile's colour space (ICC.1, table 19).
_MODE_OF_SPACE = {"RGB ": "RGB", "GRAY": "L", "CMYK": "CMYK"}


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
        meant = ImageCms.ImageCmsProfile(io.BytesIO(profile))
        mode = _MODE_OF_SPACE[meant.profile.xcolor_space]
        if (mode == "CMYK") != (image.mode == "CMYK"):
            return image.convert("RGB")
        return _through(image.convert(mode), meant)
    except (ImageCms.PyCMSError, OSError, KeyError):
        return image.convert("RGB")


def _through(image: Image.Image, meant: ImageCms.ImageCmsProfile) -> Image.Image:
    converted = ImageCms.profileToProfile(
        image, meant, SRGB, renderingIntent=_INTENT, outputMode="RGB", flags=_FLAGS
    )
    assert converted is not None  # only a conversion in place returns nothing
    return converted


def over_paper(image: Image.Image, paper: str) -> Image.Image:
    """What is transparent shows the page's paper, as if the cut-out lay on it."""
    if image.mode != "RGBA":
        return image
    sheet = Image.new("RGBA", image.size, paper)
    return Image.alpha_composite(sheet, image).convert("RGB")
