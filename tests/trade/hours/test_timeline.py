"""Back from the hour of use: what happens when, in the studio's time zone."""

from datetime import date, time, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.hours.clock import between
from corymb.trade.hours.habits import HABITS, Habits
from corymb.trade.hours.keeping import Keeping
from corymb.trade.hours.timeline import (
    Timeline,
    Use,
    Work,
    cut_begins,
    cutting_minutes,
    timeline,
)

DAHLIA = Keeping("dahlia-shell", "Dahlia, shell", 8, 5)
WILLOW = Keeping("willow", "Willow", 2, 21)
HELLEBORE = Keeping("hellebore", "Hellebore", 30, 5)


def use(day: str = "2026-09-19", start: str = "17:30", end: str = "23:00", **facts: Any) -> Use:
    own = {"zone": "Europe/Dublin", "handover": "delivery", **facts}
    return Use(date.fromisoformat(day), time.fromisoformat(start), time.fromisoformat(end), **own)


def work(*stems: Keeping, cut: int = 90, make: int = 300) -> Work:
    return Work(stems or (DAHLIA, WILLOW), cut, make)


def told(plan: Timeline) -> list[str]:
    """Each step as `cut 17 06:30-08:00`, with the day of its end where that is another."""
    return [
        f"{step.name} {step.start:%d %H:%M}-"
        f"{step.end:{'%H:%M' if step.start.date() == step.end.date() else '%d %H:%M'}}"
        for step in plan.steps
    ]


SUPPER = [
    "cut 17 06:30-08:00",
    "condition 17 08:00-18 08:00",
    "make 18 08:00-13:00",
    "hand over 19 15:30-17:30",
    "use 19 17:30-23:00",
]

PLANS = {
    # Common practice: cut two days before use, condition overnight, make the day before.
    "a supper": (use(), work(), {}, SUPPER),
    "collected, two hours earlier": (
        use(handover="collection"), work(), {},
        [*SUPPER[:3], "hand over 19 13:30-17:30", SUPPER[4]],
    ),
    "into the night": (
        use(end="01:00"), work(), {}, [*SUPPER[:4], "use 19 17:30-20 01:00"],
    ),
    "in buckets, nothing to make": (
        use(),
        work(make=0),
        {},
        ["cut 18 06:30-08:00", "condition 18 08:00-19 15:30", *SUPPER[3:]],
    ),
    "round the clock": (use(end="17:30"), work(), {}, [*SUPPER[:4], "use 19 17:30-20 17:30"]),
    "in buckets, overnight even where two hours would do": (
        use(),
        work(WILLOW, make=0),
        {},
        ["cut 18 06:30-08:00", "condition 18 08:00-19 15:30", *SUPPER[3:]],
    ),
    "making for two days, shared evenly": (
        use(),
        work(make=600),
        {},
        [
            "cut 16 06:30-08:00",
            "condition 16 08:00-17 08:00",
            "make 17 08:00-13:00",
            "make 18 08:00-13:00",
            *SUPPER[3:],
        ],
    ),
    "cutting for two mornings": (
        use(),
        work(cut=251),
        {},
        [
            "cut 16 06:30-08:36",
            "cut 17 06:30-08:35",
            "condition 17 08:35-18 08:00",
            *SUPPER[2:],
        ],
    ),
    "a stem that asks for more than a night": (
        use(), work(DAHLIA, HELLEBORE), {},
        ["cut 16 06:30-08:00", "condition 16 08:00-18 08:00", *SUPPER[2:]],
    ),
    "not before it is light": (
        use(), work(), {"first_light": lambda day: time(7, 15)},
        ["cut 17 07:15-08:45", "condition 17 08:45-18 08:00", *SUPPER[2:]],
    ),
    "by the clock where a day has no dawn": (
        use(), work(), {"first_light": lambda day: None}, SUPPER,
    ),
    "made on the day itself, when the studio does so": (
        use(), work(), {"habits": Habits(make_days_before=0)},
        ["cut 18 06:30-08:00", "condition 18 08:00-19 08:00", "make 19 08:00-13:00", *SUPPER[3:]],
    ),
    "made the day before after all, when the hour is too early for that": (
        use(start="12:00"), work(), {"habits": Habits(make_days_before=0)},
        [*SUPPER[:3], "hand over 19 10:00-12:00", "use 19 12:00-23:00"],
    ),
    "dried stems alone, nothing cut": (
        use(), Work((Keeping("dried-honesty", "Dried honesty", 0, 180),), 0, 300), {}, SUPPER[2:],
    ),
    "nothing cut": (use(), Work((), 0, 300), {}, SUPPER[2:]),
}  # fmt: skip


BEGINS = {
    "at the studio's hour": (False, None, time(6, 30)),
    "earlier in heat": (True, None, time(5)),
    "not before it is light": (False, time(8, 15), time(8, 15)),
    "in heat at first light": (True, time(5, 45), time(5, 45)),
    "in heat, light long since": (True, time(4, 30), time(5)),
}


@pytest.mark.parametrize(("hot", "light", "begins"), BEGINS.values(), ids=BEGINS)
def test_the_cut_begins_early_but_not_in_the_dark(
    hot: bool, light: time | None, begins: time
) -> None:
    assert cut_begins(date(2026, 9, 17), HABITS, lambda day: light, hot) == begins


@pytest.mark.parametrize(("wanted", "todo", "ways", "steps"), PLANS.values(), ids=PLANS)
def test_each_step_is_early_enough_for_the_next(
    wanted: Use, todo: Work, ways: dict[str, Any], steps: list[str]
) -> None:
    plan = timeline(wanted, todo, **ways)
    assert told(plan) == steps
    assert plan.holds


def test_a_note_says_what_takes_longest_and_which_day_it_is() -> None:
    notes = [step.note for step in timeline(use(), work(make=600)).steps]
    assert notes == [
        "",
        "Dahlia, shell needs 8 hours, the longest of all. They stand overnight.",
        "Day 1 of 2.",
        "Day 2 of 2.",
        "Drive and set out.",
        "",
    ]
    assert timeline(use(handover="collection"), work()).steps[-2].note == "The client collects."


# IANA time zone database: Ireland's clocks go back at 02:00 on 25 October 2026, so that the night
# before has an hour more; they go forward at 01:00 on 28 March 2027, with an hour less.
CHANGES = {
    "back": ("2026-10-26", 25, "2026-10-24T06:30:00+01:00", "2026-10-25T08:00:00+00:00"),
    "forward": ("2027-03-29", 23, "2027-03-27T06:30:00+00:00", "2027-03-28T08:00:00+01:00"),
}


@pytest.mark.parametrize(("day", "hours", "cut", "make"), CHANGES.values(), ids=CHANGES)
def test_hours_by_the_clock_stay_and_the_night_is_as_long_as_it_is(
    day: str, hours: int, cut: str, make: str
) -> None:
    cutting, wet, making, *_ = timeline(use(day), work()).steps
    assert (cutting.start.isoformat(), making.start.isoformat()) == (cut, make)
    assert between(wet.start, wet.end) == timedelta(hours=hours)


def test_a_night_an_hour_too_short_brings_the_cut_a_day_forward() -> None:
    needs_a_day = Keeping("sedum", "Sedum", 24, 9)
    wet = [timeline(use(day), work(needs_a_day)).steps[1] for day in ("2027-03-29", "2027-04-12")]
    assert [f"{step.start:%m-%d}" for step in wet] == ["03-26", "04-10"]
    assert [between(step.start, step.end) for step in wet] == [timedelta(hours=h) for h in (47, 24)]


def test_the_end_of_use_is_told_by_the_clock_after_a_change() -> None:
    night = timeline(use("2026-10-24", "20:00", "02:00"), work()).steps[-1]
    assert night.end.isoformat() == "2026-10-25T02:00:00+00:00"
    assert between(night.start, night.end) == timedelta(hours=7)


KEEPING = {
    # shortest vase life, what it is wanted for; cut on 17 September at 06:30
    "to the hour": (2, use(start="04:00", end="06:30"), ()),
    "an hour too short": (
        2,
        use(start="04:00", end="07:30"),
        (
            "Dahlia, shell keeps 2 days at least, and is wanted for 3, from the cut on "
            "17 September to 19 September at 07:30: take a stem that keeps longer, "
            "cut it later, or change it in between.",
        ),
    ),
    "a supper": (3, use(), ()),
    "a night too long": (
        1,
        use(end="01:00"),
        (
            "Dahlia, shell keeps 1 day at least, and is wanted for 3, from the cut on "
            "17 September to 20 September at 01:00: take a stem that keeps longer, "
            "cut it later, or change it in between.",
        ),
    ),
    "until the next visit": (10, use(next_visit=date(2026, 9, 26)), ()),
    "not until the next visit": (
        9,
        use(next_visit=date(2026, 9, 26)),
        (
            "Dahlia, shell keeps 9 days at least, and is wanted for 10, from the cut on "
            "17 September to 26 September at 17:30: take a stem that keeps longer, "
            "cut it later, or change it in between.",
        ),
    ),
}


@pytest.mark.parametrize(("days", "wanted", "flags"), KEEPING.values(), ids=KEEPING)
def test_a_stem_that_does_not_surely_keep_is_flagged(
    days: int, wanted: Use, flags: tuple[str, ...]
) -> None:
    stems = (Keeping("dahlia-shell", "Dahlia, shell", 8, days), WILLOW)
    plan = timeline(wanted, work(*stems))
    assert tuple(flag.words for flag in plan.flags) == flags
    assert plan.holds == (not flags)
    assert all((flag.kind, flag.stem) == ("vase life", "dahlia-shell") for flag in plan.flags)


LATE = {
    "on the day": (work(), "2026-09-17", []),
    "a day after": (work(), "2026-09-18", ["cutting begins on 17 September"]),
    "nothing to cut": (Work((), 0, 60), "2026-09-19", ["making begins on 18 September"]),
    "nothing to do": (Work((), 0, 0), "2026-09-20", ["handing over begins on 19 September"]),
}


@pytest.mark.parametrize(("todo", "today", "words"), LATE.values(), ids=LATE)
def test_a_plan_that_should_have_begun_is_flagged(todo: Work, today: str, words: list[str]) -> None:
    plan = timeline(use(), todo, today=date.fromisoformat(today))
    assert [flag.words for flag in plan.flags if flag.kind == "too late"] == [
        f"To be ready in time, {each}, and that is past." for each in words
    ]


@pytest.mark.parametrize(("stems", "minutes"), [(0, 0), (1, 1), (150, 60), (333, 134)])
def test_cutting_takes_whole_minutes(stems: int, minutes: int) -> None:
    assert cutting_minutes(stems, HABITS) == minutes


def test_a_day_without_hours_is_refused() -> None:
    with pytest.raises(ValueError, match="longer than nothing"):
        timeline(use(), work(), Habits(make_hours=0))


@given(
    st.dates(date(2020, 1, 3), date(2035, 1, 1)),
    st.times(),
    st.integers(1, 72),
    st.integers(0, 900),
    st.integers(0, 2000),
    st.sampled_from(["Europe/Dublin", "America/New_York", "Australia/Lord_Howe", "Asia/Kolkata"]),
)
def test_no_step_begins_before_the_one_before_is_done(
    day: date, start: time, hours: int, cut: int, make: int, zone: str
) -> None:
    wanted = Use(day, start.replace(second=0, microsecond=0), time(23, 30), zone, "delivery")
    plan = timeline(wanted, work(Keeping("a", "A", hours, 5), cut=cut, make=make))
    for one, following in zip(plan.steps, plan.steps[1:], strict=False):
        assert between(one.start, one.end) >= timedelta(0)
        assert between(one.end, following.start) >= timedelta(0)
    (wet,) = (step for step in plan.steps if step.name == "condition")
    assert between(wet.start, wet.end) >= timedelta(hours=hours)
    assert wet.start.date() < wet.end.date()
