"""What staff are shown of orders: which have pages, how each line can be made, what to look at."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, datetime
from functools import cache
from typing import Any

import pytest

from corymb.studio.models import Order
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given
from corymb.trade.orders.looked_at import span_looked_at
from corymb.trade.orders.pieces import Piece
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cautions import cautions_for, hot_advice, may_be_warm
from corymb.views.compose.orders.lines import line_words
from corymb.views.compose.orders.listed import orders_view
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.shown import shown_dues, timed_due
from corymb.views.compose.orders.standing import standing_view
from corymb.views.compose.orders.when import clock_span, day_span, days_away
from corymb.views.orders import OrderView
from tests.views.making import catalogue_of, demo

TODAY = date(2026, 9, 16)
STAFF = catalogue_of(demo(), "staff", TODAY)


def due_called(known_as: str, catalogue: Catalogue = STAFF) -> Due:
    return next(due for due in shown_dues(catalogue) if due.id == known_as)


@cache
def supper() -> OrderView:
    return order_view(STAFF, due_called("barn-supper"))


def supper_with(**where: Any) -> Due:
    """The barn supper somewhere else, or in another light."""
    due = due_called("barn-supper")
    return replace(
        due, order=due.order.model_copy(update={"where": due.order.where.model_copy(update=where)})
    )


@pytest.mark.parametrize(
    ("today", "first", "last"),
    [
        ("2026-09-16", "2026-01-01", "2027-09-16"),
        ("2026-01-07", "2025-12-10", "2027-01-07"),
        ("2026-01-01", "2025-12-04", "2027-01-01"),
    ],
)
def test_visits_have_pages_from_four_weeks_back_to_a_year_on_and_all_this_year(
    today: str, first: str, last: str
) -> None:
    assert [str(day) for day in span_looked_at(date.fromisoformat(today))] == [first, last]


def test_an_order_has_a_page_however_long_ago_it_was() -> None:
    assert "september-wedding" in {due.id for due in shown_dues(STAFF)}


def test_clients_are_shown_no_order() -> None:
    assert shown_dues(catalogue_of(demo(), "clients", TODAY)) == ()


def test_a_line_says_how_many_of_what_and_how_it_leaves() -> None:
    words = [line_words(STAFF, line) for line in due_called("barn-supper").lines]
    assert any(", in buckets" in each for each in words)
    assert any(each.endswith(", from the mix") for each in words)
    assert all(each.split()[0].isdigit() for each in words)


def test_a_variant_that_stands_is_told_as_pictured_beside_its_own_picture() -> None:
    line = next(each for each in supper().lines if each.look.href.endswith("--later.html"))
    assert line.answer.words == "As pictured"
    assert line.answer.image and line.answer.image.picture.href


def test_where_a_look_can_t_be_made_another_of_the_recipe_is_named() -> None:
    look, week = next(
        (look, best.week)
        for recipe, looks in STAFF.looks.items()
        for look in looks.values()
        for best in STAFF.best[recipe]
        if best.state in ("pictured", "variant")
        and STAFF.makeable.answers(look)[best.week - 1].state == "none"
    )
    due = due_called("barn-supper")
    piece = Piece(demo().recipes[look.recipe], look)
    line = replace(due.lines[0], piece=piece)
    day = date.fromisocalendar(2026, week, 6)
    (view,) = order_view(STAFF, replace(due, id="another", lines=(line,), day=day)).lines
    assert view.answer.state == "none" and view.answer.blocks
    assert view.instead and view.instead.look and view.instead.look != view.look


def test_every_private_word_of_an_order_is_there_for_staff() -> None:
    order = demo().orders["barn-supper"]
    told = " ".join(fact.value for fact in supper().told)
    for wanted in (order.client.name, order.client.email, order.where.place, order.notes):
        assert wanted and wanted in told


def test_the_bars_lie_in_order_within_the_days() -> None:
    steps = supper().timeline.steps
    assert [step.name for step in steps] == ["Cut", "Condition", "Make", "Hand over", "In use"]
    assert supper().timeline.days == ("Thu 17", "Fri 18", "Sat 19")
    assert all(step.start >= 0 and step.start + step.length <= 1000 for step in steps)
    assert [step.start for step in steps] == sorted(step.start for step in steps)
    make = steps[2]
    assert (make.day, make.hours.split()[0]) == ("Friday 18 September", "08:00")
    assert make.start == round(1000 * (1 + 8 / 24) / 3)


def test_a_visit_tells_until_when_it_has_to_keep_and_what_won_t() -> None:
    view = order_view(STAFF, due_called("lantern-house--2026-09-22"))
    assert "until the next visit, on Tuesday 29 September" in view.timeline.note
    (flag,) = view.timeline.flags
    assert flag.startswith("Wanted for 10 days, to Tuesday 29 September at 08:00, and may not keep")
    days = [int(number) for number in re.findall(r", ([0-9]+)[- ]", flag.partition(":00,")[2])]
    assert days == sorted(days) and max(days) < 10


WORDS = {"candles": "Candles:", "dried": "dried, and burns", "wind": "Under the sky:"}


@pytest.mark.parametrize(
    ("where", "told"),
    [
        ({"light": "candle"}, {"candles"}),
        ({"light": "daylight"}, set()),
        ({"light": "candle", "setting": "under canvas"}, {"candles", "wind"}),
    ],
)
def test_fire_and_wind_are_told_where_they_can_be(where: dict[str, str], told: set[str]) -> None:
    due = supper_with(**where)
    said = " ".join(cautions_for(STAFF, due, timed_due(STAFF, due)))
    assert {kind for kind, words in WORDS.items() if words in said} - {"dried"} == told


@pytest.mark.parametrize(
    ("light", "told"), [("candle", True), ("warm lamps", True), ("daylight", False)]
)
def test_dried_stems_are_kept_from_candles_and_lamps(light: str, told: bool) -> None:
    dried = {known_as for known_as, stem in demo().stems.items() if not stem.conditioning.hours}
    look = next(
        look
        for looks in STAFF.looks.values()
        for look in looks.values()
        if dried.intersection(line.stem for line in look.lines)
    )
    due = supper_with(light=light)
    piece = replace(
        due.lines[0].piece, recipe=demo().recipes[look.recipe], look=look, size="regular"
    )
    due = replace(due, lines=(replace(due.lines[0], piece=piece),), day=date(2026, 11, 21))
    said = " ".join(cautions_for(STAFF, due, timed_due(STAFF, due)))
    assert (WORDS["dried"] in said) is told


@pytest.mark.parametrize(
    ("month", "latitude", "warm"),
    [
        *((7, 52.3, True), (1, 52.3, False), (4, 52.3, True), (11, 52.3, False)),
        *((1, -35.0, True), (7, -35.0, False), (10, -35.0, True), (5, -35.0, False)),
    ],
)
def test_hot_days_are_told_of_in_the_warm_half_of_the_year(
    month: int, latitude: float, warm: bool
) -> None:
    assert may_be_warm(date(2026, month, 15), latitude) is warm


def test_a_hot_day_has_advice_for_flowers_and_for_people() -> None:
    due = due_called("barn-supper")
    said = " ".join(hot_advice(STAFF, due, timed_due(STAFF, due)))
    assert "They stand 8 hours in the warmth" in said
    assert "drink water often" in said


@pytest.mark.parametrize(
    ("day", "words"),
    [
        ("2026-09-16", "today"),
        ("2026-09-17", "tomorrow"),
        ("2026-09-15", "yesterday"),
        ("2026-09-19", "in 3 days"),
        ("2026-11-21", "in 9 weeks"),
        ("2026-09-01", "15 days ago"),
        ("2026-05-17", "17 weeks ago"),
    ],
)
def test_a_day_is_told_by_how_far_it_is(day: str, words: str) -> None:
    assert days_away(date.fromisoformat(day), TODAY) == words


def test_hours_name_the_day_they_end_on_where_it_is_another() -> None:
    night = datetime(2026, 9, 19, 22), datetime(2026, 9, 20, 1, 30)
    assert clock_span(*night) == "22:00 to Sunday 01:30"
    assert clock_span(night[0], datetime(2026, 9, 19, 23)) == "22:00 to 23:00"


@pytest.mark.parametrize(
    ("last", "words"),
    [
        (date(2026, 12, 29), "from 6 January to 29 December 2026"),
        (date(2027, 1, 5), "from 6 January 2026 to 5 January 2027"),
        (None, "from 6 January 2026 on"),
    ],
)
def test_days_are_said_with_their_years_once(last: date | None, words: str) -> None:
    assert day_span(date(2026, 1, 6), last) == words


def test_the_list_has_every_order_once_and_the_soonest_first() -> None:
    view = orders_view(STAFF)
    assert [row.order.label for row in view.this_week] == ["The Lantern House, hall", "Barn supper"]
    rows = [*view.this_week, *view.next_week, *view.coming, *view.past]
    hrefs = [row.order.href for row in rows]
    assert len(hrefs) == len(set(hrefs))
    assert {f"orders/{known_as}.html" for known_as in demo().orders} <= set(hrefs)


def test_a_standing_order_shows_what_is_to_come_and_what_was_sent() -> None:
    view = standing_view(STAFF, "lantern-house")
    coming = [visit for month in view.months for visit in month.visits]
    assert coming[0].when == "Tuesday 22 September"
    assert any(visit.when == "Wednesday 23 December" for visit in coming)
    assert view.visits == len(coming)
    assert view.sent[0].when == "Tuesday 15 September 2026"


def test_a_visit_written_out_tells_what_was_learnt() -> None:
    studio = demo()
    order = studio.orders["barn-supper"]
    own = Order.model_validate(
        {
            **order.model_dump(by_alias=True, exclude={"visit_of", "date", "lines", "learnt"}),
            "date": "2026-09-08",
            "visit of": "lantern-house",
            "lines": ["1 lantern-house-summer"],
            "learnt": "Bring the tall steps.",
        }
    ).with_id("hall-in-september")
    orders = {**studio.orders, own.id: own}
    catalogue = catalogue_of(replace(studio, orders=orders), "staff", TODAY)
    sent = standing_view(catalogue, "lantern-house").sent[1]
    assert (sent.when, sent.learnt) == ("Tuesday 8 September 2026", "Bring the tall steps.")
    assert sent.order and sent.order.href == "orders/hall-in-september.html"
    assert sent.look.href == "arrangements/lantern-house-summer.html"


@pytest.mark.parametrize("day", STAFF.cut_days, ids=lambda day: str(day.day))
def test_once_a_cut_is_planned_its_hours_go_by_its_stems(day: CutDay) -> None:
    for due in day.dues:
        of_due = STAFF.timed(due)
        came = sum(given(day, due.id).values())
        assert of_due.stems == came - sum(day.bought(due).values())
        cut = [step.start.date() for step in of_due.timeline.steps if step.name == "cut"]
        assert tuple(cut) in (day.cut_on(due), ())
