"""How do buckets of several widths stand on one load floor, and which stay behind?

A rule of thumb, not the best there can be: the widest first, row by row, each bucket into the
first row with room for it, and as a second try all set out as if they were as wide as the
widest. What stays behind is then the narrowest. Filling rows by falling size is first fit
decreasing height: Coffman, Garey, Johnson and Tarjan, Performance bounds for level-oriented
two-dimensional packing algorithms, SIAM J. Comput. 9 (1980) 808-826 (from memory).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from corymb.trade.load.exact import Number, exact
from corymb.trade.load.packing import on_floor


@dataclass(frozen=True)
class Place:
    """Where one bucket stands: its number in the list, and its middle in cm from a corner."""

    bucket: int
    x: float
    y: float


@dataclass
class _Row:
    start: Fraction
    deep: Fraction
    used: Fraction


def on_shared_floor(
    long_cm: Number, wide_cm: Number, across_cm: Sequence[Number]
) -> tuple[Place, ...]:
    """A place for as many of the buckets as stand; those without one stay behind.

    `across_cm` is the width of each bucket. Raises ValueError: a side not above 0.
    """
    if not across_cm:
        return ()
    widths = [exact(across) for across in across_cm]
    order = sorted(range(len(widths)), key=lambda i: (-widths[i], i))
    tries = (
        _as_wide_as_the_widest(long_cm, wide_cm, widths, order),
        _in_rows(exact(long_cm), exact(wide_cm), widths, order),
        _turned(_in_rows(exact(wide_cm), exact(long_cm), widths, order)),
    )
    return max(tries, key=len)


def _as_wide_as_the_widest(
    long: Number, wide: Number, widths: Sequence[Fraction], order: Sequence[int]
) -> tuple[Place, ...]:
    layout = on_floor(long, wide, widths[order[0]])
    return tuple(Place(i, x, y) for i, (x, y) in zip(order, layout.places, strict=False))


def _in_rows(
    long: Fraction, wide: Fraction, widths: Sequence[Fraction], order: Sequence[int]
) -> tuple[Place, ...]:
    rows: list[_Row] = []
    places = []
    for i in order:
        row = _row_for(widths[i], long, wide, rows)
        if row is not None:
            half = widths[i] / 2
            places.append(Place(i, float(row.used + half), float(row.start + half)))
            row.used += widths[i]
    return tuple(places)


def _row_for(width: Fraction, long: Fraction, wide: Fraction, rows: list[_Row]) -> _Row | None:
    """The first row with room, or a new one behind the others while the floor is deep enough."""
    for row in rows:
        if row.used + width <= long:
            return row
    start = rows[-1].start + rows[-1].deep if rows else Fraction(0)
    if start + width > wide or width > long:
        return None
    rows.append(_Row(start, width, Fraction(0)))
    return rows[-1]


def _turned(places: tuple[Place, ...]) -> tuple[Place, ...]:
    return tuple(Place(place.bucket, place.y, place.x) for place in places)
