"""May the cache be tidied now, or is someone else still using it?

Every run that uses the cache holds a shared lock on it; tidying needs the lock alone. Where
the system has no such lock (Windows), open files can't be removed there anyway.
"""

import os
import weakref
from pathlib import Path

from corymb.files.unharmed import make_way

try:
    import fcntl
except ImportError:  # pragma: no cover - Windows
    fcntl = None  # type: ignore[assignment]


class SharedUse:
    """Held from its making until `end`, or until nothing refers to it."""

    def __init__(self, file: Path) -> None:
        make_way(file)
        self._descriptor = os.open(file, os.O_RDWR | os.O_CREAT, 0o644)
        self.end = weakref.finalize(self, os.close, self._descriptor)
        if fcntl:
            fcntl.flock(self._descriptor, fcntl.LOCK_SH)

    def try_alone(self) -> bool:
        """Keep everyone else out until `share_again`; False when someone is in."""
        if not fcntl:
            return True
        try:
            fcntl.flock(self._descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            self.share_again()
            return False
        return True

    def share_again(self) -> None:
        if fcntl:
            fcntl.flock(self._descriptor, fcntl.LOCK_SH)
