"""Once a cut is planned the order's page goes by it, and says what to order in and by when."""

from __future__ import annotations

from datetime import date, datetime

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.views.compose.orders.bench_sheets import bench_sheets_view
from corymb.views.compose.orders.cuts import cut_for, has_papers, with_papers
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.ordering import order_by, order_in
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.compose.orders.weeks import week_view, weeks_shown
from corymb.views.compose.orders.when import work_span
from tests.views.test_papers import EACH, due, staff


@EACH
def test_the_lines_of_a_planned_order_are_told_as_their_bench_sheets_have_them(
    known_as: str,
) -> None:
    sheets = bench_sheets_view(staff(), due(known_as)).sheets
    lines = order_view(staff(), due(known_as)).lines
    for sheet, line in zip(sheets, lines, strict=True):
        assert line.planned
        assert (line.stems_each, line.stems) == (sheet.stems_each, sheet.stems_all)
        assert (line.planned.swaps, line.planned.short) == (sheet.swaps, sheet.short)
        assert (line.planned.state == "none") is bool(sheet.short)


def test_a_line_whose_cut_is_not_planned_is_told_by_the_calendar() -> None:
    far = next(each for each in shown_dues(staff()) if not has_papers(staff(), each))
    assert all(line.planned is None for line in order_view(staff(), far).lines)


@EACH
def test_an_order_has_one_number_of_stems(known_as: str) -> None:
    view = order_view(staff(), due(known_as))
    (stems,) = [fact.value for fact in view.facts if fact.label.startswith("stems")]
    assert view.cut and stems == f"{view.cut.share.stems}"


CUT_AND_ORDER = [
    ("2026-09-17", "2026-09-15"),
    ("2026-09-22", "2026-09-19"),
    ("2026-09-21", "2026-09-19"),
]


@pytest.mark.parametrize(("cut", "order"), CUT_AND_ORDER)
def test_what_is_bought_is_ordered_two_days_before_the_cut_and_not_on_a_sunday(
    cut: str, order: str
) -> None:
    assert order_by(date.fromisoformat(cut)) == date.fromisoformat(order)


def test_what_is_bought_for_an_order_is_told_on_top_of_it_and_in_its_week() -> None:
    buying = [of for of in with_papers(staff()) if cut_for(staff(), of).bought(of)]
    assert buying
    for of in buying:
        day = cut_for(staff(), of)
        words = order_view(staff(), of).order_in
        assert words.startswith("Order in by ") is (of.day >= staff().today)
        for stem, count in day.bought(of).items():
            assert f"{count} {staff().stem(stem).name}" in words or not words
        week = IsoWeek.of(order_by(day.day))
        shown = week_view(staff(), week, weeks_shown(staff())[week])
        (told,) = [each for each in shown.days if each.id == f"{order_by(day.day)}"]
        assert told.order_in and not told.free


def test_an_order_that_buys_nothing_says_nothing_of_ordering() -> None:
    others = [of for of in with_papers(staff()) if not cut_for(staff(), of).bought(of)]
    assert others and not any(order_in(staff(), of) for of in others)


SPANS = [
    ((6, 30), (8, 41), "06:30 to 08:45"),
    ((8, 41), (9, 0), "08:40 to 09:00"),
    ((6, 30), (6, 31), "06:30 to 06:35"),
]


@pytest.mark.parametrize(("start", "end", "words"), SPANS)
def test_work_is_told_to_five_minutes(
    start: tuple[int, int], end: tuple[int, int], words: str
) -> None:
    assert work_span(datetime(2026, 9, 17, *start), datetime(2026, 9, 17, *end)) == words
