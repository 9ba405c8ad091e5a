"""How many whole stems does an arrangement take in another size, or so many times over?

The design of a mix is in its roles, so each role is scaled to its own whole number first
(rounded half up) and then shared out among its lines by largest remainder. An essential stem
never falls to nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import floor

from corymb.trade.apportion import apportion


@dataclass(frozen=True)
class Counted:
    """What scaling needs to know of a line: how many stems, in which role, and if it must stay."""

    count: int
    role: str
    essential: bool = False


def half_up(number: Fraction) -> int:
    """The nearest whole number; a half goes up."""
    return floor(number + Fraction(1, 2))


def scaled(lines: Sequence[Counted], scale: Fraction) -> list[int]:
    """Whole stems for each line at `scale` (1 is the recipe as written), in the lines' order.

    A role with stems keeps at least one, and at least its number of essential lines.
    Raises ValueError when `scale` is not above 0.
    """
    if scale <= 0:
        raise ValueError("a size must be more than nothing")
    counts = [0] * len(lines)
    for role in dict.fromkeys(line.role for line in lines):
        members = [i for i, line in enumerate(lines) if line.role == role and line.count > 0]
        for i, count in zip(members, _role(lines, members, scale), strict=True):
            counts[i] = count
    return counts


def _role(lines: Sequence[Counted], members: list[int], scale: Fraction) -> list[int]:
    if not members:
        return []
    written = [lines[i].count for i in members]
    essential = [lines[i].essential for i in members]
    total = max(half_up(sum(written) * scale), sum(essential), 1)
    parts = apportion(total, written)
    for i, must_stay in enumerate(essential):
        if must_stay and parts[i] == 0:
            parts[_to_spare(parts, essential)] -= 1
            parts[i] = 1
    return parts


def _to_spare(parts: list[int], essential: list[bool]) -> int:
    """The line that gives up a stem: the largest that can spare one."""
    able = [i for i, part in enumerate(parts) if part > (1 if essential[i] else 0)]
    return max(able, key=lambda i: (parts[i], -i))


def in_proportion(count: int, out: int, in_: int) -> int:
    """Whole stems for `count` of what goes out, at `in_` for `out`: one at least for any."""
    return max(1, half_up(Fraction(count * in_, out))) if count and out else 0


def times(counts: Sequence[int], quantity: int) -> list[int]:
    """Whole stems for `quantity` pieces alike. Raises ValueError when it is below 1."""
    if quantity < 1:
        raise ValueError("a quantity is 1 or more")
    return [count * quantity for count in counts]
