"""How is a finished picture written, with its pixels and nothing else?

Pillow carries notes along from the file it opened (a JPEG comment survives a plain save).
So the pixels are laid on a new picture, which has never seen a note, before anything is saved.
No colour profile is attached either: without one, browsers read a picture as sRGB, which it is.
"""

import io

from PIL import Image


def avif(image: Image.Image, quality: int, speed: int) -> bytes:
    """One thread a picture, as photos are made side by side; the bytes are the same with more."""
    return _save(image, "AVIF", quality=quality, speed=speed, max_threads=1)


def jpeg(image: Image.Image, quality: int) -> bytes:
    """Progressive: the whole picture shows early and sharpens as it arrives."""
    return _save(image, "JPEG", quality=quality, progressive=True, optimize=True)


def webp(image: Image.Image, quality: int) -> bytes:
    """Only for placeholders: the smallest header of the three."""
    return _save(image, "WEBP", quality=quality, method=6)


def _save(image: Image.Image, kind: str, **settings: int | bool) -> bytes:
    output = io.BytesIO()
    pixels_alone(image).save(output, kind, **settings)
    return output.getvalue()


def pixels_alone(image: Image.Image) -> Image.Image:
    clean = Image.new("RGB", image.size)
    clean.paste(image)
    return clean
