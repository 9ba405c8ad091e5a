"""No plan is better: against every plan there is, and in busy weeks by proof."""

from __future__ import annotations

from decimal import Decimal
from random import Random

import pytest

from corymb.trade.cut import CutProblem, Settings, plan_cut
from tests.trade.cut.small import best, small_week
from tests.trade.cut.weeks import busy_week

THE_VERY_BEST = Settings(close=Decimal(0))


@pytest.mark.parametrize("first", range(0, 200, 20))
def test_no_plan_of_all_there_are_is_better(first: int) -> None:
    for seed in range(first, first + 20):
        problem = small_week(seed)
        plan = plan_cut(problem, THE_VERY_BEST)
        judged = plan.parts
        came_to = (judged.short_weighed, judged.spare_missed, int(1000 * judged.weighed))
        assert (seed, *came_to) == (seed, *best(problem))
        assert plan.proven
        assert plan.gap == 0


def test_a_busy_week_that_the_walk_is_a_third_short_for_is_proven() -> None:
    problem = busy_week(0)
    assert len({each.key.split("/")[1] for each in problem.wanted}) == 60
    assert len(problem.standing) == 150
    plan = plan_cut(problem, Settings(seconds=300))
    assert plan.proven
    assert plan.gap <= 0.0005
    assert plan.short


def test_the_order_in_which_things_are_listed_changes_nothing() -> None:
    problem = busy_week(3, lines=15, stems=40)
    random = Random(7)
    shuffled = CutProblem(
        random.sample(problem.standing, len(problem.standing)),
        random.sample(problem.wanted, len(problem.wanted)),
        random.sample(problem.options, len(problem.options)),
    )
    assert plan_cut(shuffled) == plan_cut(problem)
