"""Has this photo changed since it was last read?

Reading every photo to find that none changed would take seconds. A file whose size, time
of change and inode are as they were is taken to be as it was; what it held then is noted here.
"""

import contextlib
import hashlib
import json
from pathlib import Path
from threading import Lock

from corymb.files.unharmed import keep, kept_in
from corymb.photos import errors

Stamp = list[int]


class StatIndex:
    """A small file of path, stamp and content digest; losing it costs only a slower run."""

    def __init__(self, file: Path) -> None:
        self._file = file
        self._known = _read(file)
        self._seen: dict[str, tuple[Stamp, str]] = {}
        self._lock = Lock()

    def digest(self, source: Path) -> str:
        """The digest of what the file holds, read only when its stamp is new."""
        if known := self.remembered(source):
            return known
        stamp = stamp_of(source)
        digest = _digest_of(source)
        if stamp_of(source) != stamp:
            raise errors.changing(source)
        with self._lock:
            self._seen[str(source.absolute())] = (stamp, digest)
        return digest

    def remembered(self, source: Path) -> str | None:
        """The digest, when the file is as it was; nothing is read for it."""
        name = str(source.absolute())
        known = self._seen.get(name) or self._known.get(name)
        if known is None or known[0] != stamp_of(source):
            return None
        with self._lock:
            self._seen[name] = known
        return known[1]

    def unchanged(self, source: Path) -> bool:
        """Whether the file is still what `digest` saw; asked after working from it."""
        seen = self._seen.get(str(source.absolute()))
        with contextlib.suppress(OSError):
            return seen is not None and seen[0] == stamp_of(source)
        return False

    def save(self) -> None:
        """Add what this run saw; another program's notes of other photos are kept."""
        on_file = _read(self._file)
        with self._lock:
            together = on_file | self._seen
        if together != on_file:
            self._write(together)

    def forget_unseen(self) -> None:
        with self._lock:
            if self._seen != self._known:
                self._write(dict(self._seen))

    def _write(self, known: dict[str, tuple[Stamp, str]]) -> None:
        self._known = known
        with contextlib.suppress(OSError):  # a full disk: then photos are read again
            keep(self._file, json.dumps(known).encode())


def stamp_of(path: Path) -> Stamp:
    status = path.stat()
    return [status.st_size, status.st_mtime_ns, status.st_ino]


def _digest_of(source: Path) -> str:
    with source.open("rb") as file:
        return hashlib.file_digest(file, "sha256").hexdigest()


def _read(file: Path) -> dict[str, tuple[Stamp, str]]:
    """An index that is missing, or isn't what was written, is an empty one."""
    try:
        return {
            str(name): ([int(part) for part in stamp], str(digest))
            for name, (stamp, digest) in json.loads(kept_in(file)).items()
        }
    except (OSError, ValueError, TypeError, AttributeError):
        return {}
