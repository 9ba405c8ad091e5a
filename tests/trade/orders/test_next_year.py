"""A standing order's next year, and where it is thin."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from corymb.trade.orders.due import Dues
from corymb.trade.orders.next_year import days_of, next_year
from corymb.trade.orders.thin_spells import ThinSpell, thin_spells
from corymb.trade.season.makeable import Makeable
from corymb.trade.season.weeks import week_on
from tests.trade.orders.hall import order, standing, studio


@pytest.mark.parametrize(
    ("repeats", "first", "year", "days"),
    [
        # Tuesdays: 5 January 2027 is one, and so is 28 December.
        ("weekly on Tuesday", "2026-01-06", 2027, ("2027-01-05", "2027-12-28")),
        ("weekly on Tuesday", "2026-06-02", 2026, ("2026-06-02", "2026-12-29")),
        # Fourteen days on from 6 January 2026: 26 of them are 364, so 5 January 2027.
        ("every 2 weeks on Tuesday", "2026-01-06", 2027, ("2027-01-05", "2027-12-21")),
        ("every 2 weeks on Tuesday", "2026-01-13", 2027, ("2027-01-12", "2027-12-28")),
        ("monthly on the first Monday", "2026-01-05", 2027, ("2027-01-04", "2027-12-06")),
        ("FREQ=WEEKLY;BYDAY=TU;COUNT=3", "2026-01-06", 2027, ("2027-01-05", "2027-01-19")),
    ],
    ids=["weekly", "its own year", "fortnightly", "the other weeks", "monthly", "counted anew"],
)
def test_the_year_goes_from_the_first_such_day_to_the_last(
    repeats: str, first: str, year: int, days: tuple[str, str]
) -> None:
    hall = standing("hall", rotation=["jar"], repeats=repeats, from_=first)
    assert tuple(map(str, days_of(hall, year))) == days


def test_a_year_without_such_a_day_is_refused() -> None:
    rule = "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29"
    hall = standing("hall", rotation=["jar"], repeats=rule, from_="2024-02-29")
    with pytest.raises(ValueError, match="doesn't come round in 2027"):
        days_of(hall, 2027)


def year_of(**keys: Any) -> Any:
    old = standing("hall", rotation=["jar", "bowl"], **keys)
    read = studio(old)
    return next_year(read, Makeable.of(read), old, 2027, "hall-2027")


def test_a_year_of_tuesdays_is_52_visits_none_of_them_skipped_or_moved() -> None:
    told = year_of(skip=["2026-08-04"], moved={"2026-12-22": "2026-12-23"})
    assert len(told.laid) == 52
    assert {each.visit.day.weekday() for each in told.laid} == {1}
    assert (told.order.id, told.order.skip, told.order.moved) == ("hall-2027", [], {})


def test_the_new_year_does_not_begin_with_what_ended_the_old() -> None:
    old = standing("hall", rotation=["jar", "bowl"], from_="2026-07-07", until="2026-07-21")
    read = studio(old)
    ended = list(Dues(read, Makeable.of(read)).history("hall", date(2026, 7, 28)).values())[-1]
    new = standing("hall-2027", rotation=["jar", "bowl"], from_="2026-07-28", until="2026-08-25")
    both = studio(old, new)
    first = Dues(both, Makeable.of(both)).laid_out("hall-2027", date(2026, 7, 28))[0]
    assert {ended, first.best.look.id} == {"jar", "bowl"}
    assert first.since == 2


def test_an_order_without_an_end_is_said_to_come_still() -> None:
    assert year_of().still_comes is None
    assert year_of(until=None).still_comes == date(2027, 1, 5)


def test_an_order_without_a_rotation_gets_its_line_on_every_visit() -> None:
    old = standing("hall", lines=["2 jar"])
    read = studio(old)
    told = next_year(read, Makeable.of(read), old, 2027, "hall-2027")
    assert {each.best.look.id for each in told.laid} == {"jar"}
    states = {week_on(each.visit.day): each.best.state for each in told.laid}
    assert (states[10], states[25], states[50]) == ("none", "pictured", "none")


def thin(*rotation: str) -> list[ThinSpell]:
    old = standing("hall", rotation=list(rotation))
    read = studio(old)
    makeable = Makeable.of(read)
    told = next_year(read, makeable, old, 2027, "hall-2027")
    return list(thin_spells(read, makeable, told.order, told.laid))


def weeks(spell: ThinSpell) -> tuple[int, int]:
    return week_on(spell.laid[0].visit.day), week_on(spell.laid[-1].visit.day)


def test_weeks_with_nothing_are_one_spell_however_the_looks_take_turns() -> None:
    first, *_, last = (spell for spell in thin("jar") if spell.why == "nothing")
    assert weeks(first)[0] == 1 and weeks(last)[1] == 52


def test_another_recipe_of_the_style_that_stands_would_help() -> None:
    spell = thin("jar")[0]
    assert (spell.why, [look.id for look in spell.helps]) == ("nothing", ["bowl"])
    assert spell.nearest is None


def test_where_no_recipe_would_help_the_nearest_is_named_with_what_it_lacks() -> None:
    spell = next(each for each in thin("bowl", "jar", "loose") if weeks(each)[0] == 1)
    assert (spell.why, spell.helps) == ("one", ())
    assert spell.nearest is not None
    assert [lack.stem for lack in spell.nearest.lacks] == ["rose"]


def test_of_a_look_that_is_touch_and_go_surer_ones_of_the_rotation_are_named() -> None:
    spells = [each for each in thin("poppies", "bowl") if each.why == "touch and go"]
    assert spells and all(each.surer and each.surer[0].id == "bowl" for each in spells)


def test_what_a_visit_really_got_is_the_rotations_not_what_it_always_gets() -> None:
    hall = standing("hall", rotation=["jar", "bowl"], lines=["2 loose"])
    own = order("own", "2026-07-07", "2 loose", "1 bowl", visit_of="hall")
    read = studio(hall, own)
    assert Dues(read, Makeable.of(read)).sent("hall") == {date(2026, 7, 7): "bowl"}


def test_a_visit_moved_forward_across_the_days_asked_for_has_its_look() -> None:
    hall = standing("hall", rotation=["jar", "bowl"], moved={"2026-07-14": "2026-07-10"})
    read = studio(hall)
    (due,) = Dues(read, Makeable.of(read)).between(date(2026, 7, 10), date(2026, 7, 10))
    assert len(due.lines) == 1
