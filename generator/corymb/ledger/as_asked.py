"""How does one look things up by name, of which only those asked for are worked out?"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import Generic, TypeVar

V = TypeVar("V")


class AsAsked(Mapping[str, V], Generic[V]):
    """A mapping whose values are worked out when they are asked for, and kept by whoever does."""

    def __init__(
        self,
        names: Callable[[], Iterable[str]],
        has: Callable[[str], bool],
        value: Callable[[str], V],
    ) -> None:
        self._names = names
        self._has = has
        self._value = value

    def __getitem__(self, name: str) -> V:
        if not self._has(name):
            raise KeyError(name)
        return self._value(name)

    def __contains__(self, name: object) -> bool:
        return isinstance(name, str) and self._has(name)

    def __iter__(self) -> Iterator[str]:
        return iter(self._names())

    def __len__(self) -> int:
        return sum(1 for _ in self._names())
