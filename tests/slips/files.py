"""What happens to whole files: emptied, cut off, swapped, lost, called something else."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import PurePosixPath
from random import Random

Files = Mapping[str, bytes]
Change = dict[str, bytes | None]
"""What is written into which file; None takes it away."""
OfFiles = Callable[[Files, str, str, Random], Change]
"""What a slip does to the file of the first name; the second is another's."""

NAMES = (
    *("a b.yml", "Loud.yml", "dé-jà.yml", "x.yaml", "x.txt", ".hidden.yml", "con.yml", "..yml"),
    *("a--b.yml", "2026-W53.yml", "1.yml", "x.yml.txt", "x.md", "a" * 200 + ".yml"),
)


def _cut(files: Files, file: str, _: str, random: Random) -> Change:
    return {file: files[file][: random.randrange(len(files[file]) + 1)]}


def _renamed(files: Files, file: str, _: str, random: Random) -> Change:
    return {file: None, str(PurePosixPath(file).with_name(random.choice(NAMES))): files[file]}


def _moved(files: Files, file: str, other: str, _: Random) -> Change:
    """Into the folder where the other file lies."""
    there = str(PurePosixPath(other).parent / PurePosixPath(file).name)
    return {file: None, there: files[file]}


def _copied(files: Files, file: str, _: str, __: Random) -> Change:
    name = PurePosixPath(file)
    return {str(name.with_name(f"{name.stem}-copy{name.suffix}")): files[file]}


def _bytes_lost(files: Files, file: str, _: str, random: Random) -> Change:
    text = bytearray(files[file])
    for _number in range(3):
        if text:
            text[random.randrange(len(text))] = random.randrange(256)
    return {file: bytes(text)}


OF_FILES: dict[str, OfFiles] = {
    "a file cut off": _cut,
    "a file emptied": lambda files, file, other, random: {file: b""},
    "a file taken away": lambda files, file, other, random: {file: None},
    "a file called otherwise": _renamed,
    "a file in another's folder": _moved,
    "a file copied beside itself": _copied,
    "another file in its place": lambda files, file, other, random: {file: files[other]},
    "two files swapped": lambda files, file, other, random: {
        file: files[other],
        other: files[file],
    },
    "bytes of a bad disk": _bytes_lost,
    "one file after the other": lambda files, file, other, random: {
        file: files[file] + files[other]
    },
}
