"""A secret that leaks is found, wherever it stands and however it is written.

Each row leaks one on purpose. If one of these fails, what the other tests search for in vain may
be there after all.
"""

from __future__ import annotations

import base64
import gzip
import io
import json
import zlib
from collections.abc import Callable
from html import escape
from pathlib import Path
from urllib.parse import quote

import pytest
from PIL import Image, PngImagePlugin
from pypdf import PdfWriter

from tests.site.found_secrets import found_in
from tests.site.unwrapping import every_text_of

WORD = "zq12345hush"


def image(kind: str, **notes: object) -> bytes:
    output = io.BytesIO()
    Image.new("RGB", (16, 12), "#a3412a").save(output, kind, **notes)
    return output.getvalue()


def exif(tag: int, value: object) -> Image.Exif:
    notes = Image.Exif()
    notes[tag] = value
    return notes


def thumbnail() -> bytes:
    """A JPEG that has a small one in its EXIF, whose own comment tells."""
    small = image("JPEG", comment=WORD.encode())
    return image("JPEG", exif=b"Exif\0\0MM\0*\0\0\0\x08\0\0\0\0\0\0" + small)


def profile() -> bytes:
    """A colour profile's description, in letters of two bytes."""
    return image("JPEG", icc_profile=b"desc\0\0\0\0mluc" + WORD.encode("utf-16-be"))


def png_text() -> bytes:
    notes = PngImagePlugin.PngInfo()
    notes.add_text("Comment", WORD, zip=True)
    return image("PNG", pnginfo=notes)


def pdf(*, title: str = "", outline: str = "", squeezed: str = "") -> bytes:
    writer = PdfWriter()
    page = writer.add_blank_page(100, 100)
    writer.add_metadata({"/Title": title})
    writer.add_outline_item(title=outline, page_number=0)
    if squeezed:
        writer.add_attachment("x", zlib.compress(squeezed.encode()))
    assert page is not None
    output = io.BytesIO()
    writer.write(output)
    return output.getvalue()


def in_a_style_sheet_in_a_page() -> bytes:
    """As one file has it: an image in a style sheet in a page, each with its own wrapping."""
    drawing = base64.b64encode(f"<svg><title>{WORD}</title></svg>".encode()).decode()
    sheet = quote(f"a{{background:url(data:image/svg+xml;base64,{drawing})}}")
    return f'<link href="data:text/css,{escape(sheet)}">'.encode()


LEAKS: dict[str, bytes | Callable[[], bytes]] = {
    "a page": f"<p>{WORD}</p>".encode(),
    "in capitals": WORD.upper().encode(),
    "as entities": "".join(f"&#{ord(letter)};" for letter in WORD).encode(),
    "in an address": "".join(f"%{ord(letter):02x}" for letter in WORD).encode(),
    "JSON": json.dumps({"a": WORD}).encode(),
    "JSON, escaped": "".join(f"\\u{ord(letter):04x}" for letter in WORD).encode(),
    "a script, escaped": "".join(f"\\x{ord(letter):02x}" for letter in WORD).encode(),
    "a style, escaped": "".join(f"\\{ord(letter):06x} " for letter in WORD).encode(),
    "a calendar, folded": f"SUMMARY:{WORD[:6]}\r\n {WORD[6:]}".encode(),
    "a table": f"stem;{WORD};4".encode(),
    "base64": b"x = " + base64.b64encode(f"a {WORD} and more".encode()),
    "base64 in a longer word": b"ab" + base64.b64encode(f"{WORD} and more".encode()),
    "an image in a style in a page": in_a_style_sheet_in_a_page,
    "gzip": lambda: gzip.compress(WORD.encode()),
    "a JPEG's comment": lambda: image("JPEG", comment=WORD.encode()),
    "a JPEG's EXIF": lambda: image("JPEG", exif=exif(0x010E, WORD)),
    "a JPEG's XP title": lambda: image("JPEG", exif=exif(0x9C9B, WORD.encode("utf-16-le"))),
    "a JPEG's XMP": lambda: image("JPEG", xmp=f"<x>{WORD}</x>".encode()),
    "a JPEG's thumbnail": thumbnail,
    "a profile's name": profile,
    "behind a JPEG's end": lambda: image("JPEG") + WORD.encode(),
    "an AVIF's EXIF": lambda: image("AVIF", exif=exif(0x010E, WORD)),
    "a PNG's squeezed comment": png_text,
    "a PDF's title": lambda: pdf(title=WORD),
    "a PDF's title, not Latin": lambda: pdf(title=f"{WORD} \u0416"),
    "a PDF's outline": lambda: pdf(outline=WORD),
    "a PDF's squeezed part": lambda: pdf(squeezed=WORD),
}


@pytest.mark.parametrize("leak", LEAKS.values(), ids=LEAKS)
def test_a_word_is_found_in(tmp_path: Path, leak: bytes | Callable[[], bytes]) -> None:
    (tmp_path / "file").write_bytes(leak if isinstance(leak, bytes) else leak())
    assert found_in(tmp_path, {WORD: "a leak"}) == {WORD}
    assert found_in(tmp_path, {"zq54321hush": "another"}) == set()


@pytest.mark.parametrize(
    ("written", "secret"),
    [
        pytest.param("412,739,003", "412739003", id="a number with commas"),
        pytest.param("4.12739003e8 and 41273900.3", "412739003", id="a number with a point"),
        pytest.param("€4,127,390.03", "412739003", id="money"),
        pytest.param("€4,127,390", "4127390", id="money, rounded"),
        pytest.param("41273903 g", "41273903", id="a short number"),
        pytest.param("<td>81013</td>", "81013", id="a count"),
        pytest.param("of 81,013.", "81013", id="a count with a comma"),
        pytest.param("Saturday 8 January 2101", "2101-01-08", id="a day in words"),
        pytest.param("8\u00a0Jan\u00a02101", "2101-01-08", id="a day in fewer"),
        pytest.param("DTSTART;VALUE=DATE:21010108", "2101-01-08", id="a calendar's day"),
        pytest.param("666\u202fh\u00a041\u00a0min", "666 h 41 min", id="a length of time"),
        pytest.param("7:03 to 23:59", "07:03-23:59", id="hours of a day"),
    ],
)
def test_a_number_is_found_as(tmp_path: Path, written: str, secret: str) -> None:
    (tmp_path / "file").write_text(written, encoding="utf-8")
    assert found_in(tmp_path, {secret: "a leak"}) == {secret}


def test_a_word_is_found_in_names_of_files_and_folders_and_where_a_link_leads(
    tmp_path: Path,
) -> None:
    (tmp_path / "a-zq00001hush").mkdir()
    (tmp_path / "zq00002hush.avif").touch()
    (tmp_path / "link").symlink_to("/elsewhere/zq00003hush")
    words = {f"zq0000{number}hush": "" for number in (1, 2, 3, 4)}
    assert found_in(tmp_path, words) == {*words} - {"zq00004hush"}


def test_a_file_with_nothing_packed_in_it_is_only_itself() -> None:
    assert every_text_of(b"<p>plain words</p>") == {b"<p>plain words</p>"}
