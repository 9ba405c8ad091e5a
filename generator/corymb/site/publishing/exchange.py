"""How do two folders change places, so that whoever reads one of them never finds it gone?

Linux and macOS can do it in a single step. Where the system or the disk can't, three renames do,
and for a moment nothing stands there: `mended` puts the old folder back if a build dies then.
"""

from __future__ import annotations

import ctypes
import errno
import os
import sys
from pathlib import Path

AT_FDCWD = -100  # linux/fcntl.h: paths are told from the working folder
RENAME_EXCHANGE = 2  # linux/fs.h, for renameat2(2)
RENAME_SWAP = 2  # sys/stdio.h of macOS, for renamex_np(2)
CANNOT = {errno.ENOSYS, errno.EINVAL, errno.ENOTSUP, errno.EOPNOTSUPP, errno.EPERM}
"""What a kernel, a file system or a fence around a program answers that knows no such step."""


def exchange(one: Path, other: Path, aside: Path) -> None:
    """Let two folders change places; `aside` is a free name beside them. Raises OSError."""
    if not _in_one_step(one, other):
        _by_renaming(one, other, aside)


def mended(folder: Path, aside: Path) -> bool:
    """Put back a folder that a build left aside when it died; whether there was one."""
    if folder.exists() or not aside.exists():
        return False
    aside.rename(folder)
    return True


def _in_one_step(one: Path, other: Path) -> bool:
    """Whether the system knew how. Raises OSError where it does and may not."""
    names = os.fsencode(one), os.fsencode(other)
    try:
        libc = ctypes.CDLL(None, use_errno=True)
        if sys.platform == "darwin":
            failed = libc.renamex_np(*names, RENAME_SWAP)
        else:
            failed = libc.renameat2(AT_FDCWD, names[0], AT_FDCWD, names[1], RENAME_EXCHANGE)
    except (OSError, AttributeError, TypeError):  # no such library, or none with this step
        return False
    if not failed:
        return True
    number = ctypes.get_errno()
    if number in CANNOT:
        return False
    raise OSError(number, os.strerror(number), str(other))


def _by_renaming(one: Path, other: Path, aside: Path) -> None:
    other.rename(aside)
    try:
        one.rename(other)
    except BaseException:
        aside.rename(other)
        raise
    aside.rename(one)
