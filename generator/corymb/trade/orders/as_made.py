"""Which lines does a look have once an order's stems are cut, and what went on the way?"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from corymb.studio.models import Variant
from corymb.trade.changes import LookLine
from corymb.trade.orders.as_cut import Met
from corymb.trade.written_for import Stage


def as_made(mets: Sequence[Met]) -> tuple[Stage, ...]:
    """The look as it will be, as if a variant had made its swaps; nothing where it is as written.

    Counts are of all pieces. A stem that is missing altogether is left out.
    """
    swaps = [f"1 {met.line.stem} -> 1 {fill.stem}" for met in mets for fill in met.stand_ins]
    gone = [met.line.stem for met in mets if not met.fills]
    if not swaps and not gone:
        return ()
    made = Variant.model_validate(
        {"name": "As cut", "about": "With what stands.", "swap": swaps, "drop": gone}
    )
    return (Stage(made, tuple(_lines(mets))),)


def _lines(mets: Iterable[Met]) -> Iterable[LookLine]:
    for met in mets:
        for fill in met.fills:
            own = fill.stem == met.line.stem
            note = met.line.note if own else ""
            yield replace(met.line, stem=fill.stem, count=fill.count, note=note)
