"""In what plain form do the pixels come before they are resized or their colour read?

Files store pixels in a score of ways. Palettes can't be resized and sixteen-bit greys
can't be colour-managed by Pillow, so all of them become one of five plain modes:
L, LA, RGB, RGBA or CMYK.
"""

from PIL import Image, ImageCms

PLAIN_MODES = {"L", "LA", "RGB", "RGBA", "CMYK"}
_WITH_ALPHA = {"L": "LA", "RGB": "RGBA", "P": "RGBA", "1": "LA"}
_NEAREST_PLAIN = {"1": "L", "PA": "RGBA", "La": "LA", "RGBa": "RGBA"}


def plain(image: Image.Image) -> Image.Image:
    """The same picture in a plain mode, eight bits a channel, transparency kept."""
    if "transparency" in image.info and image.mode in _WITH_ALPHA:
        return image.convert(_WITH_ALPHA[image.mode])
    if image.mode in PLAIN_MODES:
        return image
    if image.mode == "LAB":
        return _from_lab(image)
    if image.mode == "F" or image.mode.startswith("I"):
        return _eight_bit_grey(image)
    return image.convert(_NEAREST_PLAIN.get(image.mode, "RGB"))


def _from_lab(image: Image.Image) -> Image.Image:
    """CIELAB under D50, as printers' TIFFs hold it, to sRGB.

    Unoptimised, because the table that is otherwise interpolated misses dark greens by ten steps.
    """
    lab, srgb = ImageCms.createProfile("LAB"), ImageCms.createProfile("sRGB")
    flags = ImageCms.Flags.NOOPTIMIZE
    picture = ImageCms.profileToProfile(image, lab, srgb, outputMode="RGB", flags=flags)
    assert picture is not None  # only a conversion in place returns nothing
    return picture


def _eight_bit_grey(image: Image.Image) -> Image.Image:
    """Sixteen bits to eight by the high byte; Pillow's own conversion clips at 255 instead."""
    wide = image.convert("I") if image.mode != "F" else image
    scale = 1.0 if image.mode == "F" else 1 / 257
    return wide.convert("F").point(lambda value: value * scale + 0.5).convert("L")
