"""Which ways are there to set round buckets in rows, and how many does each take?

Everything here is in bucket widths: the buckets are one wide. Rows run along the floor's
first side and are of three kinds:

straight   the rows stand square behind each other
in gaps    every second row has one fewer, and stands in the gaps of the first
in step    every row has as many, and every second is pushed to the other end

In the last two the rows are spread from wall to wall, so that they close up further: with no
room to spare in a row they are the hexagonal packing, sqrt(3)/2 from row to row. Rows of all
three kinds may follow each other on one floor.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import sqrt

from corymb.trade.load.exact import whole_root

TRIED = 24
"""Row lengths below the longest, and straight rows, that are tried: all, on floors in use."""


@dataclass(frozen=True)
class Rows:
    """`straight` rows square behind the first one, then `staggered` rows, every second moved."""

    full: int
    moved: int
    spacing: Fraction
    shift: Fraction
    straight: int
    staggered: int

    @property
    def count(self) -> int:
        """How many buckets stand in all the rows."""
        moved_rows = (self.staggered + 1) // 2
        full_rows = 1 + self.straight + self.staggered - moved_rows
        return full_rows * self.full + moved_rows * self.moved

    def places(self) -> Iterator[tuple[float, float]]:
        """The middle of each bucket, in bucket widths from the corner."""
        step = sqrt(1 - self.shift**2)
        for row in range(1 + self.straight):
            yield from self._row(self.full, Fraction(0), 0.5 + row)
        for row in range(1, self.staggered + 1):
            across = 0.5 + self.straight + row * step
            if row % 2:
                yield from self._row(self.moved, self.shift, across)
            else:
                yield from self._row(self.full, Fraction(0), across)

    def _row(self, count: int, start: Fraction, across: float) -> Iterator[tuple[float, float]]:
        for place in range(count):
            yield float(Fraction(1, 2) + start + place * self.spacing), across


def rows_on(long: Fraction, wide: Fraction) -> Iterator[Rows]:
    """Every way of setting rows along the first side, of floor sides in bucket widths."""
    if long < 1 or wide < 1:
        return
    yield Rows(int(long), 0, Fraction(1), Fraction(0), int(wide) - 1, 0)
    for full in range(max(1, int(long) - TRIED), int(long) + 1):
        for moved, spacing, shift in _staggers(full, long):
            # Rows two apart must clear each other too: twice the step is at least one width.
            if shift**2 <= Fraction(3, 4):
                yield from _closed_up(full, moved, spacing, shift, wide)


def _staggers(full: int, long: Fraction) -> Iterator[tuple[int, Fraction, Fraction]]:
    """How every second row may stand: how many in it, how far apart, how far moved along."""
    if full > 1:
        spacing = (long - 1) / (full - 1)
        yield full - 1, spacing, spacing / 2
    if long >= full + Fraction(1, 2):
        spacing = (long - 1) / (full - Fraction(1, 2))
        yield full, spacing, spacing / 2
    elif long > full:
        yield full, Fraction(1), long - full


def _closed_up(
    full: int, moved: int, spacing: Fraction, shift: Fraction, wide: Fraction
) -> Iterator[Rows]:
    """One stagger, with every number of straight rows before it."""
    step_squared = 1 - shift**2
    for straight in range(min(int(wide), TRIED)):
        room = wide - 1 - straight
        staggered = whole_root(room**2 / step_squared)
        yield Rows(full, moved, spacing, shift, straight, staggered)
