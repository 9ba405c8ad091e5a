"""What colours does a camera mean that was set to Adobe RGB and attached no profile?

Cameras following the DCF standard (CIPA DC-009, "optional colour space") mark such a photo
only by the interoperability index R03. Taken for sRGB it looks dull, so the profile
is written here, from the numbers of the published colour space.
"""

import struct

from PIL import ExifTags, Image

INTEROPERABILITY_INDEX = 1
ADOBE_RGB_INDEX = "R03"

# Adobe RGB (1998) Color Image Encoding, May 2005: gamma 2 + 51/256 (section 4.3.1.2), and the
# primaries adapted to the profile connection space's D50 (annex C.2), in 16.16 fixed point there.
GAMMA = 2 + 51 / 256
WHITE_D50 = (0.9642, 1.0, 0.8249)
PRIMARIES_D50 = {
    b"rXYZ": (0.60974, 0.31111, 0.01947),
    b"gXYZ": (0.20528, 0.62567, 0.06087),
    b"bXYZ": (0.14919, 0.06322, 0.74457),
}
_HEADER_LENGTH = 128


def is_adobe_rgb(image: Image.Image) -> bool:
    notes = image.getexif().get_ifd(ExifTags.IFD.Interop)
    return str(notes.get(INTEROPERABILITY_INDEX, "")).rstrip("\0") == ADOBE_RGB_INDEX


def adobe_rgb_profile() -> bytes:
    return matrix_profile(PRIMARIES_D50, gamma_curve(GAMMA))


def gamma_curve(gamma: float) -> bytes:
    """A single power, which ICC version 2 keeps in 256ths."""
    return b"curv" + struct.pack(">4xIH2x", 1, round(gamma * 256))


def matrix_profile(primaries: dict[bytes, tuple[float, float, float]], curve: bytes) -> bytes:
    """An ICC version 2 display profile of three primaries and one curve (ICC.1:2001-04)."""
    tags = {
        b"desc": b"desc" + struct.pack(">4xI", 4) + b"rgb\0" + bytes(78),
        b"cprt": b"text" + bytes(4) + b"none\0" + bytes(3),
        b"wtpt": _xyz(WHITE_D50),
        **{name: _xyz(value) for name, value in primaries.items()},
        **dict.fromkeys((b"rTRC", b"gTRC", b"bTRC"), curve),
    }
    table, body = _tag_table(tags)
    length = _HEADER_LENGTH + len(table) + len(body)
    return _header(length) + table + body


def _header(length: int) -> bytes:
    start = struct.pack(">I4xI4s4s4s", length, 0x02100000, b"mntr", b"RGB ", b"XYZ ")
    start += bytes(12) + b"acsp" + bytes(28) + _fixed(WHITE_D50)
    return start.ljust(_HEADER_LENGTH, b"\0")


def _tag_table(tags: dict[bytes, bytes]) -> tuple[bytes, bytes]:
    """The directory of tags, then the tags, each padded to four bytes."""
    at = _HEADER_LENGTH + 4 + 12 * len(tags)
    table, body = struct.pack(">I", len(tags)), b""
    for name, value in tags.items():
        table += struct.pack(">4sII", name, at + len(body), len(value))
        body += value + bytes(-len(value) % 4)
    return table, body


def _xyz(value: tuple[float, float, float]) -> bytes:
    return b"XYZ " + bytes(4) + _fixed(value)


def _fixed(value: tuple[float, float, float]) -> bytes:
    return struct.pack(">3i", *(round(part * 65536) for part in value))
