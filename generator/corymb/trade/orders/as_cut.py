"""What does each line of an order really get: its own stems, what stands in, what is missing?

A line that is cut for is met as the cutting day decided. A line from the mix is met from what was
left over and from spare. Counts are of all its pieces together.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from corymb.trade.changes import LookLine
from corymb.trade.cut import Fill
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.needs import Key, needs_in


@dataclass(frozen=True)
class Met:
    """One line of a look, for all the pieces of an order's line."""

    line: LookLine
    wanted: int
    """As many as the recipe asks."""
    fills: tuple[Fill, ...]
    """What goes in: the stem itself, and what stands in for it."""
    spare: tuple[Fill, ...]
    short: int

    @property
    def stand_ins(self) -> tuple[Fill, ...]:
        """What goes in and isn't the stem itself."""
        return tuple(fill for fill in self.fills if fill.stem != self.line.stem)


def as_cut(due: Due, line: DueLine, day: CutDay) -> tuple[Met, ...]:
    """A line of an order, one answer for each line of its look."""
    return tuple(_mixed(due, line, day) if line.piece.from_the_mix else _cut(due, line, day))


def stems_of(mets: tuple[Met, ...], spare: bool = False) -> dict[str, int]:
    """Whole stems that go into a line's pieces, by stem; with `spare`, that too."""
    fills = [fill for met in mets for fill in (*met.fills, *(met.spare if spare else ()))]
    return dict(fill_counts(fills))


def fill_counts(fills: Iterable[Fill]) -> Counter[str]:
    """Whole stems that go in, by stem."""
    counts: Counter[str] = Counter()
    for fill in fills:
        counts[fill.stem] += fill.count
    return counts


def _cut(due: Due, line: DueLine, day: CutDay) -> Iterator[Met]:
    found = {(key.line, key.place): each for each in day.of(due) for key in [Key.of(each.key)]}
    for place, look_line in enumerate(line.piece.look.lines, 1):
        each = found.get((line.number, place))
        if each:
            yield Met(look_line, each.count, each.fills, each.spare, each.short)


def _mixed(due: Due, line: DueLine, day: CutDay) -> Iterator[Met]:
    mix = next(each for each in day.mixed if (each.order, each.line) == (due.id, line.number))
    for need, fills in zip(needs_in(due, line), mix.fills, strict=True):
        short = need.count - sum(fill.of for fill in fills)
        yield Met(need.look_line, need.count, fills, (), short)
