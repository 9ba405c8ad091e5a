"""How does an address become a code that a camera reads? As a QR code of ISO/IEC 18004:2015.

Level M of error correction: a seventh of it may be wet or torn. Never a higher one by chance, so
that all labels of a studio look alike.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

import segno

from corymb.views.papers import CodeView

LEVEL = "m"
QUIET = 4  # modules left clear on all sides: ISO/IEC 18004, 5.3.8 (from memory)


def code_of(leads_to: str) -> CodeView:
    """The code of an address, or of any text."""
    symbol = segno.make(leads_to, error=LEVEL, micro=False, boost_error=False)
    rows = list(symbol.matrix)
    path = "".join(_row(y + QUIET, row) for y, row in enumerate(rows))
    return CodeView(len(rows) + 2 * QUIET, path, leads_to)


def _row(y: int, row: Iterable[int]) -> str:
    """The dark modules of one row, those side by side as one rectangle."""
    return "".join(f"M{x + QUIET} {y}h{length}v1h-{length}z" for x, length in _runs(row))


def _runs(row: Iterable[int]) -> Iterator[tuple[int, int]]:
    for dark, run in groupby(enumerate(row), key=lambda module: bool(module[1])):
        if dark:
            places = [x for x, _ in run]
            yield places[0], len(places)
