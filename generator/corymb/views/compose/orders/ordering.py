"""What has to be ordered in for an order or a day's cut, and by when?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import date, timedelta

from corymb.language import gettext as _
from corymb.language.locales import and_list
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import cut_for, has_papers
from corymb.views.compose.orders.when import weekday_and_day

DAYS_AHEAD = 2
"""What is ordered so long before the cut stands with the cut in its buckets. House value, no
source: ask whoever you buy from."""

SUNDAY = 6


def order_by(cut: date) -> date:
    """The last day to order for a cut; nobody takes an order on a Sunday."""
    last = cut - timedelta(days=DAYS_AHEAD)
    return last - timedelta(days=1) if last.weekday() == SUNDAY else last


def order_in(catalogue: Catalogue, due: Due) -> str:
    """The same for one order; empty where nothing is bought, or all is over."""
    if due.day < catalogue.today or not has_papers(catalogue, due):
        return ""
    return order_words(catalogue, cut_for(catalogue, due), [due])


def order_words(catalogue: Catalogue, day: CutDay, dues: Sequence[Due]) -> str:
    """`Order in by Tuesday 15 September: 41 Dahlia, shell and 2 Sedum, wine.` Empty for none."""
    counts: Counter[str] = Counter()
    for due in dues:
        counts.update(day.bought(due))
    if not counts.total():
        return ""
    names = [
        f"{count} {catalogue.stem(stem).name}" for stem, count in sorted(counts.items()) if count
    ]
    told = _("Order in by {day}: {stems}.")
    return told.format(day=weekday_and_day(order_by(day.day)), stems=and_list(names))
