"""What stands in an order's buckets overnight: what leaves as it is, and what is made up from?

Lines whose stems leave loose have buckets of their own and are filled once: they travel as they
stand, their spare with them. The stems of everything else stand for the bench, their spare among
them. A line from the mix has what it takes of spare with its own stems, and it is spare no longer;
the bench's goes before what would leave loose. Common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Container
from dataclasses import dataclass, field

from corymb.studio.studio import Studio
from corymb.trade.load.buckets import Filled
from corymb.trade.orders.as_cut import as_cut, fill_counts, stems_of
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import bucketed


@dataclass(frozen=True)
class Buckets:
    """The buckets of one order, the night before."""

    bench: tuple[Filled, ...]
    """They are made up from."""
    going: tuple[Filled, ...]
    """They leave as they stand."""

    @property
    def all(self) -> tuple[Filled, ...]:
        """In the order they are numbered."""
        return (*self.bench, *self.going)


def night_before(due: Due, day: CutDay, studio: Studio, loose: Container[int]) -> Buckets:
    """An order's buckets; `loose` are the numbers of the lines whose stems leave loose."""
    going, bench = _Side(), _Side()
    for line in due.lines:
        side = going if line.number in loose else bench
        mets = as_cut(due, line, day)
        side.pieces.update(stems_of(mets))
        side.spare.update(fill_counts(fill for met in mets for fill in met.spare))
    for mix in day.mixed:
        if mix.order == due.id:
            sides = (going, bench) if mix.line in loose else (bench, going)
            _give(Counter(mix.spare), *sides)
    return Buckets(*(_filled(due, side.pieces + side.spare, studio) for side in (bench, going)))


@dataclass
class _Side:
    """What stands on one side, by stem: for its pieces, and to spare."""

    pieces: Counter[str] = field(default_factory=Counter)
    spare: Counter[str] = field(default_factory=Counter)


def _give(taken: Counter[str], own: _Side, other: _Side) -> None:
    """What a piece from the mix has taken is no longer spare: of its own side before the other."""
    near = taken & own.spare
    own.spare -= near
    other.spare -= taken - near


def _filled(due: Due, counts: Counter[str], studio: Studio) -> tuple[Filled, ...]:
    return bucketed(due.id, {stem: n for stem, n in sorted(counts.items()) if n}, studio)
