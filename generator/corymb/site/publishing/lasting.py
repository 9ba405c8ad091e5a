"""Does a new site outlast a power cut?

Most disks are told of a folder's new name long before the bytes of its files: after a power cut
just then, the site would stand there with empty pages, and nobody would know until someone looked.
So what was written is on the disk before the site takes its place. File by file that would cost
more than all the rest, so of many files the whole file system is asked at once. What only lies in
a cache needs none of this: it is known for broken and made again.
"""

from __future__ import annotations

import contextlib
import ctypes
import os
from collections.abc import Sequence
from pathlib import Path

FEW = 8
"""Files up to which one by one is quicker, measured; nor does it wait for another's large copy."""


def make_last(folder: Path, written: Sequence[str]) -> None:
    """Have these files of a folder on the disk; does what the system can."""
    if len(written) > FEW and _all_at_once(folder):
        return
    for path in written:
        _one(folder / path)


def _all_at_once(folder: Path) -> bool:
    try:
        sync_file_system = ctypes.CDLL(None, use_errno=True).syncfs  # Linux, syncfs(2)
    except (OSError, AttributeError, TypeError):
        return False
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        return bool(sync_file_system(descriptor) == 0)
    finally:
        os.close(descriptor)


def _one(file: Path) -> None:
    with contextlib.suppress(OSError):  # some file systems have no such word
        descriptor = os.open(file, os.O_RDWR)
        try:
            os.fsync(descriptor)
        finally:
            os.close(descriptor)
