"""Which stems of a cutting day does each order pay for?

Those it gets, spare and stand-ins among them, and its share of what is left over of the cut: by
whole stems, as many as it takes of each stem against the other orders of the day (largest
remainder). So all orders of a day together pay for all that was cut and bought in, and for no
stem twice. What is missing still has to come from somewhere, and is paid for as written.
"""

from __future__ import annotations

from collections import Counter

from corymb.trade.apportion import apportion
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given, left_over
from corymb.trade.orders.paid import Gathered


def gathered(day: CutDay, due: Due) -> Gathered:
    """What the cut of a day brought together for one of its orders."""
    of_due = day.of(due)
    short = Counter({each.stem: 0 for each in of_due})
    pieces: Counter[str] = Counter()
    for each in of_due:
        short[each.stem] += each.short
        for fill in each.fills:
            pieces[fill.stem] += fill.count
    over = Counter({stem: _share(day, due, stem, left) for stem, left in left_over(day).items()})
    taken = Counter(given(day, due.id)) + over + short
    return Gathered(dict(pieces + short), dict(taken), day.bought(due))


def _share(day: CutDay, due: Due, stem: str, left: int) -> int:
    """How many of what is left over of a stem an order pays for."""
    takes = [given(day, each.id).get(stem, 0) for each in day.dues]
    shares = apportion(left, takes if any(takes) else [1] * len(takes))
    return shares[day.dues.index(due)]
