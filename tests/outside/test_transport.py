"""The least way of carrying a palette into another is that of a linear programme.

Source: HiGHS, by Huangfu and Hall, Mathematical Programming Computation 10, 2018.
"""

import random

import highspy
import pytest

from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.likeness import Palette, palette
from corymb.trade.colour.transport import distance


def made(seed: int) -> tuple[Palette, Palette]:
    """Two palettes of up to eight colours, by chance."""
    chance = random.Random(seed)
    one, other = (
        palette(
            (f"#{chance.randrange(1 << 24):06x}", chance.uniform(0.01, 1))
            for _ in range(chance.randint(1, 8))
        )
        for _ in range(2)
    )
    return one, other


def by_highs(one: Palette, other: Palette, room: float) -> float:
    solver = highspy.Highs()
    solver.silent()
    ways = {(i, j): solver.addVariable(lb=0) for i in range(len(one)) for j in range(len(other))}
    for i, (_, share) in enumerate(one):
        solver.addConstr(sum(ways[i, j] for j in range(len(other))) == share)
    for j, (_, share) in enumerate(other):  # all of the one goes somewhere: so with 1 all is filled
        solver.addConstr(sum(ways[i, j] for i in range(len(one))) <= room * share + 1e-9)
    solver.minimize(sum(difference(one[i][0], other[j][0]) * way for (i, j), way in ways.items()))
    return float(solver.getObjectiveValue())


@pytest.mark.parametrize("room", [1.0, 2.0])
@pytest.mark.parametrize("seed", range(40))
def test_the_distance_is_that_of_the_linear_programme(seed: int, room: float) -> None:
    one, other = made(seed)
    assert distance(one, other, room) == pytest.approx(by_highs(one, other, room), abs=1e-5)
