"""The heading of a Markdown file: the YAML between two lines of three dashes on top."""

from __future__ import annotations

from pathlib import Path

from corymb.studio.problems import Problem

FENCE = "---"


def split(text: str, file: Path) -> tuple[str, str] | Problem:
    """The heading's YAML and the Markdown below it.

    The heading keeps an empty line for each line above it, so that places stay true.
    """
    lines = text.split("\n")
    if lines[0].strip() != FENCE:
        return Problem(
            file,
            1,
            1,
            "the heading is missing: begin the file with a line of three dashes (---), then "
            "`title:` and `summary:`, then three dashes again.",
            lines[0],
        )
    ends = [number for number, line in enumerate(lines[1:], 1) if line.strip() == FENCE]
    if not ends:
        return Problem(
            file,
            1,
            1,
            "the heading is not closed: put a line of three dashes (---) below its last key.",
            lines[0],
        )
    end = ends[0]
    return "\n" + "\n".join(lines[1:end]), "\n".join(lines[end + 1 :])
