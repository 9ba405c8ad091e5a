"""The orders of a cutting day pay together for all that was cut and bought in, and for no more."""

from __future__ import annotations

from collections import Counter
from datetime import date
from decimal import Decimal
from functools import cache

import pytest

from corymb.trade.orders.cut_days import CutDay, cut_day, cut_days
from corymb.trade.orders.due import Dues
from corymb.trade.orders.gathered import gathered
from corymb.trade.orders.paid import paid
from corymb.trade.orders.walked import Walked, walk_on
from corymb.trade.season.makeable import Makeable
from tests.trade.orders.hall import missing
from tests.views.making import demo


@cache
def days() -> tuple[CutDay, ...]:
    """The cutting days of two weeks, and all of their orders cut on one day."""
    makeable = Makeable.of(demo())
    dues = Dues(demo(), makeable).between(date(2026, 9, 14), date(2026, 9, 22))
    day = date(2026, 9, 17)
    walked = Walked(demo(), makeable.beds, walk_on(demo(), day))
    return (*cut_days(dues, demo(), makeable), cut_day(day, dues, walked, makeable))


@pytest.mark.parametrize("place", range(4))
def test_every_stem_of_a_day_is_paid_for_once(place: int) -> None:
    day = days()[place]
    paid_for: Counter[str] = Counter()
    for due in day.dues:
        paid_for.update(gathered(day, due).taken)
    assert len(days()[3].dues) == 3
    came = Counter({cut.stem: cut.cut + cut.bought for cut in day.plan.cuts})
    assert paid_for == came + Counter(missing(day))


def test_what_goes_into_the_pieces_is_among_what_is_taken() -> None:
    for day in days():
        for due in day.dues:
            of_due = gathered(day, due)
            assert Counter(of_due.pieces) <= Counter(of_due.taken)
            assert Counter(of_due.bought) <= Counter(of_due.taken)


@pytest.mark.parametrize("place", range(4))
def test_the_orders_of_a_day_cost_together_what_its_stems_did(place: int) -> None:
    day, stems = days()[place], demo().stems
    assert not missing(day)
    costs = [paid(due, demo(), gathered(day, due)).costs for due in day.dues]
    cut = sum(each.cut * stems[each.stem].grown for each in day.plan.cuts)
    bought = sum(each.bought * (stems[each.stem].bought or Decimal(0)) for each in day.plan.cuts)
    assert cut > 0
    assert sum(each.grown for each in costs) == cut
    assert sum(each.bought for each in costs) == bought
