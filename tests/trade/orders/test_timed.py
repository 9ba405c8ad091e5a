"""An order's hours: what is cut, how long it takes whom, and when each thing happens."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time
from fractions import Fraction
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import Order
from corymb.studio.studio import Studio
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.pieces import piece_of
from corymb.trade.orders.timed import LineThen, Timed, timed
from corymb.trade.season.makeable import Answer, Makeable
from corymb.trade.swaps.standing_in import StandIn
from tests.trade.making import recipe, stem

DEMO = Path(__file__).parents[3] / "content"
DUBLIN = ZoneInfo("Europe/Dublin")


@pytest.fixture(scope="module")
def studio() -> Studio:
    """The demo's house and habits, with one recipe: 6 roses, 4 mint, 2 poppies in 20 minutes."""
    read, _ = read_studio(DEMO)
    assert read is not None
    stems = {each: stem(each, in_season="all year") for each in ("rose", "mint", "poppy")}
    return replace(read, stems=stems, recipes={"gate-jar": recipe()}, orders={}, standing_orders={})


def due_of(studio: Studio, *lines: str, next_visit: date | None = None, **keys: Any) -> Due:
    """An order for Saturday 19 September 2026, 17:30 to 23:00, delivered, with a tenth spare."""
    data = {
        "name": "Supper",
        "client": {"name": "The committee"},
        "date": "2026-09-19",
        "hours": "17:30-23:00",
        "where": {"place": "the barn", "setting": "indoors", "light": "candle"},
        "handover": "delivery",
        "lines": list(lines),
        **keys,
    }
    order = Order.model_validate({k: v for k, v in data.items() if v is not None})
    numbered = [
        DueLine(number, line.quantity, piece_of(line, studio.recipes))
        for number, line in enumerate(order.lines, 1)
    ]
    return Due("supper", order, order.date, tuple(numbered), Fraction(1, 10), "", next_visit)


def timed_of(studio: Studio, *lines: str, today: date | None = None, **keys: Any) -> Timed:
    return timed(due_of(studio, *lines, **keys), studio, Makeable.of(studio), today)


# 12 jars: 72 roses, 48 mint, 24 poppies and a tenth more of each: 80, 53, 27. At 150 an hour.
# The practised hand by Wright's curve, 20 x sum of n^-0.0740: for 6 110.8, 12 212.5, 40 653.7.
WORK = {
    "made up": (["12 gate-jar"], 160, 64, 213, 1),
    "two lines of one look are cut together": (["6 gate-jar", "6 gate-jar"], 160, 64, 222, 1),
    "in buckets nothing is made": (["12 gate-jar, in buckets"], 160, 64, 0, 1),
    "from the mix nothing is cut": (["1 gate-jar, from the mix"], 0, 0, 20, 1),
    "more than one can make in a day": (["40 gate-jar"], 528, 212, 654, 2),
}


@pytest.mark.parametrize(("lines", "stems", "cut", "make", "people"), WORK.values(), ids=WORK)
def test_stems_and_minutes_are_known(
    studio: Studio, lines: list[str], stems: int, cut: int, make: int, people: int
) -> None:
    found = timed_of(studio, *lines)
    assert (found.stems, found.cut_minutes, found.people) == (stems, cut, people)
    assert found.minutes == make


@pytest.mark.parametrize("count", [1, 7, 40, 2000])
def test_every_piece_is_made_by_somebody(studio: Studio, count: int) -> None:
    found = timed_of(studio, f"{count} gate-jar", "3 gate-jar")
    assert sum(pieces for share in found.shares for _, pieces in share.pieces) == count + 3


MADE_THE_DAY_BEFORE = ["cut 17", "condition 17", "make 18", "hand over 19", "use 19"]
STEPS = {
    "made up": (["12 gate-jar"], {}, MADE_THE_DAY_BEFORE),
    "in buckets": (
        ["12 gate-jar, in buckets"],
        {},
        ["cut 18", "condition 18", "hand over 19", "use 19"],
    ),
    "early in the day": (["1 gate-jar"], {"hours": "08:00-22:00"}, MADE_THE_DAY_BEFORE),
}


@pytest.mark.parametrize(("lines", "keys", "steps"), STEPS.values(), ids=STEPS)
def test_the_steps_fall_on_their_days(
    studio: Studio, lines: list[str], keys: dict[str, Any], steps: list[str]
) -> None:
    found = timed_of(studio, *lines, **keys).timeline.steps
    assert [f"{step.name} {step.start.day}" for step in found] == steps


def test_people_who_share_the_cut_are_done_sooner(studio: Studio) -> None:
    cut = timed_of(studio, "12 gate-jar").timeline.steps[0]
    assert studio.house.work.people == 2
    assert (cut.end - cut.start).total_seconds() == 32 * 60


def test_a_standing_piece_keeps_until_the_next_visit(studio: Studio) -> None:
    found = timed_of(studio, "1 gate-jar", next_visit=date(2026, 9, 26))
    assert found.keeps_until == datetime(2026, 9, 26, 17, 30, tzinfo=DUBLIN)
    assert [flag.stem for flag in found.timeline.flags] == ["rose", "mint", "poppy"]


LIGHT = {
    "in June it is light long before": ("2026-06-20", "06:30", "05:00"),
    "in December not before eight": ("2026-12-26", "08:00", None),
    "in October at dawn, hot or not": ("2026-10-24", "07:45", None),
}


@pytest.mark.parametrize(("day", "begins", "in_heat"), LIGHT.values(), ids=LIGHT)
def test_nobody_cuts_in_the_dark(
    studio: Studio, day: str, begins: str, in_heat: str | None
) -> None:
    found = timed_of(studio, "12 gate-jar", date=day)
    assert found.cut_from and f"{found.cut_from:%H:%M}" == begins
    assert (found.cut_at_in_heat and f"{found.cut_at_in_heat:%H:%M}") == in_heat


def test_the_hour_for_hot_days_is_the_studios_own(studio: Studio) -> None:
    work = studio.house.work.model_copy(update={"cut_at_in_heat": time(5, 30)})
    early = replace(studio, house=studio.house.model_copy(update={"work": work}))
    assert timed_of(early, "12 gate-jar", date="2026-06-20").cut_at_in_heat == time(5, 30)


def test_once_a_cut_is_planned_its_hours_are_those_of_its_stems(studio: Studio) -> None:
    due, makeable = due_of(studio, "12 gate-jar"), Makeable.of(studio)
    planned = timed(due, studio, makeable, cut=300)
    assert (planned.stems, planned.cut_minutes) == (300, 120)
    cut = planned.timeline.steps[0]
    assert (cut.end - cut.start).total_seconds() == 60 * 60


def test_what_is_planned_changes_no_morning_of_the_cut(studio: Studio) -> None:
    due, makeable = due_of(studio, "12 gate-jar"), Makeable.of(studio)
    steps = [timed(due, studio, makeable, cut=cut).timeline.steps for cut in (160, 5000)]
    assert [step.start.date() for step in steps[1]] == [step.start.date() for step in steps[0]]


def test_an_order_without_hours_is_reckoned_back_from_ten(studio: Studio) -> None:
    found = timed_of(studio, "1 gate-jar", hours=None)
    assert str(found.hours) == "10:00-18:00"
    assert found.timeline.steps[-1].start == datetime(2026, 9, 19, 10, 0, tzinfo=DUBLIN)


@pytest.mark.parametrize(("today", "late"), [(17, False), (18, True)])
def test_it_is_late_once_the_day_of_the_cut_is_past(studio: Studio, today: int, late: bool) -> None:
    flags = timed_of(studio, "1 gate-jar", today=date(2026, 9, today)).timeline.flags
    assert ("too late" in [flag.kind for flag in flags]) is late


def test_a_look_with_swaps_counts_what_stands_in(studio: Studio) -> None:
    (line,) = due_of(studio, "1 gate-jar").lines
    swap = StandIn("poppy", "rose", "accent", 2, 3, 5.0, 0.6, 0, True, 5.0)
    then = LineThen(line, Answer(38, "swaps", 0.9, (swap,)))
    assert then.stems == {"rose": 9, "mint": 4}
    assert LineThen(line, Answer(38, "pictured", 0.9)).stems == {"rose": 6, "mint": 4, "poppy": 2}


def test_far_too_much_work_is_told_and_doesn_t_hold_up_the_build(
    studio: Studio,
) -> None:
    due = due_of(studio, "12 gate-jar")
    many = replace(due, lines=(replace(due.lines[0], quantity=400_000_000),))
    found = timed(many, studio, Makeable.of(studio))
    assert found.too_much and found.people is None
    assert found.timeline.steps[0].start.year == 2026
    assert not timed_of(studio, "12 gate-jar").too_much
