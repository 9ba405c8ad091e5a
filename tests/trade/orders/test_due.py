"""What is due on which day of the demo's year: a real studio's files, read as they are."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.trade.orders.due import Dues
from corymb.trade.season.makeable import Makeable

DEMO = Path(__file__).parents[3] / "content"


@pytest.fixture(scope="module")
def studio() -> Studio:
    read, _ = read_studio(DEMO)
    assert read is not None
    return read


@pytest.fixture(scope="module")
def dues(studio: Studio) -> Dues:
    return Dues(studio, Makeable.of(studio))


def test_orders_and_visits_come_by_day(dues: Dues) -> None:
    week = dues.between(date(2026, 9, 14), date(2026, 9, 20))
    assert [(due.day.day, due.standing) for due in week] == [(15, "lantern-house"), (19, "")]
    assert [str(due.week) for due in week] == ["2026-W38", "2026-W38"]


def test_both_ends_of_the_days_asked_for_are_in(dues: Dues) -> None:
    assert [due.id for due in dues.between(date(2026, 9, 19), date(2026, 9, 19))] == ["barn-supper"]
    assert dues.between(date(2026, 9, 16), date(2026, 9, 18)) == ()


def test_what_is_from_the_mix_is_counted_and_not_cut(dues: Dues) -> None:
    (supper,) = dues.between(date(2026, 9, 19), date(2026, 9, 19))
    mixed = [line for line in supper.lines if line.piece.from_the_mix]
    assert mixed
    assert all(sum(line.counts) > 0 and line.wanted == {} for line in mixed)


def test_spare_is_the_orders_own_or_the_studios(dues: Dues, studio: Studio) -> None:
    (supper,) = dues.between(date(2026, 9, 19), date(2026, 9, 19))
    assert supper.spare == Fraction(1, 10)
    (wedding,) = dues.between(date(2026, 11, 21), date(2026, 11, 21))
    assert wedding.order.spare is None
    assert wedding.spare == Fraction(studio.house.cutting.spare.fraction)


def test_a_visit_knows_the_next_one_past_those_skipped(dues: Dues) -> None:
    (july,) = dues.between(date(2026, 7, 28), date(2026, 7, 28))
    assert july.next_visit == date(2026, 8, 11)


def test_a_visit_written_out_takes_the_visits_place(studio: Studio) -> None:
    supper = studio.orders["barn-supper"]
    data = {"date": "2026-09-15", "visit of": "lantern-house", "lines": ["1 lantern-house-autumn"]}
    order = Order.model_validate(
        {
            "name": "The hall",
            "client": {"name": "The hall"},
            "where": {"place": "the hall", "setting": "indoors", "light": "daylight"},
            "handover": "delivery",
            **data,
        }
    ).with_id("hall-in-september")
    changed = replace(studio, orders={"barn-supper": supper, order.id: order})
    found = Dues(changed, Makeable.of(changed))
    (due,) = found.between(date(2026, 9, 15), date(2026, 9, 15))
    assert (due.id, due.standing, due.next_visit) == (
        "hall-in-september",
        "lantern-house",
        date(2026, 9, 22),
    )
    assert found.sent("lantern-house") == {date(2026, 9, 15): "lantern-house-autumn"}
