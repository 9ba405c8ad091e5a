"""What is wrong, in which file, where, and how do we show it to the person who wrote it?"""

import re
import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

WIDEST = 96
"""Longest piece of a source line that is shown; more than this wraps in a terminal."""

UNSAFE = re.compile("[\x00-\x1f\x7f-\x9f\u2028-\u202e\u2066-\u2069\ud800-\udfff]")
"""What would break a line, turn its letters round, command a terminal or not be printed at all."""


@dataclass(frozen=True, order=True)
class Problem:
    """One thing to put right (or, as advice, to think about), with its place counted from 1.

    Line 0 is for what is wrong with a folder, or with a file as a whole that nobody has written.
    """

    file: Path
    line: int
    column: int
    message: str
    source: str = ""
    advice: bool = False
    hurts: bool = False
    """Whether someone can come to harm by it: such advice is told at every build."""

    def __str__(self) -> str:
        kind = "advice: " if self.advice else ""
        place = f"{self.line}:{self.column}:" if self.line else ""
        told = f"{self.file}:{place} {kind}{self.message}"
        return UNSAFE.sub("\N{REPLACEMENT CHARACTER}", told)

    def shown(self) -> str:
        """The problem with the line it stands in and a caret under the place."""
        if not self.source.strip():
            return str(self)
        text, before = _cut(self.source, self.column - 1)
        gutter = f"{self.line:>5} | "
        caret = " " * (len(gutter) + before) + "^"
        return f"{self}\n{gutter}{text}\n{caret}"


def in_order(problems: Iterable[Problem]) -> list[Problem]:
    """Each once, by file and place."""
    return sorted(set(problems), key=_place)


def _place(problem: Problem) -> tuple[object, ...]:
    place = problem.file.parts, problem.line, problem.column
    return *place, problem.message, problem.source, problem.advice, problem.hurts


def _cut(source: str, at: int) -> tuple[str, int]:
    """The line as a terminal can show it, and how many cells stand before the place."""
    line = source.rstrip("\r\n")
    text = line.expandtabs(4)
    start = len(line[:at].expandtabs(4))
    lead = ""
    if len(text) > WIDEST and start > WIDEST - 20:
        skipped = start - WIDEST // 2
        text, start, lead = text[skipped:], start - skipped, "…"
    tail = "…" if len(text) > WIDEST else ""
    seen = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in text[:WIDEST])
    return lead + seen + tail, len(lead) + _cells(seen[:start]) + max(0, start - len(seen))


def _cells(text: str) -> int:
    """How many terminal cells a text takes: wide letters two, combining marks none."""
    return sum(
        0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1
        for c in text
    )
