"""What stands in the notes of all finished photos, read in one go?

Two thousand photos have two thousand notes, and opening each takes longer than everything else
about a photo that hasn't changed. So they are kept together in one file as well. A note counts
from here only while its own file stands as it did; losing the joint file costs only time.
"""

import contextlib
import json
from collections.abc import Iterable
from pathlib import Path
from threading import Lock
from typing import Any

from corymb.files.unharmed import keep, kept_in

Noted = tuple[list[int], dict[str, Any]]
"""How a note's own file stood, and what was in it."""


class JointNotes:
    """One sealed file of notes by the photos' keys, read when the first one is asked for."""

    def __init__(self, file: Path) -> None:
        self._file = file
        self._known: dict[str, Noted] | None = None
        self._new: dict[str, Noted] = {}
        self._lock = Lock()

    def of(self, key: str, stamp: list[int] | None) -> dict[str, Any] | None:
        """The note of a photo, if its own file has this stamp."""
        with self._lock:
            if self._known is None:
                self._known = _read(self._file)
            noted = self._new.get(key) or self._known.get(key)
        return noted[1] if noted is not None and noted[0] == stamp else None

    def add(self, key: str, stamp: list[int], note: dict[str, Any]) -> None:
        with self._lock:
            self._new[key] = stamp, note

    def save(self) -> None:
        """Add what this run read; another program's notes of other photos are kept."""
        with self._lock:
            if self._new:
                self._write(_read(self._file) | self._new)

    def keep_only(self, keys: Iterable[str]) -> None:
        """Let go of the notes of other photos."""
        wanted = set(keys)
        with self._lock:
            here = _read(self._file) | self._new
            left = {key: noted for key, noted in here.items() if key in wanted}
            if self._new or len(left) < len(here):
                self._write(left)

    def _write(self, notes: dict[str, Noted]) -> None:
        self._known, self._new = notes, {}
        with contextlib.suppress(OSError):  # a full disk: then each note is read by itself
            keep(self._file, json.dumps(notes).encode())


def _read(file: Path) -> dict[str, Noted]:
    """A file that is missing, or isn't what was written, holds nothing."""
    try:
        return {
            str(key): (list(stamp), dict(note))
            for key, (stamp, note) in json.loads(kept_in(file)).items()
        }
    except (OSError, ValueError, TypeError, AttributeError):
        return {}
