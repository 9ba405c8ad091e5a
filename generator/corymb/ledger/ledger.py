"""Which of what was worked out still holds, and what has to be worked out again?

A ledger keeps each thing that was worked out together with what was read on the way there. When
something is entered anew, whatever was worked out of it falls into doubt. What is in doubt and
asked for is looked into: if nothing that it had read came out otherwise, it stands; if not, it
is worked out again, and what was worked out of *it* is in doubt no longer where it came out as
before. So one edited recipe costs what that recipe touches, however many others there are.

A ledger that doesn't follow only remembers: for a build that ends with the studio as it began.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable
from dataclasses import dataclass, field
from typing import Any

Key = tuple[Hashable, ...]


@dataclass(slots=True, eq=False)
class _Entry:
    """One thing in the ledger; without `work` it was entered, not worked out."""

    value: Any
    work: Callable[[], Any] | None
    reads: dict[Key, None] = field(default_factory=dict)
    readers: set[Key] = field(default_factory=set)
    changed: int = 0
    checked: int = 0
    in_doubt: bool = False


class Ledger:
    """Everything that was entered or worked out, by its key. For one thread at a time."""

    def __init__(self, follows: bool = False) -> None:
        self.follows = follows
        self._turn = 1
        self._entries: dict[Key, _Entry] = {}
        self._reading: list[dict[Key, None]] = []

    def of(self, key: Key, work: Callable[[], Any]) -> Any:
        """What `work` gives: as it was worked out before, where that still holds.

        `work` must ask for all it needs by name, and hold on to nothing that could change. What
        it raises isn't kept.
        """
        if not self.follows:
            if key not in self._entries:
                self._entries[key] = _Entry(work(), work)
            return self._entries[key].value
        self.note(key)
        entry = self._entries.get(key)
        if entry is None:
            entry = self._entries[key] = _Entry(None, work, checked=-1, in_doubt=True)
        if entry.in_doubt:
            self._look_into(key, entry)
        return entry.value

    def note(self, key: Key) -> None:
        """Whatever is being worked out now has read this."""
        if self._reading:
            self._reading[-1][key] = None

    def enter(self, key: Key, value: Any) -> bool:
        """Enter what a file says; whether it says something new."""
        entry = self._entries.get(key)
        if entry is None:
            entry = self._entries[key] = _Entry(None, None)
        elif entry.value is value or entry.value == value:
            return False
        entry.value = value
        self._turn += 1
        entry.changed = self._turn
        self._doubt(entry.readers)
        return True

    def _doubt(self, keys: Iterable[Key]) -> None:
        waiting = list(keys)
        while waiting:
            entry = self._entries[waiting.pop()]
            if not entry.in_doubt:
                entry.in_doubt = True
                waiting += entry.readers

    def _look_into(self, key: Key, entry: _Entry) -> None:
        """In the order in which it was read, for what comes later may hang on what came before."""
        if entry.checked < 0 or any(self._came_out_new(read, entry) for read in entry.reads):
            self._work_out(key, entry)
        entry.checked = self._turn
        entry.in_doubt = False

    def _came_out_new(self, read: Key, reader: _Entry) -> bool:
        entry = self._entries.get(read)
        if entry is None:
            return True
        if entry.in_doubt:
            try:
                self._look_into(read, entry)
            except Exception:  # it is asked for again, if it still matters, and raises there
                return True
        return entry.changed > reader.checked

    def _work_out(self, key: Key, entry: _Entry) -> None:
        assert entry.work is not None
        self._reading.append({})
        try:
            value = entry.work()
        except BaseException:
            self._hang_on(key, entry, self._reading.pop())
            for read in entry.reads:  # whoever gets on without it depends on why
                self.note(read)
            entry.checked, entry.in_doubt = -1, True
            raise
        self._hang_on(key, entry, self._reading.pop())
        if entry.checked < 0 or not _same(entry.value, value):
            entry.value = value
            entry.changed = self._turn

    def _hang_on(self, key: Key, entry: _Entry, reads: dict[Key, None]) -> None:
        for gone in entry.reads.keys() - reads.keys():
            self._entries[gone].readers.discard(key)
        for read in reads:
            found = self._entries.get(read)
            if found is None:  # what isn't there may come
                found = self._entries[read] = _Entry(None, None)
            found.readers.add(key)
        entry.reads = reads


def _same(one: object, other: object) -> bool:
    try:
        return one is other or bool(one == other)
    except Exception:  # what can't be compared counts as new
        return False
