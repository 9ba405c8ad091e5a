"""What stands in an order's buckets overnight: what leaves as it is, and what is made up from?

Lines whose stems leave loose have buckets of their own and are filled once: they travel as they
stand, their spare with them. The stems of everything else stand for the bench, their spare and
what a line from the mix takes of the rest of the cut among them. Common practice, no source.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Container
from dataclasses import dataclass

from corymb.studio.studio import Studio
from corymb.trade.load.buckets import Filled
from corymb.trade.orders.as_cut import as_cut, stems_of
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
    going: Counter[str] = Counter()
    bench: Counter[str] = Counter()
    for line in due.lines:
        if not line.piece.from_the_mix:
            counts = stems_of(as_cut(due, line, day), spare=True)
            (going if line.number in loose else bench).update(counts)
    for mix in day.mixed:
        if mix.order == due.id:
            (going if mix.line in loose else bench).update(mix.left_over)
    return Buckets(*(_filled(due, counts, studio) for counts in (bench, going)))


def _filled(due: Due, counts: Counter[str], studio: Studio) -> tuple[Filled, ...]:
    return bucketed(due.id, {stem: n for stem, n in sorted(counts.items()) if n}, studio)
