"""The chance that a flush stands on a day."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.season.circle import on_circle
from corymb.trade.season.flush import Flush

SUMMER = Flush(first=150, last=250, first_spread=6, last_spread=8)

# The normal distribution's table: 0.5 at its mean, 0.8413 one standard deviation on, 0.9772 two.
# The other edge is more than ten of them away.
CHANCES = {
    "on the day of the first cut": (150, 0.5),
    "a spread later": (156, 0.8413),
    "two spreads earlier": (138, 0.0228),
    "in the middle": (200, 1.0),
    "on the day of the last cut": (250, 0.5),
    "a spread before the last": (242, 0.8413),
    "two spreads after the last": (266, 0.0228),
    "in winter": (20, 0.0),
}


@pytest.mark.parametrize("name", CHANCES)
def test_the_chance_is_that_it_has_begun_and_is_not_over(name: str) -> None:
    day, chance = CHANCES[name]
    assert SUMMER.chance(day) == pytest.approx(chance, abs=1e-4)


def test_a_flush_of_one_day_needs_both_its_edges_to_fall_right() -> None:
    assert Flush(100, 100, 6, 6).chance(100) == pytest.approx(0.25)


def test_a_flush_that_does_not_come_every_year_is_less_likely_by_that() -> None:
    assert Flush(150, 250, 6, 6, comes=0.5).chance(200) == pytest.approx(0.5)


def test_a_gap_as_short_as_its_edges_stray_is_hardly_a_gap() -> None:
    nearly_all_year = Flush(first=20, last=10, first_spread=6, last_spread=6)
    # On the 15th it has either not ended or begun anew: 1 - (1 - 0.2023) squared.
    assert nearly_all_year.chance(15) == pytest.approx(0.3637, abs=1e-3)


@given(
    first=st.floats(1, 365),
    length=st.floats(0, 300),
    spread=st.floats(2, 12),
    days=st.lists(st.floats(0, 1), min_size=2, max_size=2),
)
def test_the_nearer_a_day_to_the_middle_the_likelier(
    first: float, length: float, spread: float, days: list[float]
) -> None:
    flush = Flush(first, on_circle(first + length), spread, spread)
    near, far = (on_circle(flush.span.middle + part * 182) for part in sorted(days))
    before = on_circle(flush.span.middle - (far - flush.span.middle))
    assert 0 <= flush.chance(far) <= flush.chance(near) + 1e-9 <= 1 + 2e-9
    assert flush.chance(before) == pytest.approx(flush.chance(far), abs=1e-9)
