"""The places of a flower head's florets, in a plan and on a drawn head, against Vogel's own.

Sources: H. Vogel, A better way to construct the sunflower head, Mathematical Biosciences
44:179-189, 1979, with c = 1, worked out by hand; K. Ryde, Math::PlanePath::VogelFloret, for the
closest pair.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from itertools import combinations

import pytest

from corymb.picture.geometry import Point
from corymb.picture.plan.outlines import Round
from corymb.picture.shapes import GOLDEN_ANGLE, spiral

COUNT = 200


def in_a_plan(n: int) -> Point:
    """Floret n of 200, each of which takes an area of pi."""
    return Round(math.sqrt(COUNT)).place(n - 1, n / COUNT)


def on_a_head(n: int) -> Point:
    return spiral(COUNT, math.sqrt(COUNT))[n - 1]


def test_the_golden_angle_is_vogel_s() -> None:
    assert math.degrees(GOLDEN_ANGLE) == pytest.approx(137.50776405003785, abs=1e-12)
    assert pytest.approx(2.399963229728653, abs=1e-12) == GOLDEN_ANGLE


FLORETS = {
    1: (-0.737369, 0.675490),
    2: (0.123639, -1.408799),
    3: (1.053847, 1.374557),
    5: (1.886694, -1.200160),
    8: (2.656802, 0.970260),
    100: (3.292555, 9.442409),
}


@pytest.mark.parametrize(("n", "place"), FLORETS.items())
def test_heads_in_a_round_plan_stand_where_vogel_puts_florets(
    n: int, place: tuple[float, float]
) -> None:
    assert in_a_plan(n) == pytest.approx(place, abs=1e-5)


def test_the_first_and_the_fourth_floret_are_the_closest() -> None:
    pairs = combinations(range(1, COUNT + 1), 2)
    apart = {pair: in_a_plan(pair[0]).distance(in_a_plan(pair[1])) for pair in pairs}
    closest = min(apart, key=lambda pair: apart[pair])
    assert closest == (1, 4)
    assert apart[closest] == pytest.approx(1.60195, abs=1e-4)
    assert 1 / apart[closest] == pytest.approx(0.6242, abs=1e-4)


@pytest.mark.parametrize("place", [in_a_plan, on_a_head])
def test_the_nearest_florets_are_a_fibonacci_number_apart(place: Callable[[int], Point]) -> None:
    places = [place(n) for n in range(1, COUNT + 1)]
    steps = set()
    for n in range(20, 150):
        others = [other for other in range(COUNT) if other != n]
        nearest = min(others, key=lambda other: places[n].distance(places[other]))
        steps.add(abs(nearest - n))
    assert steps == {13, 21, 34}
