"""How does a ledger come to know what was read in a studio, and what is new in it?"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any, Generic, TypeVar

from corymb.ledger.ledger import Ledger

K = TypeVar("K")
V = TypeVar("V")


class Followed(dict[K, V], Generic[K, V]):
    """A dictionary that lets a ledger know what is read in it, and what is new in it."""

    def __init__(self, ledger: Ledger, name: str) -> None:
        super().__init__()
        self._ledger = ledger
        self._name = name

    def become(self, new: Mapping[K, V]) -> None:
        """Hold just what `new` does, in its order; what stays the same stays the same object."""
        for key in list(dict.keys(self)):
            if key not in new:
                dict.pop(self, key)
                self._ledger.enter((self._name, key), None)
        held = {}
        for key, value in new.items():
            fresh = self._ledger.enter((self._name, key), value)
            held[key] = value if fresh or not dict.__contains__(self, key) else self._own(key)
        dict.clear(self)
        dict.update(self, held)
        self._ledger.enter((self._name,), tuple(held))

    def _own(self, key: K) -> V:
        return dict.__getitem__(self, key)

    def _note_all(self) -> None:
        self._ledger.note((self._name,))
        for key in dict.keys(self):
            self._ledger.note((self._name, key))

    def __getitem__(self, key: K) -> V:
        self._ledger.note((self._name, key))
        return dict.__getitem__(self, key)

    def get(self, key: K, default: Any = None) -> Any:
        self._ledger.note((self._name, key))
        return dict.get(self, key, default)

    def __contains__(self, key: object) -> bool:
        self._ledger.note((self._name, key))
        return dict.__contains__(self, key)

    def __iter__(self) -> Iterator[K]:
        self._ledger.note((self._name,))
        return dict.__iter__(self)

    def __len__(self) -> int:
        self._ledger.note((self._name,))
        return dict.__len__(self)

    def keys(self) -> Any:
        self._ledger.note((self._name,))
        return dict.keys(self)

    def values(self) -> Any:
        self._note_all()
        return dict.values(self)

    def items(self) -> Any:
        self._note_all()
        return dict.items(self)
