"""A standing order's visits: skipped, moved, and each with its turn in the rotation."""

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values.recurrence import parse_recurrence
from corymb.trade.hours.visits import Coming, next_visit, turn, visits

TUESDAYS = parse_recurrence("weekly on Tuesday")
FIRST, LAST = date(2026, 1, 1), date(2026, 12, 29)


def coming(**changes: Any) -> Coming:
    """Tuesdays from Thursday 1 January 2026 on, in turn a, b, c."""
    return Coming(**{"rule": TUESDAYS, "first": FIRST, "rotation": ("a", "b", "c"), **changes})


def told(order: Coming, start: str, end: str) -> list[str]:
    found = visits(order, date.fromisoformat(start), date.fromisoformat(end))
    return [f"{visit.number} {visit.day:%m-%d} {visit.recipe}" for visit in found]


SKIPPED = frozenset({date(2026, 1, 13)})
MOVED = {date(2026, 1, 13): date(2026, 1, 15)}

CASES = {
    # changes, from, until, number day recipe
    "plainly, the first day not being one": (
        {}, "2026-01-01", "2026-01-27", ["1 01-06 a", "2 01-13 b", "3 01-20 c", "4 01-27 a"],
    ),
    "the same numbers whatever stretch is asked for": (
        {}, "2026-01-20", "2026-01-27", ["3 01-20 c", "4 01-27 a"],
    ),
    "a skipped visit has no turn": (
        {"skip": SKIPPED}, "2026-01-01", "2026-01-27", ["1 01-06 a", "2 01-20 b", "3 01-27 c"],
    ),
    "a skipped visit before the stretch has none either": (
        {"skip": SKIPPED}, "2026-01-21", "2026-01-27", ["3 01-27 c"],
    ),
    "a moved visit keeps its turn": (
        {"moved": MOVED}, "2026-01-01", "2026-01-20", ["1 01-06 a", "2 01-15 b", "3 01-20 c"],
    ),
    "a visit is moved out of the stretch": ({"moved": MOVED}, "2026-01-13", "2026-01-14", []),
    "a visit is moved into the stretch": (
        {"moved": MOVED}, "2026-01-14", "2026-01-15", ["2 01-15 b"],
    ),
    "a later visit is moved forward into the stretch": (
        {"moved": {date(2026, 2, 3): date(2026, 1, 14)}},
        "2026-01-01",
        "2026-01-15",
        ["1 01-06 a", "2 01-13 b", "5 01-14 b"],
    ),
    "a skip may name the day it was moved to": (
        {"moved": MOVED, "skip": [date(2026, 1, 15)]},
        "2026-01-01",
        "2026-01-20",
        ["1 01-06 a", "2 01-20 b"],
    ),
    "the last day is one of them": (
        {"last": LAST}, "2026-12-15", "2027-06-30", ["50 12-15 b", "51 12-22 c", "52 12-29 a"],
    ),
    "the last visit may be moved past the last day": (
        {"last": LAST, "moved": {LAST: date(2027, 1, 2)}},
        "2026-12-23", "2027-06-30", ["52 01-02 a"],
    ),
    "nothing before the first day": ({}, "2025-01-01", "2026-01-05", []),
    "no rotation": ({"rotation": ()}, "2026-01-06", "2026-01-06", ["1 01-06 None"]),
    "several hours of a day are one visit": (
        {"rule": parse_recurrence("FREQ=DAILY;BYHOUR=8,16;COUNT=4")},
        "2026-01-01",
        "2026-01-05",
        ["1 01-01 a", "2 01-02 b"],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("changes", "start", "end", "expected"), CASES.values(), ids=CASES)
def test_a_standing_order_comes_round(
    changes: dict[str, Any], start: str, end: str, expected: list[str]
) -> None:
    assert told(coming(**changes), start, end) == expected


NEXT = {
    "within the week": ({}, "2026-01-07", "2026-01-13"),
    "after a visit's own day": ({}, "2026-01-13", "2026-01-20"),
    "the first ever": ({}, "2025-06-01", "2026-01-06"),
    "skipped": ({"skip": SKIPPED}, "2026-01-07", "2026-01-20"),
    "moved later": ({"moved": MOVED}, "2026-01-13", "2026-01-15"),
    "moved forward": ({"moved": {date(2026, 2, 3): date(2026, 1, 9)}}, "2026-01-07", "2026-01-09"),
    "two on a day": ({"moved": {date(2026, 1, 20): date(2026, 1, 13)}}, "2026-01-07", "2026-01-13"),
    "over": ({"last": LAST}, "2026-12-29", None),
}


@pytest.mark.parametrize(("changes", "after", "day"), NEXT.values(), ids=NEXT)
def test_the_next_visit_is_the_soonest_to_take_place(
    changes: dict[str, Any], after: str, day: str | None
) -> None:
    found = next_visit(coming(**changes), date.fromisoformat(after))
    assert (found.day.isoformat() if found else None) == day


def test_a_moved_visit_keeps_the_day_it_was_planned_for() -> None:
    found = visits(coming(moved=MOVED), FIRST, date(2026, 1, 20))
    assert [visit.day != visit.planned for visit in found] == [False, True, False]


DAYS = st.dates(min_value=FIRST, max_value=LAST)


@given(st.sets(DAYS, max_size=20), DAYS)
def test_a_year_asked_for_in_two_parts_is_the_same_year(skip: set[date], cut: date) -> None:
    order = coming(skip=skip, last=LAST)
    halves = visits(order, FIRST, cut) + visits(order, cut + timedelta(days=1), LAST)
    assert halves == visits(order, FIRST, LAST)
    assert [visit.number for visit in halves] == list(range(1, len(halves) + 1))


@given(st.lists(st.text(), min_size=2, max_size=9, unique=True), st.integers(1, 500))
def test_a_rotation_never_sends_the_same_twice_running(rotation: list[str], number: int) -> None:
    assert turn(rotation, number) != turn(rotation, number + 1)
    assert turn(rotation, number) == turn(rotation, number + len(rotation))
