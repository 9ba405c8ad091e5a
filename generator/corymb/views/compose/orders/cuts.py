"""Which orders have papers? Those that have a page and whose cut is planned already.

Further ahead no walk says what stands: a sheet of counts would be a guess that looks like a plan.
"""

from __future__ import annotations

from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.packed import Packed, packed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.shown import shown_dues


def with_papers(catalogue: Catalogue) -> tuple[Due, ...]:
    """The orders that have papers, by day; none of it is for clients as a page."""
    return tuple(due for due in shown_dues(catalogue) if has_papers(catalogue, due))


def has_papers(catalogue: Catalogue, due: Due) -> bool:
    """Whether an order's cut is planned."""
    return any(each.id == due.id for day in catalogue.cut_days for each in day.dues)


def cut_for(catalogue: Catalogue, due: Due) -> CutDay:
    """The cutting day of an order that has papers, with all that is cut together."""
    return next(day for day in catalogue.cut_days if any(each.id == due.id for each in day.dues))


def packed_for(catalogue: Catalogue, due: Due) -> Packed:
    """How an order that has papers is packed."""
    return packed(due, cut_for(catalogue, due), catalogue.studio)
