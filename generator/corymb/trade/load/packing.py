"""How many round buckets of one width stand on a load floor, and where?

The best of the rows of rows.py, along either side of the floor. It is a good layout, not always
the best there can be: for that no formula is known. `at_most` is the bound that no layout
passes: N. Oler, An inequality in the geometry of numbers, Acta Mathematica 105 (1961) 19-48
(from memory), for the middles of the buckets, which keep half a width from each wall.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal, localcontext
from fractions import Fraction

from corymb.trade.load.exact import Number, exact
from corymb.trade.load.rows import Rows, rows_on


@dataclass(frozen=True)
class Layout:
    """Where buckets of one width stand: their middles in cm from one corner of the floor."""

    places: tuple[tuple[float, float], ...]
    words: str

    @property
    def count(self) -> int:
        """How many buckets stand."""
        return len(self.places)


def on_floor(long_cm: Number, wide_cm: Number, across_cm: Number) -> Layout:
    """The best rows of buckets `across_cm` wide on a floor. Raises ValueError: a side not above 0.

    `words` says how the rows run, for whoever loads.
    """
    long, wide = _in_widths(long_cm, wide_cm, across_cm)
    along = max(rows_on(long, wide), key=lambda rows: rows.count, default=None)
    turned = max(rows_on(wide, long), key=lambda rows: rows.count, default=None)
    if along is None or turned is None:
        return Layout((), "no bucket fits")
    across = float(across_cm)
    if along.count >= turned.count:
        places = tuple((x * across, y * across) for x, y in along.places())
        return Layout(places, _words(along, "length"))
    places = tuple((x * across, y * across) for y, x in turned.places())
    return Layout(places, _words(turned, "width"))


def at_most(long_cm: Number, wide_cm: Number, across_cm: Number) -> int:
    """A number of buckets that no layout can pass (Oler). Raises ValueError: a side not above 0.

    2 A / sqrt(3) + P / 2 + 1, with area and outline of the floor that the middles may stand on,
    in bucket widths.
    """
    long, wide = _in_widths(long_cm, wide_cm, across_cm)
    if long < 1 or wide < 1:
        return 0
    area, half_outline = (long - 1) * (wide - 1), long + wide - 2
    with localcontext(prec=50):
        in_the_open = 2 * _decimal(area) / Decimal(3).sqrt()
        return int(in_the_open + _decimal(half_outline) + 1)


def _in_widths(long_cm: Number, wide_cm: Number, across_cm: Number) -> tuple[Fraction, Fraction]:
    long, wide, across = exact(long_cm), exact(wide_cm), exact(across_cm)
    if min(long, wide, across) <= 0:
        raise ValueError("a floor and a bucket measure more than nothing")
    return long / across, wide / across


def _decimal(number: Fraction) -> Decimal:
    return Decimal(number.numerator) / Decimal(number.denominator)


def _words(rows: Rows, side: str) -> str:
    if rows.staggered == 0:
        return f"rows of {rows.full} along the {side}, square behind each other"
    moved = f"rows of {rows.full} and {rows.moved}" if rows.moved != rows.full else "rows"
    spread = "" if rows.spacing == 1 else ", spread from wall to wall"
    if rows.straight:
        return (
            f"{rows.straight + 1} rows of {rows.full} along the {side}, square behind each other, "
            f"then rows of {rows.moved} and {rows.full} in the gaps{spread}"
        )
    if rows.moved == rows.full:
        return f"{moved} of {rows.full} along the {side}, every second moved along{spread}"
    return f"{moved} along the {side}, the shorter in the gaps{spread}"
