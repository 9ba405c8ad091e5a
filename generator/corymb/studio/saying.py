"""How are lists and counts said in a sentence?"""

from __future__ import annotations

from collections.abc import Iterable


def and_list(words: Iterable[str]) -> str:
    """`a`, `a and b`, `a, b and c`; empty for none."""
    return _listed(words, "and")


def or_list(words: Iterable[str]) -> str:
    """`a`, `a or b`, `a, b or c`; empty for none."""
    return _listed(words, "or")


def counted(count: int, one: str, many: str) -> str:
    """`1 stem`, `56 stems`."""
    return f"{count} {one if count == 1 else many}"


def _listed(words: Iterable[str], joint: str) -> str:
    *most, last = [*words] or [""]
    return f"{', '.join(most)} {joint} {last}" if most else last
