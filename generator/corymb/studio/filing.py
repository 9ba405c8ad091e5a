"""What does one file of the studio say, as far as it can be made out?"""

from __future__ import annotations

import os
import stat
from dataclasses import dataclass, replace
from itertools import islice
from pathlib import Path

from corymb.studio import front_matter
from corymb.studio.folder import MARKDOWN_KINDS, Found
from corymb.studio.problems import Problem
from corymb.studio.prose_limits import too_much, unseen
from corymb.studio.reading.decode import LARGEST, one_line_end
from corymb.studio.reading.fault import MOST_FAULTS, Fault
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
    if found.refused:
        return Filed(found, problems=(Problem(found.file, 1, 1, found.refused),))
    try:
        raw = _read(found.file)
    except OSError as error:
        return Filed(found, problems=(_unreadable(found, error),))
    return file_text(found, raw)


def file_text(found: Found, raw: bytes) -> Filed:
    """Read what stands in a file that was found."""
    text, problems = decode(raw, found.file)
    if text is None:
        read_so_far = one_line_end(raw.decode("latin-1").replace("\0", ""))
        return Filed(found, read_so_far, problems=tuple(problems))
    filed = Filed(found, text)
    return _with_heading(filed) if found.kind in MARKDOWN_KINDS else _with_tree(filed, text)


class NoFileError(OSError):
    """A pipe, a device or the like: reading one could go on for ever."""


def _read(file: Path) -> bytes:
    """A file's bytes; of one that is far too long only so many that this is seen."""
    with open(file, "rb", opener=_at_once) as opened:
        if not stat.S_ISREG(os.fstat(opened.fileno()).st_mode):
            raise NoFileError
        return opened.read(20 * LARGEST)


def _at_once(path: str, flags: int) -> int:
    """Opens without waiting for someone at a pipe's other end."""
    return os.open(path, flags | getattr(os, "O_NONBLOCK", 0))


def _unreadable(found: Found, error: OSError) -> Problem:
    if isinstance(error, FileNotFoundError) and found.kind == "studio":
        message = "The studio's own file is missing: make one with `corymb new studio`."
    elif isinstance(error, FileNotFoundError):
        message = "This leads to a file that isn't there: take it out, or put the file here."
    elif isinstance(error, IsADirectoryError):
        message = "This is a folder, and a file is wanted: give the folder another name."
    elif isinstance(error, NoFileError):
        message = "This is no file that could be read, but a pipe or a device: take it out."
    else:
        message = f"This file can't be read ({error.strerror or error}): see who may open it."
    return Problem(found.file, 1, 1, message)


def _with_heading(filed: Filed) -> Filed:
    parts = front_matter.split(filed.text, filed.found.file)
    if isinstance(parts, Problem):
        return replace(filed, problems=(parts,))
    heading, markdown = parts
    below = filed.text.count("\n") - markdown.count("\n")
    heap = too_much(markdown, below)
    if heap:
        return replace(filed, problems=(_told(filed, heap),))
    read = _with_tree(filed, heading)
    hidden = (_told(filed, fault) for fault in unseen(markdown.split("\n"), below))
    return replace(read, markdown=markdown, problems=(*read.problems, *islice(hidden, MOST_FAULTS)))


def _told(filed: Filed, fault: Fault) -> Problem:
    line = filed.text.split("\n")[fault.line]
    return Problem(filed.found.file, fault.line + 1, fault.column + 1, fault.message, line)


def _with_tree(filed: Filed, yaml: str) -> Filed:
    tree, problems = read_tree(yaml, filed.found.file)
    lines = tuple(filed.text.split("\n"))
    source = Source(filed.found.file, lines, tree) if tree is not None else None
    return replace(filed, source=source, problems=tuple(problems))
