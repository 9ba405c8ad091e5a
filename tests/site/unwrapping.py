"""What does a file say, once all that is packed or encoded in it is unpacked?

A word can hide from a search: squeezed (zlib, gzip), in base64, as `%71`, `&#113;` or `\\u0071`, in
letters of two bytes, or folded over two lines of a calendar.
"""

from __future__ import annotations

import base64
import binascii
import html
import io
import re
import zlib
from collections.abc import Callable, Iterator
from urllib.parse import unquote_to_bytes

from pypdf import PdfReader

DEEP = 4
"""How many wrappings are taken off one another: a page in a data URI in a style sheet is three."""

PDF = b"%PDF-"
BASE64 = re.compile(rb"[A-Za-z0-9+/_-]{16,}={0,2}")
MARKED_BASE64 = re.compile(rb";base64,([A-Za-z0-9+/%]{8,}(?:=|%3D){0,2})")
ESCAPED = re.compile(rb"\\(?:u\{?0*|x|0{0,4})([0-9a-fA-F]{2})\}? ?")
SQUEEZED = re.compile(rb"\x78[\x01\x5e\x9c\xda]|\x1f\x8b\x08")
HEXED = re.compile(rb"<((?:[0-9A-Fa-f]{2}\s*){8,})>")
OCTAL = re.compile(rb"\\([0-7]{3})")
FOLD = re.compile(rb"\r?\n[ \t]")


def every_text_of(data: bytes) -> set[bytes]:
    """The bytes themselves, and all that is found by unwrapping them."""
    known, new = {data}, {data}
    for _ in range(DEEP):
        new = {text for each in new for text in _unwrapped(each) if text} - known
        known |= new
    return known


def _unwrapped(data: bytes) -> Iterator[bytes]:
    yield from _squeezed(data)
    if _is_binary(data):
        bare = data.removeprefix(PDF)
        yield bare.replace(b"\0", b"")  # UTF-16, either way round, as cameras and PDFs write it
        yield from _hexed(data)
        if bare != data:
            yield _of_octal(bare)
            yield from _printed(data)
        return
    for way, mark in WAYS.items():
        if mark in data and (text := way(data)) != data:
            yield text
    yield from _base64(data)
    yield from _hexed(data)


def _unfolded(data: bytes) -> bytes:
    return FOLD.sub(b"", data)


def _unescaped(data: bytes) -> bytes:
    return ESCAPED.sub(lambda found: bytes.fromhex(found[1].decode()), data)


def _html(data: bytes) -> bytes:
    return html.unescape(data.decode("utf-8", "replace")).encode()


WAYS: dict[Callable[[bytes], bytes], bytes] = {
    unquote_to_bytes: b"%",
    _html: b"&",
    _unescaped: b"\\",
    _unfolded: b"\n ",
}
"""How a text is unwrapped, and what stands in every text that is wrapped so."""


def _is_binary(data: bytes) -> bool:
    return b"\0" in data[:4096] or data.startswith(PDF) or data[:2] == b"\xff\xd8"


def _squeezed(data: bytes) -> Iterator[bytes]:
    """Whatever zlib can undo, wherever in the file it begins."""
    for found in SQUEEZED.finditer(data):
        try:
            yield zlib.decompressobj(47).decompress(data[found.start() :])  # zlib's head or gzip's
        except zlib.error:
            continue


def _hexed(data: bytes) -> Iterator[bytes]:
    """A PDF's strings as figures."""
    for found in HEXED.finditer(data):
        yield bytes.fromhex(b"".join(found[1].split()).decode())


def _of_octal(data: bytes) -> bytes:
    """The strings of a PDF that are written as figures of eight."""
    return OCTAL.sub(lambda found: bytes([int(found[1], 8) & 255]), data)


def _printed(data: bytes) -> Iterator[bytes]:
    """What a PDF shows: its pages name pictures of letters, and say elsewhere which those are."""
    for page in PdfReader(io.BytesIO(data)).pages:
        yield page.extract_text().encode()


def _mixed(run: bytes) -> bool:
    """Whether it has letters of both kinds, as base64 of some length has, and an address hasn't."""
    return run != run.lower() and run != run.upper()


def _base64(data: bytes) -> Iterator[bytes]:
    marked = {unquote_to_bytes(found) for found in MARKED_BASE64.findall(data)}
    for run in marked | {run for run in BASE64.findall(data) if _mixed(run)}:
        bare = run.rstrip(b"=").translate(bytes.maketrans(b"-_", b"+/"))
        for start in range(1 if run in marked else 4):  # it may begin inside a longer word
            cut = bare[start : start + (len(bare) - start) // 4 * 4]
            try:
                yield base64.b64decode(cut, validate=True)
            except (ValueError, binascii.Error):
                continue
