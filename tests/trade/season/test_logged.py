"""The studio's own log outweighs the book as years add up."""

from __future__ import annotations

from fractions import Fraction
from math import sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.studio.values.season_text import parse_season
from corymb.trade.season.circle import Span
from corymb.trade.season.flush import Flush
from corymb.trade.season.logged import blended, spread, weight


def flushes(book: str, *years: str) -> tuple[Flush, ...]:
    windows = parse_season(book).windows
    log = {str(2001 + n): parse_season(year) for n, year in enumerate(years)}
    return blended([Span.of(window) for window in windows], log)


@pytest.mark.parametrize(
    ("years", "share"), [(0, "0"), (1, "1/3"), (2, "1/2"), (4, "2/3"), (8, "4/5"), (18, "9/10")]
)
def test_n_years_of_log_weigh_n_parts_in_n_and_two(years: int, share: str) -> None:
    assert weight(years) == Fraction(share)


# By hand. Days of the year: 1 July 182, 31 July 212, 31 August 243.
BLENDS = {
    "no log": (("1 July - 31 July",), (182, 212)),
    "one year": (("1 July - 31 July", "4 July - 31 August"), (183, 212 + 31 / 3)),
    "two years": (("1 July - 31 July", "3 July - 31 July", "7 July - 29 July"), (184, 211.5)),
    "three years alike": (("1 July - 31 July", *["11 July - 31 July"] * 3), (188, 212)),
    "two windows of one year": (("1 July - 31 July", "4 July - 9 July, 20 - 31 July"), (183, 212)),
    "a season that came whole outside the book's": (("1 July - 31 July", "30 August"), (202, 222)),
}  # fmt: skip


@pytest.mark.parametrize("name", BLENDS)
def test_an_edge_lies_between_the_books_and_the_mean_of_the_log(name: str) -> None:
    (book, *years), (first, last) = BLENDS[name]
    [flush] = flushes(book, *years)
    assert (flush.first, flush.last) == pytest.approx((first, last))
    assert flush.years == len(years)


# By hand: (2 x 36 + scatter) / (n + 2) x (1 + 1 / (n + 2)).
SPREADS = {
    "no year": ([], 36 * 3 / 2),
    "one year, whatever it was": ([40.0], 24 * 4 / 3),
    "two years alike": ([5.0, 5.0], 18 * 5 / 4),
    "two years twelve days apart": ([-2.0, 10.0], (72 + 72) / 4 * 5 / 4),
    "ten years alike": ([3.0] * 10, 6 * 13 / 12),
}


@pytest.mark.parametrize("name", SPREADS)
def test_an_edge_strays_by_the_houses_habit_and_the_logs_scatter(name: str) -> None:
    deviations, variance = SPREADS[name]
    assert spread(deviations) == pytest.approx(sqrt(variance))


def test_each_edge_has_its_own_spread() -> None:
    [flush] = flushes("1 July - 31 July", "1 July - 25 July", "1 July - 6 August")
    assert flush.first_spread == pytest.approx(sqrt(18 * 5 / 4))
    assert flush.last_spread == pytest.approx(sqrt(36 * 5 / 4))


def test_a_flush_the_book_does_not_have_counts_from_its_second_year() -> None:
    assert len(flushes("June", "June, 1 January - 10 January")) == 1
    known, own = flushes("June", "June, 1 January - 10 January", "5 January - 20 January")
    assert known.years == 1
    # The mean of the two years, for the book says nothing of it; it comes in w = 2 / 4 of years.
    assert (own.first, own.last) == pytest.approx((3, 15))
    assert (own.years, own.comes) == (2, 0.5)
    assert flushes("June", *["June, 1 January - 10 January"] * 8)[1].comes == 0.8


def test_a_flush_that_no_year_speaks_of_keeps_the_books_dates() -> None:
    first, second = flushes("June, September", "5 June - 20 June", "June")
    assert (second.first, second.last, second.years) == (244, 273, 0)
    assert first.years == 2


def test_a_flush_that_would_bite_its_own_tail_leaves_a_day_between() -> None:
    round_the_year = "15 October - 15 March, 15 December - 15 May"
    [flush] = flushes("15 January - 15 December", *[round_the_year] * 20)
    assert len(flush.span.window().days()) == 364


WINDOWS = st.tuples(st.integers(1, 365), st.integers(0, 150))


@given(WINDOWS, st.lists(WINDOWS, max_size=6))
def test_a_blended_flush_is_as_long_as_the_book_or_the_log_or_between(
    book: tuple[int, int], log: list[tuple[int, int]]
) -> None:
    def written(window: tuple[int, int]) -> str:
        return str(Span(*map(float, window)).window())

    [flush, *_] = flushes(written(book), *map(written, log))
    lengths = [book[1], *(length for _, length in log)]
    assert min(lengths) - 1e-6 <= flush.span.length <= max(lengths) + 1e-6
    assert 1 <= flush.first < 366 and 1 <= flush.last < 366
