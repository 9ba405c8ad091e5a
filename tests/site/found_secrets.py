"""Which secrets stand in a file or a folder, however they are written, packed or encoded there?

Secrets are known by their looks (`secret_values.py` makes them), so one pass finds them all.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from hashlib import sha256
from pathlib import Path

from corymb.studio.words import MONTHS
from tests.site.unwrapping import every_text_of

SPACES = re.compile(b"\xc2\xa0|\xe2\x80\xaf|&nbsp;|&#160;")
WORDS = re.compile(rb"zq[0-9]{5}hush", re.IGNORECASE)
FIGURES = re.compile(rb"(?=(412\d{4})(\d?)(\d?))")
COUNTS = re.compile(rb"(?<![\w.,#%-])([89]\d),?(\d{3})(?!\w|[.,]\d)")
POINTS = b".,"
"""Within figures: a secret number is found wherever its point is, and with commas in it."""

ISO_DAYS = re.compile(rb"(21\d\d)-?([01]\d)-?([0-3]\d)")
DAYS = re.compile(rb"(\d{1,2}) ([A-Z][a-z]{2})[a-z]*\.? (21\d\d)")
LENGTHS = re.compile(rb"6\d\d h(?: \d+ min)?")
HOURS = re.compile(rb"(\d{1,2}:\d\d)\D{1,12}23:59")
MONTH_NUMBERS = {month[:3].encode(): number for number, month in enumerate(MONTHS, 1)}

_seen: dict[bytes, frozenset[str]] = {}
"""What was found in files that were read before: both sites have many in common."""


def found_in(folder: Path, planted: Mapping[str, str]) -> set[str]:
    """The secrets in the bytes and in the names of everything in a folder, and in its own."""
    found: set[str] = set()
    for file in (folder, *folder.rglob("*")):
        found |= found_in_bytes(file.name.encode(), planted)
        if file.is_symlink():
            found |= found_in_bytes(str(file.readlink()).encode(), planted)
        elif file.is_file():
            found |= found_in_bytes(file.read_bytes(), planted)
    return found


def found_in_bytes(data: bytes, planted: Mapping[str, str]) -> set[str]:
    """The secrets in these bytes, and in what is packed in them."""
    known = sha256(data).digest()
    if known not in _seen:
        _seen[known] = frozenset(each for text in every_text_of(data) for each in _like_one(text))
    return set(_seen[known] & planted.keys())


def _like_one(text: bytes) -> Iterator[str]:
    """Whatever looks like a secret."""
    for word in WORDS.findall(text):
        yield word.decode().lower()
    if b"412" in (bare := text.translate(None, POINTS)):
        for seven, eighth, ninth in FIGURES.findall(bare):
            yield from (each.decode() for each in (seven, seven + eighth, seven + eighth + ninth))
    for thousands, rest in COUNTS.findall(text):
        yield (thousands + rest).decode()
    spaced = SPACES.sub(b" ", text)
    for year, month, day in ISO_DAYS.findall(text):
        yield b"-".join((year, month, day)).decode()
    for day, month, year in DAYS.findall(spaced):
        yield f"{year.decode()}-{MONTH_NUMBERS.get(month, 0):02d}-{int(day):02d}"
    for length in LENGTHS.findall(spaced):
        yield length.decode()
    for begin in HOURS.findall(spaced):
        yield f"{begin.decode():0>5}-23:59"
