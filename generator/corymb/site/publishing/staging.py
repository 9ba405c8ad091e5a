"""How is a new site put together beside the old one?

What has not changed is one more name for the old file; only the rest is written.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterable
from pathlib import Path

from corymb.site.publishing.keeping import MARK, carry, link, mark
from corymb.site.publishing.lasting import make_last
from corymb.site.publishing.standing import (
    NO_STAMP,
    Noted,
    Notes,
    Wanted,
    noted,
    noted_mark,
    stamp_at,
)


def put_together(
    new: Path, old: Path, wanted: Wanted, same: Notes, own: Iterable[str], lasting: bool = True
) -> Notes:
    """Fill the folder `new` with what is wanted and with someone's own; what it holds then.

    `same` need not be written again. Raises OSError.
    """
    make_folders(new, wanted)
    notes = {path: _again(path, new, old, each) for path, each in same.items()}
    fresh = [path for path in wanted if path not in same]
    for path in fresh:
        notes[path] = put(new, path, wanted)
    for path in own:
        carry(path, old, new)
    mark(new, wanted)
    notes[MARK] = noted_mark(new)
    if lasting:
        make_last(new, [*fresh, MARK])
    return notes


def make_folders(new: Path, paths: Iterable[str]) -> None:
    """The folder itself, and those in it that these files need."""
    new.mkdir()
    for folder in sorted({path.rpartition("/")[0] for path in paths}):
        (new / folder).mkdir(parents=True, exist_ok=True)


def put(folder: Path, path: str, wanted: Wanted) -> Noted:
    """Write one file, as a new one: an old one of its name may be another site's too."""
    target = folder / path
    target.unlink(missing_ok=True)
    if path in wanted.written:
        target.write_bytes(wanted.written[path])
    else:
        # Never a link: who scribbles on a published photo must not scribble on the kept one.
        shutil.copyfile(wanted.copies[path], target)
    return noted(path, wanted, stamp_at(target) or NO_STAMP)


def _again(path: str, new: Path, old: Path, known: Noted) -> Noted:
    target = f"{new}{os.sep}{path}"
    if link(f"{old}{os.sep}{path}", target):
        return known
    return Noted(stamp_at(target) or NO_STAMP, known.of)
