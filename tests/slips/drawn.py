"""One slip drawn from all kinds, or two of them at once."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from tests.slips.files import OF_FILES, Change, Files
from tests.slips.letters import OF_LETTERS
from tests.slips.lines import OF_LINES
from tests.slips.values import OF_VALUES

KINDS = (*OF_LINES, *OF_LETTERS, *OF_VALUES, *OF_FILES)
TWO_AT_ONCE = 6
"""One in so many has a second slip, in the same file or in another."""


@dataclass(frozen=True)
class Drawn:
    """What happened, in words, and what it does to which files."""

    told: str
    change: Change


def draw(files: Files, file: str, random: Random) -> Drawn:
    """A slip, or two, in one of the files."""
    first = _one(files, file, random)
    if random.randrange(TWO_AT_ONCE):
        return first
    left = {path: text for path, text in {**files, **first.change}.items() if text is not None}
    there = file if file in left and random.random() < 0.5 else random.choice(sorted(left))
    second = _one(left, there, random)
    return Drawn(f"{first.told}; {second.told}", {**first.change, **second.change})


def _one(files: Files, file: str, random: Random) -> Drawn:
    kind = random.choice(KINDS)
    told = f"{kind} ({file})"
    if kind in OF_FILES:
        return Drawn(told, OF_FILES[kind](files, file, random.choice(sorted(files)), random))
    try:
        text = files[file].decode()
    except UnicodeDecodeError:  # a photo, or what an earlier slip made of a text
        return Drawn(told, {file: files[file][: random.randrange(len(files[file]) + 1)]})
    return Drawn(told, {file: _in_text(kind, text or "\n", random).encode()})


def _in_text(kind: str, text: str, random: Random) -> str:
    if kind in OF_LETTERS:
        return OF_LETTERS[kind](text, random.randrange(len(text)), random)
    lines = text.split("\n")
    told = [at for at, line in enumerate(lines) if line.strip() and not line.startswith("#")]
    at, other = random.choice(told or [0]), random.choice(told or [0])
    if kind in OF_LINES:
        return "\n".join(OF_LINES[kind](lines, at, other))
    return "\n".join([*lines[:at], OF_VALUES[kind](lines[at], random), *lines[at + 1 :]])
