"""Which orders have pages? Every one-off order, and the visits that anyone still looks at.

Those are the visits from four weeks before the day of the build to a year after it, and all
others of the same calendar year.
"""

from __future__ import annotations

from datetime import date, timedelta

from corymb.trade.orders.due import Due
from corymb.trade.orders.timed import Timed, timed
from corymb.views.compose.catalogue import Catalogue

WEEKS_BACK = 4
DAYS_AHEAD = 365


def span_shown(today: date) -> tuple[date, date]:
    """The first and the last day of the visits that have pages."""
    first = min(today - timedelta(weeks=WEEKS_BACK), date(today.year, 1, 1))
    last = max(today + timedelta(days=DAYS_AHEAD), date(today.year, 12, 31))
    return first, last


def shown_dues(catalogue: Catalogue) -> tuple[Due, ...]:
    """All that have a page, by day and then by id; none of it is for clients."""
    if not catalogue.staff:
        return ()
    found = {due.id: due for due in catalogue.dues.between(*span_shown(catalogue.today))}
    for order in catalogue.studio.orders.values():
        if order.id not in found:
            on_its_day = catalogue.dues.between(order.date, order.date)
            found |= {due.id: due for due in on_its_day if due.id == order.id}
    return tuple(sorted(found.values(), key=lambda due: (due.day, due.id)))


def timed_due(catalogue: Catalogue, due: Due) -> Timed:
    """An order's hours; one that is past can't be too late any more."""
    today = catalogue.today if due.day >= catalogue.today else None
    return timed(due, catalogue.studio, catalogue.makeable, today)
