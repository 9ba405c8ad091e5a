"""Which orders have pages, and what are their hours? For staff alone."""

from __future__ import annotations

from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import Timed
from corymb.views.compose.catalogue import Catalogue


def shown_dues(catalogue: Catalogue) -> tuple[Due, ...]:
    """All that have a page, by day and then by id; none of it is for clients."""
    return catalogue.dues_looked_at if catalogue.staff else ()


def timed_due(catalogue: Catalogue, due: Due) -> Timed:
    """An order's hours; one that is past can't be too late any more."""
    return catalogue.timed(due)
