"""Which cutting days are looked at, and that a day is planned with all that is cut on it."""

from __future__ import annotations

from collections import Counter
from datetime import date, timedelta

import pytest

from corymb.trade.orders.cut_days import CutDay, cut_days, cutting_day
from corymb.trade.orders.cutting_ahead import AHEAD, BACK, LONGEST, CuttingAhead
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.gets import given, left_over
from corymb.trade.season.makeable import Makeable
from tests.trade.orders.hall import order, studio
from tests.views.making import demo

TODAY = date(2026, 9, 16)
MAKEABLE = Makeable.of(demo())
DUES = Dues(demo(), MAKEABLE)
AHEAD_OF_DEMO = CuttingAhead(DUES, demo(), MAKEABLE)


def ids(days: tuple[CutDay, ...]) -> list[str]:
    return [due.id for day in days for due in day.dues]


def called(known_as: str) -> Due:
    return next(due for due in DUES.between(TODAY, date(2026, 12, 31)) if due.id == known_as)


def test_every_order_is_planned_and_of_visits_those_that_are_near() -> None:
    days = AHEAD_OF_DEMO.on(TODAY)
    assert {*demo().orders} <= {*ids(days)}
    # Tuesdays, cut on Sundays: the first Sunday is 6 September, the last 8 November.
    # That of 6 October is written out as an order of its own.
    visits = [
        "2026-09-08", "2026-09-15", "2026-09-22", "2026-09-29", "2026-10-13",
        "2026-10-20", "2026-10-27", "2026-11-03", "2026-11-10",
    ]  # fmt: skip
    assert [known_as for known_as in ids(days) if "--" in known_as] == [
        f"lantern-house--{day}" for day in visits
    ]
    assert (str(TODAY - BACK), str(TODAY + AHEAD)) == ("2026-09-02", "2026-11-11")


def test_the_plan_of_a_day_does_not_hang_on_which_of_its_orders_is_asked_for() -> None:
    alone = AHEAD_OF_DEMO.of([called("lantern-house--2026-09-22")])
    among = AHEAD_OF_DEMO.of(DUES.between(date(2026, 9, 14), date(2026, 9, 30)))
    (day,) = alone
    assert day.plan == next(each for each in among if each.day == day.day).plan


def test_what_an_earlier_order_takes_of_the_walk_is_gone_though_nobody_asked_for_it() -> None:
    (day,) = AHEAD_OF_DEMO.of([called("lantern-house--2026-09-22")])
    alone = cut_days([called("lantern-house--2026-09-22")], demo(), MAKEABLE)[0]
    stood = {each.stem: each.standing for each in day.problem.standing}
    before = {each.stem: each.standing for each in alone.problem.standing}
    assert any(count < before[stem] for stem, count in stood.items() if stem in before)


def test_whoever_waits_hears_of_every_day_that_is_decided() -> None:
    heard: list[tuple[int, int]] = []
    AHEAD_OF_DEMO.of(
        DUES.between(date(2026, 9, 14), date(2026, 9, 30)), lambda *both: heard.append(both)
    )
    assert heard == [(n, len(heard)) for n in range(1, len(heard) + 1)]
    assert len(heard) > 1


def test_two_orders_cut_on_a_day_stand_in_one_list_though_one_is_asked_for() -> None:
    hall = studio(order("lunch", "2026-06-18", "4 jar"), order("tea", "2026-06-18", "2 jar"))
    makeable = Makeable.of(hall)
    dues = Dues(hall, makeable)
    lunch = next(due for due in dues.between(date(2026, 6, 1), date(2026, 7, 1)))
    (day,) = CuttingAhead(dues, hall, makeable).of([lunch])
    assert [due.id for due in day.dues] == ["lunch", "tea"]


@pytest.mark.parametrize("day", AHEAD_OF_DEMO.on(TODAY), ids=lambda day: str(day.day))
def test_every_stem_cut_or_bought_goes_into_an_order_or_is_left_over(day: CutDay) -> None:
    gone = Counter(left_over(day))
    for due in day.dues:
        gone.update(given(day, due.id))
    assert gone == +Counter({cut.stem: cut.cut + cut.bought for cut in day.plan.cuts})
    assert all(count > 0 for count in gone.values())


def test_no_order_is_cut_longer_before_its_day_than_is_looked_back() -> None:
    hall = studio(order("crowd", "2026-06-18", "2000 jar"))
    makeable = Makeable.of(hall)
    (due,) = Dues(hall, makeable).between(date(2026, 6, 18), date(2026, 6, 18))
    assert timedelta(0) < due.day - cutting_day(due, hall, makeable) <= LONGEST
