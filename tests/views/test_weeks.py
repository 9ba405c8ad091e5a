"""A week of the calendar for staff: what is done on which day, and what calendar programs get."""

from __future__ import annotations

from datetime import date
from functools import cache
from itertools import pairwise

import pytest

from corymb.site.calendars import written
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.calendar import calendars
from corymb.views.compose.orders.tasks import tasks_of
from corymb.views.compose.orders.weeks import week_views
from corymb.views.week import CalendarView, WeekView
from tests.views.making import catalogue_of, demo

TODAY = date(2026, 9, 16)


@cache
def weeks(today: date = TODAY) -> dict[IsoWeek, WeekView]:
    return dict(week_views(catalogue_of(demo(), "staff", today)))


@cache
def all_calendars(today: date = TODAY) -> tuple[CalendarView, ...]:
    return tuple(calendars(catalogue_of(demo(), "staff", today)))


def test_each_thing_to_do_stands_on_its_day() -> None:
    week = weeks()[IsoWeek(2026, 38)]
    assert [day.name.split()[0] for day in week.days] == [
        *("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
    ]
    found = {
        kind: [day.name for day in week.days for task in getattr(day, kind) if is_supper(task)]
        for kind in ("cut", "make", "go", "due")
    }
    assert found == {
        "cut": ["Thursday 17 September"],
        "make": ["Friday 18 September"],
        "go": ["Saturday 19 September"],
        "due": ["Saturday 19 September"],
    }


def is_supper(task: object) -> bool:
    return getattr(task, "order").label == "Barn supper"  # noqa: B009


def test_nothing_to_do_is_left_out_of_the_weeks() -> None:
    shown = sum(
        len(tasks)
        for week in weeks().values()
        for day in week.days
        for tasks in (day.cut, day.make, day.go, day.due)
    )
    assert shown == len(tasks_of(catalogue_of(demo(), "staff", TODAY)))


def test_this_week_and_its_neighbours_are_there_even_where_nothing_is_to_do() -> None:
    around = [IsoWeek(2031, 22), IsoWeek(2031, 23), IsoWeek(2031, 24)]
    found = weeks(date(2031, 6, 4))
    assert all(week in found for week in around)
    assert all(day.free for week in around for day in found[week].days)
    assert found[around[1]].calendar is None
    assert [found[week].now for week in around] == [False, True, False]


def test_a_week_leads_on_to_the_next_one_that_has_a_page() -> None:
    found = list(weeks().values())
    for before, after in pairwise(found):
        assert before.after and after.before
        assert before.after.label == after.title
        assert after.before.label == before.title
    assert found[0].before is None and found[-1].after is None


def test_only_one_day_is_today() -> None:
    today = [day.id for week in weeks().values() for day in week.days if day.today]
    assert today == ["2026-09-16"]


def test_clients_have_no_week_and_no_calendar() -> None:
    clients: Catalogue = catalogue_of(demo(), "clients", TODAY)
    assert tasks_of(clients) == ()
    assert list(calendars(clients)) == []


def test_there_is_a_calendar_for_each_week_that_leads_to_one() -> None:
    led_to = {week.calendar.href for week in weeks().values() if week.calendar}
    assert led_to == {calendar.path for calendar in all_calendars()}


def test_every_event_is_known_by_a_name_of_its_own_that_stays() -> None:
    known = [event.uid for calendar in all_calendars() for event in calendar.events]
    assert len(known) == len(set(known))
    next_day = {
        event.uid: event.words
        for calendar in all_calendars(date(2026, 9, 17))
        for event in calendar.events
    }
    for calendar in all_calendars():
        for event in calendar.events:
            assert next_day.get(event.uid, event.words) == event.words


@pytest.mark.parametrize("known_as", ["barn-supper", "christening-lunch"])
def test_a_calendar_names_the_order_and_nothing_else_of_the_client(known_as: str) -> None:
    order = demo().orders[known_as]
    text = b"".join(map(written, all_calendars())).replace(b"\r\n ", b"").decode()
    assert f"Cut: {order.name}" in text
    private = (order.client.name, order.client.email, order.client.phone)
    for secret in filter(None, (*private, order.where.place, order.notes, order.learnt)):
        assert secret not in text


def test_flowers_in_use_take_up_nobodys_day_and_work_does() -> None:
    text = b"".join(map(written, all_calendars())).replace(b"\r\n ", b"").decode()
    events = text.split("BEGIN:VEVENT")[1:]
    assert events
    for event in events:
        busy = "TRANSP:OPAQUE" in event
        assert busy is not ("TRANSP:TRANSPARENT" in event)
        assert busy is ("SUMMARY:In use" not in event)


def test_nothing_in_a_calendar_begins_or_ends_to_the_minute() -> None:
    for calendar in all_calendars():
        for event in calendar.events:
            assert event.start.minute % 5 == event.end.minute % 5 == 0


def test_the_same_day_makes_the_same_bytes() -> None:
    again = calendars(catalogue_of(demo(), "staff", TODAY))
    assert [written(each) for each in again] == [written(each) for each in all_calendars()]
