"""Can this Markdown be made into a page in no time, and does it hold only what can be seen?

The library that makes the pages takes long over what nobody writes: thousands of brackets in one
paragraph, lists forty deep. Each limit is several times what a long lesson has.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from corymb.studio.reading.decode import hidden_in_prose
from corymb.studio.reading.fault import Fault

LONGEST_TEXT = 60_000
"""Letters of a page's text: ten thousand words."""

LONGEST_PARAGRAPH = 15_000
"""Letters between two empty lines; a long table is one paragraph."""

MOST_LINES, MOST_PARAGRAPHS = 3_000, 1_000
"""Lines of a text, and paragraphs: half as many again as a text of that length can fill."""

LONGEST_TABLE = 300
"""Lines of one paragraph."""

DEEPEST_MARGIN = 60
"""Spaces before a line's first letter; a list ten deep has forty."""

DEEPEST_MARKS = 12
"""Dashes, numbers and > that begin a line one behind the other."""

MOST_IN_PARAGRAPH = {
    "[": (200, "opening brackets"),
    "`": (200, "backticks"),
    "<": (400, "< signs"),
    "*": (1_000, "stars"),
    "_": (1_000, "underscores"),
    '"': (1_000, "quotation marks"),
    "'": (1_000, "apostrophes"),
    "|": (1_500, "upright bars"),
}
MOST_IN_TEXT = {
    "[": (1_500, "opening brackets"),
    "`": (2_000, "backticks"),
    "|": (5_000, "upright bars"),
    "*": (5_000, "stars"),
    "_": (5_000, "underscores"),
    '"': (10_000, "quotation marks"),
}

HEADING = re.compile(r"(?m)^ {0,3}#|^ {0,3}(?:=+|-+)[ \t]*$")
MOST_HEADINGS = 200

FENCE = re.compile(r"(?m)^[ >]*(?:```|~~~)")
MOST_FENCES = 100

_MARKS = re.compile(r"(?:[ \t]*(?:[-+*>]|[0-9]+\.)(?=[ \t>]|$))*")
_MARK = re.compile(r"[-+*>]|[0-9]+\.")


def too_much(text: str, first: int) -> Fault | None:
    """The first thing in a text that nobody writes; its first line is the file's line `first`."""
    return next(_found(text, first), None)


def _found(text: str, first: int) -> Iterator[Fault]:
    if len(text) > LONGEST_TEXT:
        message = f"This text has {len(text):,} letters; a page has {LONGEST_TEXT:,} at most."
        yield Fault(first, 0, f"{message} Make two pages of it.")
    for most, pattern, noun in (
        (MOST_HEADINGS, HEADING, "headings"),
        (MOST_FENCES, FENCE, "fences of code"),
    ):
        there = [found.start() for found in pattern.finditer(text)]
        if len(there) > most:
            line = first + text.count("\n", 0, there[most])
            yield Fault(line, 0, f"This text has over {most} {noun}. Make two pages of it.")
    yield from _signs(text, first, MOST_IN_TEXT, "text")
    lines = text.split("\n")
    paragraphs = list(_paragraphs(lines))
    if len(lines) > MOST_LINES or len(paragraphs) > MOST_PARAGRAPHS:
        message = (
            f"This text has {len(lines):,} lines in {len(paragraphs):,} paragraphs; a page has "
            f"{MOST_LINES:,} and {MOST_PARAGRAPHS:,} at most. Make two pages of it."
        )
        yield Fault(first, 0, message)
    for at, paragraph in paragraphs:
        yield from _in_paragraph("\n".join(paragraph), first + at)
        yield from _too_deep(paragraph, first + at)


def _in_paragraph(paragraph: str, first: int) -> Iterator[Fault]:
    if len(paragraph) > LONGEST_PARAGRAPH:
        message = f"This paragraph has {len(paragraph):,} letters; {LONGEST_PARAGRAPH:,} at most."
        yield Fault(first, 0, f"{message} Put an empty line in it.")
    if (lines := paragraph.count("\n") + 1) > LONGEST_TABLE:
        message = f"This paragraph has {lines:,} lines; {LONGEST_TABLE} at most."
        yield Fault(first, 0, f"{message} Put an empty line in it.")
    yield from _signs(paragraph, first, MOST_IN_PARAGRAPH, "paragraph")


def _signs(text: str, first: int, most: dict[str, tuple[int, str]], what: str) -> Iterator[Fault]:
    for sign, (limit, noun) in most.items():
        if text.count(sign) > limit:
            message = f"This {what} has over {limit:,} {noun}. Take out what doesn't belong here."
            yield Fault(first, 0, message)


def _paragraphs(lines: list[str]) -> Iterator[tuple[int, list[str]]]:
    """The lines between empty lines, with the number of the first, from 0."""
    begin = 0
    for at, line in enumerate([*lines, ""]):
        if not line.strip():
            if at > begin:
                yield begin, lines[begin:at]
            begin = at + 1


def _too_deep(lines: Iterable[str], first: int) -> Iterator[Fault]:
    for at, line in enumerate(lines, first):
        margin = len(line.expandtabs(4)) - len(line.expandtabs(4).lstrip(" "))
        marks = _MARKS.match(line)
        if margin > DEEPEST_MARGIN or (marks and len(_MARK.findall(marks[0])) > DEEPEST_MARKS):
            message = "This line is nested too deep to be read: move it out."
            yield Fault(at, 0, message)


def unseen(lines: Iterable[str], first: int) -> list[Fault]:
    """The characters of a text that can't be seen, and could mislead; one a line."""
    return [fault for at, line in enumerate(lines, first) if (fault := hidden_in_prose(at, line))]
