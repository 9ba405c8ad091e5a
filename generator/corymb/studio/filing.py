"""What does one file of the studio say, as far as it can be made out?"""

from __future__ import annotations

from dataclasses import dataclass, replace

from corymb.studio import front_matter
from corymb.studio.folder import MARKDOWN_KINDS, Found
from corymb.studio.problems import Problem
from corymb.studio.studio import Source
from corymb.studio.yaml_tree import decode, read_tree


@dataclass(frozen=True)
class Filed:
    """A file of the studio as read, before anyone asks whether what it says is right."""

    found: Found
    text: str = ""
    """All of it; letters may be wrong where it isn't UTF-8."""
    source: Source | None = None
    """Its tree and places; None where it couldn't be read."""
    markdown: str = ""
    """What stands below the heading."""
    problems: tuple[Problem, ...] = ()

    @property
    def slips(self) -> frozenset[int]:
        """The lines with an error in how they are written."""
        return frozenset(p.line for p in self.problems if not p.advice)


def file_away(found: Found) -> Filed:
    """Read a file that was found."""
    try:
        raw = found.file.read_bytes()
    except OSError as error:
        return Filed(found, problems=(_unreadable(found, error),))
    text, problems = decode(raw, found.file)
    if text is None:
        return Filed(found, raw.decode("latin-1").replace("\0", ""), problems=tuple(problems))
    filed = Filed(found, text)
    return _with_heading(filed) if found.kind in MARKDOWN_KINDS else _with_tree(filed, text)


def _unreadable(found: Found, error: OSError) -> Problem:
    if isinstance(error, FileNotFoundError) and found.kind == "studio":
        message = "The studio's own file is missing: make one with `corymb new studio`."
    else:
        message = f"This file can't be read ({error.strerror or error}): see who may open it."
    return Problem(found.file, 1, 1, message)


def _with_heading(filed: Filed) -> Filed:
    parts = front_matter.split(filed.text, filed.found.file)
    if isinstance(parts, Problem):
        return replace(filed, problems=(parts,))
    heading, markdown = parts
    return replace(_with_tree(filed, heading), markdown=markdown)


def _with_tree(filed: Filed, yaml: str) -> Filed:
    tree, problems = read_tree(yaml, filed.found.file)
    lines = tuple(filed.text.split("\n"))
    source = Source(filed.found.file, lines, tree) if tree is not None else None
    return replace(filed, source=source, problems=tuple(problems))
