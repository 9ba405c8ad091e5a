"""What stands in a site's folder now, and which of it need not be written again?

Reading a whole site to find that nothing changed would take longer than making it. So of each
published file the digest of what it holds is noted, with its length, time of change and inode.
While those three are as they were, so is the file; where a hand or another program changed it, they
are not, and it is read. The note lies outside the folder, for hosts publish all that is in there.
"""

from __future__ import annotations

import contextlib
import filecmp
import json
import os
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from xxhash import xxh3_128_hexdigest

from corymb.files.unharmed import keep, kept_in
from corymb.site.publishing.keeping import MARK

Stamp = tuple[int, int, int]
NO_STAMP = (0, 0, 0)


@dataclass(frozen=True)
class Wanted:
    """What shall stand in a folder: bytes by their paths in it, and files to copy."""

    written: Mapping[str, bytes]
    copies: Mapping[str, Path] = field(default_factory=dict)

    def __iter__(self) -> Iterator[str]:
        yield from self.written
        yield from self.copies


@dataclass(frozen=True)
class Noted:
    """One published file; `of` is the digest of its bytes, or the stamp of the file copied."""

    stamp: Stamp
    of: str | Stamp


Notes = dict[str, Noted]


def stamp_of(status: os.stat_result) -> Stamp:
    """Length, time of change and inode: what changes with a file."""
    return status.st_size, status.st_mtime_ns, status.st_ino


def stamp_at(path: str | Path) -> Stamp | None:
    """None for what isn't there, and for a link, which leads who knows where."""
    try:
        return stamp_of(os.lstat(path))
    except OSError:
        return None


def noted(path: str, wanted: Wanted, stamp: Stamp) -> Noted:
    """A file as it is published now."""
    if path in wanted.written:
        return Noted(stamp, xxh3_128_hexdigest(wanted.written[path]))
    return Noted(stamp, stamp_of(wanted.copies[path].stat()))


def noted_mark(folder: Path) -> Noted:
    """The mark in a site's folder, by its stamp alone."""
    return Noted(stamp_at(folder / MARK) or NO_STAMP, "")


def unchanged(wanted: Wanted, folder: Path, notes: Notes) -> Notes:
    """The files that stand as they are wanted, noted anew."""
    base = f"{folder}{os.sep}"
    same: Notes = {}
    for path, content in wanted.written.items():
        stamp = stamp_at(base + path)
        if stamp is None:
            continue
        now = Noted(stamp, xxh3_128_hexdigest(content))
        if notes.get(path) == now or (stamp[0] == len(content) and _holds(base + path, content)):
            same[path] = now
    for path, source in wanted.copies.items():
        stamp = stamp_at(base + path)
        if stamp is None:
            continue
        now = Noted(stamp, stamp_of(source.stat()))
        if notes.get(path) == now or _is_copy(base + path, source):
            same[path] = now
    return same


def _holds(path: str, content: bytes) -> bool:
    with contextlib.suppress(OSError):
        file = Path(path)
        return not file.is_symlink() and file.read_bytes() == content
    return False


def _is_copy(path: str, source: Path) -> bool:
    with contextlib.suppress(OSError):
        file = Path(path)
        return not file.is_symlink() and file.is_file() and filecmp.cmp(file, source, shallow=False)
    return False


def read_notes(file: Path) -> Notes:
    """What is noted; nothing where the note is missing, or isn't what was written."""
    try:
        return dict(_told(json.loads(kept_in(file))))
    except (OSError, ValueError, TypeError):
        return {}


def write_notes(file: Path, notes: Notes) -> None:
    """A note that can't be written costs the next build only time."""
    told = [[path, *each.stamp, each.of] for path, each in notes.items()]
    with contextlib.suppress(OSError):
        keep(file, json.dumps(told).encode())


def _told(
    rows: Iterable[tuple[str, int, int, int, str | list[int]]],
) -> Iterator[tuple[str, Noted]]:
    for path, size, changed, inode, of in rows:
        stamp = (size, changed, inode)
        yield path, Noted(stamp, of if isinstance(of, str) else (of[0], of[1], of[2]))
