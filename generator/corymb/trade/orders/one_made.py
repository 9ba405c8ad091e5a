"""What goes into one piece of an order's line, as it will be made?"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from corymb.trade.changes import LookLine
from corymb.trade.looks import Look
from corymb.trade.orders.as_cut import Met
from corymb.trade.orders.due import DueLine


@dataclass(frozen=True)
class OneMade:
    """One of a line's pieces, with what stands in for what doesn't stand."""

    look: Look
    """Its lines are those of this one piece."""
    as_written: bool
    """Whether nothing stands in and nothing is missing."""
    all_alike: bool
    """Whether every piece of the line gets the same; or else one has a stem more or less."""


def one_made(line: DueLine, mets: Sequence[Met]) -> OneMade:
    """One piece of a line. Where a count doesn't come out even, what most of them get."""
    lines = [
        replace(met.line, stem=fill.stem, count=half_up(fill.count, line.quantity))
        for met in mets
        for fill in met.fills
    ]
    return OneMade(
        replace(line.piece.look, lines=together(lines)),
        as_written=not any(met.stand_ins or met.short for met in mets),
        all_alike=all(fill.count % line.quantity == 0 for met in mets for fill in met.fills),
    )


def half_up(count: int, pieces: int) -> int:
    """So many for one of the pieces, to the nearest whole stem."""
    return (2 * count + pieces) // (2 * pieces)


def together(lines: Sequence[LookLine]) -> tuple[LookLine, ...]:
    """The lines, those of one stem for the same part together, and none of nothing."""
    found: dict[tuple[str, str, str | None], LookLine] = {}
    for line in lines:
        key = (line.stem, line.role, line.use)
        had = found[key].count if key in found else 0
        if had + line.count:
            found[key] = replace(line, count=had + line.count)
    return tuple(found.values())
