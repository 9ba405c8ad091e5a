"""QR codes as the standard has them: ISO/IEC 18004:2015, its tables, its annexes, and a reader.

zxing-cpp is a reader that shares no code with the library that makes the codes. Capacities and
the worked symbol of annex I are from memory, checked against two libraries.
"""

from __future__ import annotations

import re

import pytest
import segno
import zxingcpp
from PIL import Image, ImageDraw

from corymb.views.compose.code import QUIET, code_of
from corymb.views.papers import CodeView

TEXTS = {
    "an address": "https://bench.example/orders/barn-supper-bench.html",
    "a visit's address": "https://bench.example/orders/lantern-house--2026-09-22-bench.html",
    "a way within the site": "orders/barn-supper-bench.html",
    "accents and a pound sign": "Café crème, £5, naïve façade",
    "kanji": "花束と葉",
    "long": "https://bench.example/" + "garden/" * 30,
}


def drawn(code: CodeView, pixels: int = 4) -> Image.Image:
    """The code as an SVG shows it: each rectangle of its path in black, all else white."""
    side = code.modules * pixels
    image = Image.new("L", (side, side), 255)
    draw = ImageDraw.Draw(image)
    for x, y, long in re.findall(r"M(\d+) (\d+)h(\d+)v1h-\3z", code.path):
        left, top = int(x) * pixels, int(y) * pixels
        draw.rectangle((left, top, left + int(long) * pixels - 1, top + pixels - 1), fill=0)
    return image


@pytest.mark.parametrize("text", TEXTS.values(), ids=TEXTS)
def test_a_reader_reads_from_a_code_what_was_put_into_it(text: str) -> None:
    found = zxingcpp.read_barcodes(drawn(code_of(text)))
    assert [each.text for each in found] == [text]


@pytest.mark.parametrize("text", TEXTS.values(), ids=TEXTS)
def test_a_code_is_of_level_m(text: str) -> None:
    (found,) = zxingcpp.read_barcodes(drawn(code_of(text)))
    assert found.ec_level == "M"


@pytest.mark.parametrize("text", TEXTS.values(), ids=TEXTS)
def test_four_modules_are_clear_on_all_sides(text: str) -> None:
    code = code_of(text)
    image = drawn(code, pixels=1)
    dark = image.point(lambda value: 255 - value).getbbox()
    assert dark == (4, 4, code.modules - 4, code.modules - 4)
    assert QUIET == 4


def test_a_torn_corner_can_still_be_read() -> None:
    code = code_of(TEXTS["an address"])
    image = drawn(code)
    side = image.width
    ImageDraw.Draw(image).rectangle((side * 3 // 4, side * 3 // 4, side, side), fill=255)
    (found,) = zxingcpp.read_barcodes(image)
    assert found.text == TEXTS["an address"]


# ISO/IEC 18004:2015, table 7: most digits, capitals and bytes of a version at a level.
CAPACITY = [
    (1, "l", (41, 25, 17)),
    (2, "m", (63, 38, 26)),
    (10, "m", (513, 311, 213)),
    (40, "l", (7089, 4296, 2953)),
]


@pytest.mark.parametrize(("version", "level", "most"), CAPACITY)
@pytest.mark.parametrize("kind", [0, 1, 2], ids=["digits", "capitals", "bytes"])
def test_a_symbol_holds_as_much_as_the_standard_says_and_no_more(
    version: int, level: str, most: tuple[int, int, int], kind: int
) -> None:
    mode = ("numeric", "alphanumeric", "byte")[kind]
    text = ("7", "A", "a")[kind] * most[kind]
    symbol = segno.make_qr(text, version=version, error=level, mode=mode, boost_error=False)
    assert symbol.version == version
    with pytest.raises(segno.DataOverflowError):
        segno.make_qr(text + text[0], version=version, error=level, mode=mode, boost_error=False)


def bits_read(symbol: segno.QRCode, mask: int) -> str:
    """The codewords of a version 1 symbol in the order of clause 7.7.3, mask 2 or 5 taken off."""
    matrix, bits, up = symbol.matrix, "", True
    for right in (20, 18, 16, 14, 12, 10, 8, 5, 3, 1):
        for row in range(20, -1, -1) if up else range(21):
            for column in (right, right - 1):
                if not _is_function(row, column):
                    bits += str(matrix[row][column] ^ _masked(mask, row, column))
        up = not up
    return bits


def _is_function(row: int, column: int) -> bool:
    corner = (row < 9 and column < 9) or (row < 9 and column > 12) or (row > 12 and column < 9)
    return corner or row == 6 or column == 6


def _masked(mask: int, row: int, column: int) -> int:
    assert mask == 2
    return int(column % 3 == 0)


def test_the_worked_symbol_of_annex_i_has_the_standards_codewords() -> None:
    symbol = segno.make_qr("01234567", version=1, error="m", mask=2, boost_error=False)
    bits = bits_read(symbol, 2)
    words = " ".join(f"{int(bits[i : i + 8], 2):02X}" for i in range(0, 26 * 8, 8))
    assert words == (
        "10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55"
    )


def test_the_format_bits_of_level_m_and_mask_5_are_those_of_annex_c() -> None:
    symbol = segno.make_qr("01234567", version=1, error="m", mask=5, boost_error=False)
    left = [symbol.matrix[8][column] for column in (0, 1, 2, 3, 4, 5, 7, 8)]
    up = [symbol.matrix[row][8] for row in (7, 5, 4, 3, 2, 1, 0)]
    assert "".join(map(str, left + up)) == "100000011001110"
