"""What was decided for the orders that have pages: the cutting day of each, and how it is packed.

It takes a while to decide, and every paper asks for it: so it is kept as long as the catalogue's
dues, from which it follows.
"""

from __future__ import annotations

from weakref import WeakKeyDictionary

from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.cutting_ahead import CuttingAhead
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.packed import Packed, packed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.shown import shown_dues

_KEPT: WeakKeyDictionary[Dues, dict[str, CutDay]] = WeakKeyDictionary()


def cut_for(catalogue: Catalogue, due: Due) -> CutDay:
    """The cutting day of an order that has a page, with all that is cut together."""
    if catalogue.dues not in _KEPT:
        ahead = CuttingAhead(catalogue.dues, catalogue.studio, catalogue.makeable)
        days = ahead.of(shown_dues(catalogue))
        _KEPT[catalogue.dues] = {each.id: day for day in days for each in day.dues}
    return _KEPT[catalogue.dues][due.id]


def packed_for(catalogue: Catalogue, due: Due) -> Packed:
    """How an order that has a page is packed."""
    return packed(due, cut_for(catalogue, due), catalogue.studio)
