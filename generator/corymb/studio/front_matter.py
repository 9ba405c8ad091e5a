"""The heading of a Markdown file: the YAML between two lines of three dashes on top."""

from __future__ import annotations

import re
from pathlib import Path

from corymb.studio.problems import Problem

FENCE = "---"
_OF_A_HEADING = re.compile(r"\s|#|-|[^\W\d_][^:]*:(?:\s|$)")
"""How a line of a heading can begin: moved in, a comment, a dash, a key."""


def split(text: str, file: Path) -> tuple[str, str] | Problem:
    """The heading's YAML and the Markdown below it.

    The heading keeps an empty line for each line above it, so that places stay true.
    """
    lines = text.split("\n")
    if lines[0].strip() != FENCE:
        message = (
            "The heading is missing: begin the file with a line of three dashes (---), then "
            "`title:` and `summary:`, then three dashes again."
        )
        return Problem(file, 1, 1, message, lines[0])
    end = next((n for n, line in enumerate(lines[1:], 1) if line.strip() == FENCE), None)
    if end is None or _runs_into_the_text(lines[1:end]):
        message = "The heading is not closed: put a line of three dashes (---) below its last key."
        return Problem(file, 1, 1, message, lines[0])
    if all(line.strip().startswith("#") or not line.strip() for line in lines[1:end]):
        message = "The heading is empty: write `title:` and `summary:` between the lines of dashes."
        return Problem(file, 1, 1, message, lines[0])
    return "\n" + "\n".join(lines[1:end]), "\n".join(lines[end + 1 :])


def _runs_into_the_text(heading: list[str]) -> bool:
    """Whether the dashes that seem to end a heading are a rule further down in the text."""
    blank = False
    for line in heading:
        if blank and line.strip() and not _OF_A_HEADING.match(line):
            return True
        blank = not line.strip()
    return False
