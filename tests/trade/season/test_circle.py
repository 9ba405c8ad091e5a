"""Days are counted on over New Year."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values.season_text import parse_season
from corymb.trade.season.circle import Span, ahead, gap, on_circle, whole

DAYS = st.floats(min_value=1, max_value=366, exclude_max=True)


@pytest.mark.parametrize(
    ("start", "end", "onward", "shorter"),
    [
        pytest.param(1, 1, 0, 0, id="the same day"),
        pytest.param(10, 30, 20, 20, id="later in the year"),
        pytest.param(30, 10, 345, -20, id="earlier in the year"),
        pytest.param(360, 5, 10, 10, id="over new year"),
        pytest.param(5, 360, 355, -10, id="back over new year"),
        pytest.param(1, 183, 182, 182, id="just short of half a year"),
        pytest.param(1, 184, 183, -182, id="just beyond half a year"),
    ],
)
def test_days_are_counted_onward_and_by_the_shorter_way(
    start: float, end: float, onward: float, shorter: float
) -> None:
    assert ahead(start, end) == pytest.approx(onward)
    assert gap(start, end) == pytest.approx(shorter)


@pytest.mark.parametrize(
    ("day", "number"),
    [(1.2, 1), (1.5, 2), (365.4, 365), (365.5, 1), (366.2, 1), (0.4, 365), (0.5, 1), (-363.6, 1)],
)
def test_a_day_and_its_fraction_come_to_a_whole_day_of_the_year(day: float, number: int) -> None:
    assert whole(day) == number


# By hand, first and last day counted. Two windows may meet at both their ends.
@pytest.mark.parametrize(
    ("one", "other", "days"),
    [
        ("1 June - 10 June", "5 June - 20 June", 6),
        ("1 June - 10 June", "11 June - 20 June", 0),
        ("1 June - 10 June", "10 June", 1),
        ("20 December - 10 January", "1 January - 31 January", 10),
        ("20 December - 10 January", "25 December - 5 January", 12),
        ("20 December - 10 January", "June", 0),
        ("1 March - 20 January", "10 January - 10 March", 21),
    ],
)
def test_two_windows_share_the_days_that_lie_in_both(one: str, other: str, days: int) -> None:
    a, b = (Span.of(parse_season(text).windows[0]) for text in (one, other))
    assert a.shared(b) == b.shared(a) == pytest.approx(days)


@given(DAYS, DAYS)
def test_a_span_ends_where_it_was_said_to_end(first: float, last: float) -> None:
    span = Span.between(first, last)
    assert gap(span.last, last) == pytest.approx(0, abs=1e-6)
    assert gap(span.first, span.middle) * 2 % 365 == pytest.approx(span.length % 365, abs=1e-6)


@given(DAYS)
def test_rounding_never_makes_a_year_of_a_day(day: float) -> None:
    span = Span(on_circle(day / 3), 0.0)
    assert Span.between(span.first, span.last).length == 0
    assert len(span.window().days()) == 1


def test_a_window_of_nearly_a_year_is_never_rounded_to_a_day() -> None:
    assert len(Span(10.4, 364.7).window().days()) == 365
