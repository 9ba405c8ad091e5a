"""Photos as cameras, phones and programs leave them, made here so that none is anyone's."""

import io
import struct
import zlib
from pathlib import Path
from typing import Any

from PIL import Image, ImageCms

from corymb.photos.adobe_rgb import WHITE_D50, gamma_curve, matrix_profile

Corner = tuple[int, int]

PAPER_WHITE = (250, 250, 250)
CRIMSON = (220, 20, 60)


def marked(size: tuple[int, int] = (64, 48), block: int = 16) -> Image.Image:
    """White with a red block top left, so that every turn shows."""
    image = Image.new("RGB", size, PAPER_WHITE)
    image.paste(CRIMSON, (0, 0, block, block))
    return image


def petals(size: tuple[int, int] = (800, 600)) -> Image.Image:
    """Soft blotches of colour: enough detail that encoders have something to do."""
    width, height = size
    bands = [Image.linear_gradient("L"), Image.radial_gradient("L")]
    bands.append(bands[0].transpose(Image.Transpose.ROTATE_90))
    return Image.merge("RGB", [band.resize((width, height)) for band in bands])


def save(image: Image.Image, path: Path, **settings: Any) -> Path:
    path.parent.mkdir(parents=True, exist_ok=True)
    image.save(path, **settings)
    return path


def jpeg_bytes(image: Image.Image, **settings: Any) -> bytes:
    output = io.BytesIO()
    image.save(output, "JPEG", **settings)
    return output.getvalue()


def turned_exif(orientation: int) -> Image.Exif:
    notes = Image.Exif()
    notes[0x0112] = orientation
    return notes


def with_segment(jpeg: bytes, marker: int, payload: bytes) -> bytes:
    """The JPEG with one more segment of notes, straight after its start."""
    segment = bytes([0xFF, marker]) + struct.pack(">H", len(payload) + 2) + payload
    return jpeg[:2] + segment + jpeg[2:]


def png_chunk(kind: bytes, payload: bytes) -> bytes:
    checksum = zlib.crc32(kind + payload)
    return struct.pack(">I", len(payload)) + kind + payload + struct.pack(">I", checksum)


def with_png_chunk(png: bytes, kind: bytes, payload: bytes) -> bytes:
    """The PNG with one more chunk, straight after its header."""
    return png[:33] + png_chunk(kind, payload) + png[33:]


def bare_png(size: tuple[int, int], depth: int, colour_type: int, rows: bytes) -> bytes:
    """A PNG of any depth and kind (PNG specification, 11.2.2), as Pillow can't write it."""
    header = struct.pack(">IIBBBBB", *size, depth, colour_type, 0, 0, 0)
    chunks = [(b"IHDR", header), (b"IDAT", zlib.compress(rows)), (b"IEND", b"")]
    return b"\x89PNG\r\n\x1a\n" + b"".join(png_chunk(*chunk) for chunk in chunks)


def profile(
    red: tuple[float, float, float],
    green: tuple[float, float, float],
    blue: tuple[float, float, float],
    curve: bytes = gamma_curve(2.2),
) -> bytes:
    """An ICC profile of three primaries, given as XYZ under D50."""
    return matrix_profile({b"rXYZ": red, b"gXYZ": green, b"bXYZ": blue}, curve)


def grey_profile(gamma: float) -> bytes:
    """A profile for grey pictures: the display profile with its three curves made one."""
    flat = (WHITE_D50[0] / 3, WHITE_D50[1] / 3, WHITE_D50[2] / 3)
    made = profile(flat, flat, flat, gamma_curve(gamma))
    return made[:16] + b"GRAY" + made[20:].replace(b"rTRC", b"kTRC", 1)


def srgb_profile() -> bytes:
    return ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
