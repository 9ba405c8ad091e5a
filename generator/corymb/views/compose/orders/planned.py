"""How does a line of an order fare once its cut is planned: what goes in, what is missing?

From then on the beds speak, and not the calendar.
"""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.due import Due, DueLine
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import cut_for
from corymb.views.compose.orders.sheet_stems import missing_words, share, swap_words
from corymb.views.orders import PlannedView


def planned_view(catalogue: Catalogue, due: Due, line: DueLine) -> PlannedView:
    """A line as its bench sheet has it."""
    day = cut_for(catalogue, due)
    mets = as_cut(due, line, day)
    stems = sum(stems_of(mets).values())
    short = sum(met.short for met in mets)
    swaps = tuple(swap_words(catalogue, mets, day))
    return PlannedView(
        state="none" if short else "swaps" if swaps else "pictured",
        words=_words(short, bool(swaps), counted_by_walk=day.week is not None),
        each=share(stems, line.quantity),
        stems=stems,
        swaps=swaps,
        short=tuple(missing_words(catalogue, mets, line.piece.from_the_mix)),
    )


def _words(short: int, swaps: bool, counted_by_walk: bool) -> str:
    if short:
        told = ngettext("{number} stem is missing", "{number} stems are missing", short)
        return told.format(number=short)
    if counted_by_walk:
        return _("With swaps, by the walk") if swaps else _("As pictured, by the walk")
    return _("With swaps") if swaps else _("As pictured")
