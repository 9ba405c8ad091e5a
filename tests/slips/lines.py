"""What happens to whole lines: taken out, doubled, moved, cut off."""

from __future__ import annotations

from collections.abc import Callable

Lines = list[str]
OfLines = Callable[[Lines, int, int], Lines]
"""The lines with a slip in that of the first number; the second is another line's."""


def _value_of_another(lines: Lines, at: int, other: int) -> Lines:
    value = lines[other].partition(":")[2]
    return [*lines[:at], lines[at].partition(":")[0] + ":" + value, *lines[at + 1 :]]


def _swapped(lines: Lines, at: int, other: int) -> Lines:
    swapped = list(lines)
    swapped[at], swapped[other] = lines[other], lines[at]
    return swapped


def _ids_swapped(lines: Lines, at: int, other: int) -> Lines:
    """What stands before the colon goes to the other line, and the other way round."""
    swapped = list(lines)
    here, there = lines[at].partition(":"), lines[other].partition(":")
    swapped[at] = there[0] + "".join(here[1:])
    swapped[other] = here[0] + "".join(there[1:])
    return swapped


OF_LINES: dict[str, OfLines] = {
    "a line taken out": lambda lines, at, _: [*lines[:at], *lines[at + 1 :]],
    "a line cut, and all that comes after it": lambda lines, at, _: [
        *lines[:at],
        lines[at][: len(lines[at]) * 2 // 3],
    ],
    "a line with another's value": _value_of_another,
    "a line moved in": lambda lines, at, _: [*lines[:at], f"  {lines[at]}", *lines[at + 1 :]],
    "a line moved out": lambda lines, at, _: [
        *lines[:at],
        lines[at].removeprefix("  "),
        *lines[at + 1 :],
    ],
    "a line doubled": lambda lines, at, _: [*lines[:at], lines[at], *lines[at:]],
    "a line under the next": lambda lines, at, _: _swapped(lines, at, min(at + 1, len(lines) - 1)),
    "two lines swapped": _swapped,
    "the keys of two lines swapped": _ids_swapped,
}
