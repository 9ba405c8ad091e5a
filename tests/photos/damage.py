"""What happens to photos on their way: bytes that turn, go missing or come in, and cut-off ends."""

import io
import random
import struct
import zlib
from collections.abc import Iterator

from PIL import Image

from .camera import grey_profile, jpeg_bytes, marked, srgb_profile, turned_exif, with_segment

# Numbers that a length or a size had better not be.
EXTREMES = (0, 1, 0x7F, 0xFF, 0x7FFF, 0xFFFF, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFF)
CHUNKS_START = 8  # PNG specification, 5.2


def damaged(data: bytes, chance: random.Random) -> bytes:
    """A few bytes wrong, some missing, or some put in; mostly near the start, where they matter."""
    broken = bytearray(data)
    for _ in range(chance.randint(1, 6)):
        at = chance.randrange(min(len(broken), chance.choice([40, 400, 4000])))
        harm = chance.choice(["wrong", "missing", "extra"])
        if harm == "wrong":
            broken[at] = chance.randrange(256)
        elif harm == "missing":
            del broken[at : at + chance.randint(1, 20)]
        else:
            broken[at:at] = chance.randbytes(chance.randint(1, 20))
    return bytes(broken)


def bit_turned(data: bytes, chance: random.Random) -> bytes:
    broken = bytearray(data)
    broken[chance.randrange(len(broken))] ^= 1 << chance.randrange(8)
    return bytes(broken)


def cut(data: bytes, chance: random.Random) -> bytes:
    return data[: chance.randrange(1, len(data))]


def number_wrong(data: bytes, chance: random.Random) -> bytes:
    """One of the file's numbers is as small or as large as it can be written."""
    broken, form = bytearray(data), chance.choice([">H", "<H", ">I", "<I"])
    most = 256 ** struct.calcsize(form) - 1
    at = chance.randrange(min(len(broken) - 4, chance.choice([60, 600, 6000])))
    struct.pack_into(form, broken, at, min(chance.choice(EXTREMES), most))
    return bytes(broken)


def piece_repeated(data: bytes, chance: random.Random) -> bytes:
    start = chance.randrange(len(data))
    piece = data[start : start + chance.randint(1, 400)]
    return data[:start] + piece * chance.choice([2, 3, 200]) + data[start:]


HARMS = (damaged, bit_turned, cut, number_wrong, piece_repeated)


def harmed(data: bytes, chance: random.Random) -> bytes:
    """Any harm; half of the PNGs with checksums that are right again, so that it gets further."""
    broken = chance.choice(HARMS)(data, chance)
    is_png = broken.startswith(b"\x89PNG\r\n\x1a\n")
    return _with_checksums(broken) if is_png and chance.random() < 0.5 else broken


def _with_checksums(png: bytes) -> bytes:
    mended, at = bytearray(png), CHUNKS_START
    while at + 12 <= len(mended):
        end = at + 8 + int.from_bytes(mended[at : at + 4], "big")
        if end + 4 > len(mended):
            break
        struct.pack_into(">I", mended, end, zlib.crc32(mended[at + 4 : end]))
        at = end + 4
    return bytes(mended)


def whole_photos() -> Iterator[tuple[str, bytes]]:
    """A small photo of each kind and way of storing, by the end of its name."""
    notes = {"exif": turned_exif(6), "icc_profile": srgb_profile()}
    photo = marked()
    thumbnail = b"Photoshop 3.0\x008BIM\x04\x0c\0\0" + jpeg_bytes(marked((16, 12)))
    yield "jpg", with_segment(jpeg_bytes(photo, **notes), 0xED, thumbnail)
    yield "jpg", jpeg_bytes(photo, progressive=True)
    yield "jpg", jpeg_bytes(photo.convert("CMYK"))
    yield "jpg", _saved(photo, "MPO", save_all=True, append_images=[marked((32, 24))])
    yield "png", _saved(photo, "PNG", **notes)
    yield "png", _saved(photo.convert("P"), "PNG", transparency=3)
    yield "png", _saved(photo.convert("L").convert("I;16"), "PNG", icc_profile=grey_profile(1.8))
    for compression in (None, "tiff_lzw", "tiff_adobe_deflate", "jpeg", "packbits", "group4"):
        mode = "1" if compression == "group4" else "RGB"
        yield "tif", _saved(photo.convert(mode), "TIFF", compression=compression)
    yield "webp", _saved(photo, "WEBP", **notes)
    yield "webp", _saved(photo.convert("RGBA"), "WEBP", lossless=True)
    yield "avif", _saved(photo, "AVIF", **notes)
    yield "gif", _saved(photo, "GIF")
    yield "bmp", _saved(photo, "BMP")


def _saved(image: Image.Image, kind: str, **settings: object) -> bytes:
    output = io.BytesIO()
    image.save(output, kind, **settings)
    return output.getvalue()
