"""How must a problem be told, whatever it is?"""

from __future__ import annotations

import re
from pathlib import Path

from corymb.studio.problems import Problem

SENTENCE = re.compile(r"[A-Z0-9‘`][^\n]*[.?]")
PROGRAMMERS_WORDS = re.compile(
    r"\b(None|True|False|str|int|dict|list\[|input|field|valid|validation|extra|mapping|sequence|"
    r"scalar|token|parse[rd]?|yaml|pydantic|traceback|exception|errno|type=)\b|[a-z]_[a-z]|\.\.",
)


LONGEST = 200
"""Bytes of a line that are shown where a file isn't UTF-8."""


def lines_of(problem: Problem) -> tuple[str, str]:
    """The line that a problem stands in, and as much of it as is shown of one that isn't text."""
    line = re.split(b"\r\n|\r|\n", problem.file.read_bytes())[problem.line - 1]
    return line.decode("utf-8-sig", "replace"), line[:LONGEST].decode("utf-8", "replace")


def assert_well_put(problem: Problem, studio: Path) -> None:
    """A sentence in a florist's words that shows the line, and no path but within the studio."""
    own_words = re.sub("[‘`\"'][^’`\"']*[’`\"']", "", problem.message)
    assert SENTENCE.fullmatch(problem.message), problem.message
    assert not PROGRAMMERS_WORDS.search(own_words), problem.message
    assert str(studio) not in problem.message
    if problem.source:
        assert problem.source in lines_of(problem)
    if problem.column > 1:
        assert problem.source
