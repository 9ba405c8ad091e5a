"""What a reader of a file's text found wrong, before it is a problem with a file's name."""

import re
from dataclasses import dataclass, field

KEY = r"[^\W\d_][\w ,.'’()/-]{0,80}?"
"""What a key looks like: words that start with a letter."""

MOST_FAULTS = 100
"""After so many a file is not read further: something is wrong with all of it."""

MOST_VALUES = 100_000
"""Keys, values, and lists' ends in one file: two thousand stems have as many."""

MOST_ENTRIES = 3_000
"""Entries of one list or table."""

DEEPEST = 40
"""Levels of lists and keys in one another; a studio's file has six."""

KEY_LINE = re.compile(
    rf"(?P<indent> *)(?P<dashes>(?:- +)*)(?P<key>{KEY}|\"[^\"]*\"|'[^']*') *:(?= |$)"
)
"""A line that starts with a key, after any dashes of a list."""

GLUED = re.compile(r"(?P<key>[^\W\d_][\w ]{0,30}?)(?<![0-9]):(?P<rest>[^\s/:].*)")
"""A key whose colon has no space after it: `count:7`. Not `https://`, nor `at 5:30`."""


@dataclass(frozen=True, order=True)
class Fault:
    """A slip: its place (from 0), the sentence, and the line as it was probably meant.

    `sure` says whether the mended line is good enough to look for problems in what it says.
    """

    line: int
    column: int
    message: str
    mended: str | None = field(default=None, compare=False)
    sure: bool = field(default=True, compare=False)
    advice: bool = False


def indent_of(line: str) -> int:
    """How many spaces (or tabs) a line starts with."""
    return len(line) - len(line.lstrip(" \t"))


def is_blank(line: str) -> bool:
    """Whether a line holds nothing, or a comment alone."""
    return not line.strip() or line.lstrip().startswith("#")


def in_quotes(text: str) -> str:
    """A text as it can be written in quotes without changing it."""
    if '"' in text or "\\" in text:
        return "'" + text.replace("'", "''") + "'"
    return f'"{text}"'
