"""Which orders does anyone still look at? Every one-off order, and the visits of about a year.

Those are the visits from four weeks before a day to a year after it, and all others of the same
calendar year. Our own choice, no source.
"""

from __future__ import annotations

from datetime import date, timedelta

from corymb.trade.orders.due import Due, Dues

WEEKS_BACK = 4
DAYS_AHEAD = 365


def span_looked_at(today: date) -> tuple[date, date]:
    """The first and the last day of the visits that are looked at."""
    first = min(today - timedelta(weeks=WEEKS_BACK), date(today.year, 1, 1))
    last = max(today + timedelta(days=DAYS_AHEAD), date(today.year, 12, 31))
    return first, last


def dues_looked_at(dues: Dues, today: date) -> tuple[Due, ...]:
    """All that are looked at on a day, by their days and then by id."""
    found = {due.id: due for due in (*dues.one_off(), *dues.between(*span_looked_at(today)))}
    return tuple(sorted(found.values(), key=lambda due: (due.day, due.id)))
