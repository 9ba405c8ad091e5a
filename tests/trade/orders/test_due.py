"""What is due on which day of the demo's year: a real studio's files, read as they are."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import date
from fractions import Fraction
from pathlib import Path

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import Order, Recipe, StandingOrder
from corymb.studio.studio import Studio
from corymb.trade.hours.visits import Coming, Visit, every_visit
from corymb.trade.looks import Look, looks_of
from corymb.trade.orders.due import Dues
from corymb.trade.season.makeable import Makeable
from tests.trade.orders.hall import order, standing
from tests.trade.orders.hall import studio as studio_of

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


NEXT_YEAR = {"from": "2027-01-05", "until": "2027-12-28"}


def hall_dues(*orders: Order | StandingOrder) -> Dues:
    read = studio_of(*orders)
    return Dues(read, Makeable.of(read))


FOLLOWED = {
    "by next year's": ({}, date(2027, 1, 5)),
    "by another place's": (
        {"where": {"place": "the porch", "setting": "indoors", "light": "daylight"}},
        None,
    ),
    "by another client's": ({"client": {"name": "The inn"}}, None),
}


@pytest.mark.parametrize(("keys", "after"), FOLLOWED.values(), ids=FOLLOWED)
def test_the_last_visit_of_a_year_keeps_until_the_first_of_the_order_that_follows(
    keys: dict[str, object], after: date | None
) -> None:
    dues = hall_dues(
        standing("hall", rotation=["jar"]),
        standing("hall-2027", rotation=["jar"], **NEXT_YEAR, **keys),
    )
    (last,) = dues.between(date(2026, 12, 29), date(2026, 12, 29))
    assert last.next_visit == after
    assert dues.next_after("hall", date(2026, 12, 22)) == date(2026, 12, 29)


def test_what_is_asked_for_first_changes_nothing_of_how_visits_are_laid_out() -> None:
    hall = standing("hall", rotation=["jar", "bowl", "loose"])
    at_once, bit_by_bit = hall_dues(hall), hall_dues(hall)
    whole = at_once.laid_out("hall", date(2026, 12, 29))
    for month in range(1, 13):
        bit_by_bit.laid_out("hall", date(2026, month, 28))
    assert bit_by_bit.laid_out("hall", date(2026, 12, 29)) == whole
    assert at_once.laid_out("hall", date(2026, 6, 30)) == whole[:26]


def test_a_rule_is_drawn_once_and_a_recipe_worked_out_once(monkeypatch: pytest.MonkeyPatch) -> None:
    drawn: list[date] = []
    worked: list[str] = []

    def every(coming: Coming) -> Iterator[Visit]:
        for visit in every_visit(coming):
            drawn.append(visit.planned)
            yield visit

    def looks(recipe: Recipe, recipes: Mapping[str, Recipe]) -> dict[str, Look]:
        worked.append(recipe.id)
        return looks_of(recipe, recipes)

    dues = hall_dues(standing("hall", lines=["1 jar"]), order("tea", "2026-07-07", "2 jar"))
    monkeypatch.setattr("corymb.trade.hours.visits.every_visit", every)
    monkeypatch.setattr("corymb.trade.orders.pieces.looks_of", looks)
    dues = Dues(dues._studio, dues._makeable)
    for _ in range(3):
        assert len(dues.between(date(2026, 1, 1), date(2026, 12, 31))) == 53
    assert len(drawn) == 52
    assert worked == ["jar"]


def test_many_earlier_years_of_one_place_are_gone_through_once_each() -> None:
    years = [
        standing(f"hall-{year}", rotation=["jar", "bowl"], **{"from": f"{year}-01-05"},
                 until=f"{year}-12-28")
        for year in range(2006, 2027)
    ]  # fmt: skip
    dues = hall_dues(*years)
    before = dues.history("hall-2026", date(2026, 1, 6))
    assert min(before).year == 2006
    assert len(before) > 20 * 50
