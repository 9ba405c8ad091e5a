"""Every stem is accounted for, whatever the week."""

from __future__ import annotations

from collections import Counter
from decimal import Decimal
from fractions import Fraction

import pytest

from corymb.trade.cut import CutPlan, CutProblem, Fill, Settings, plan_cut
from tests.trade.cut.small import small_week
from tests.trade.cut.weeks import busy_week

WEEKS = {
    **{f"small {seed}": small_week(seed) for seed in range(300, 340)},
    "short by a third": busy_week(11, lines=15, stems=40),
    "plenty": busy_week(12, lines=15, stems=40, covered="1.6"),
    "hardly anything stands": busy_week(13, lines=15, stems=40, covered="0.1"),
    "nothing can be bought": busy_week(14, lines=12, stems=40, buyable=0),
}
PLANS = {name: plan_cut(problem) for name, problem in WEEKS.items()}

every_week = pytest.mark.parametrize(
    ("problem", "plan"), [(WEEKS[name], PLANS[name]) for name in WEEKS], ids=WEEKS
)


def counted(fills: list[Fill]) -> Counter[str]:
    counts = Counter[str]()
    for fill in fills:
        counts[fill.stem] += fill.count
    return counts


@every_week
def test_every_stem_cut_or_bought_is_used_or_spare_or_left(
    problem: CutProblem, plan: CutPlan
) -> None:
    used = counted([fill for each in plan.filled for fill in each.fills])
    spare = counted([fill for each in plan.filled for fill in each.spare])
    for cut in plan.cuts:
        assert cut.cut + cut.bought == cut.used + cut.spare + cut.left
        assert (cut.used, cut.spare) == (used[cut.stem], spare[cut.stem])
        assert min(cut.cut, cut.bought, cut.left) >= 0


@every_week
def test_all_that_is_wanted_is_met_or_short(problem: CutProblem, plan: CutPlan) -> None:
    assert [each.key for each in plan.filled] == [each.key for each in problem.wanted]
    for wanted, each in zip(problem.wanted, plan.filled, strict=True):
        assert each.met + each.short == wanted.count
        assert sum(fill.of for fill in each.spare) + each.spare_missed == wanted.spare
        assert min(each.short, each.spare_missed) >= 0


@every_week
def test_the_cut_is_in_whole_steps_and_leaves_the_share_to_keep(
    problem: CutProblem, plan: CutPlan
) -> None:
    for cut in plan.cuts:
        standing = problem.stands()[cut.stem]
        assert cut.cut % cut.step == 0
        assert cut.left < cut.step
        assert cut.left_standing == standing.standing - cut.cut
        assert cut.left_standing >= standing.standing * Fraction(standing.keep)


@every_week
def test_a_wanted_stem_never_gets_less_than_its_share_of_a_stand_in(
    problem: CutProblem, plan: CutPlan
) -> None:
    options = {(each.wanted, each.stem): each for each in problem.options}
    for each in plan.filled:
        for fill in each.fills:
            if fill.stem == each.stem:
                assert fill.count == fill.of
            else:
                option = options[each.key, fill.stem]
                assert fill.count * option.out >= fill.of * option.in_
                assert (fill.drift, fill.why) == (option.drift, option.why)


@every_week
def test_what_is_bought_is_what_the_orders_have_of_it(problem: CutProblem, plan: CutPlan) -> None:
    bought = Counter[str]()
    for each in plan.filled:
        for fill in each.fills:
            assert 0 <= fill.bought <= fill.count
            bought[fill.stem] += fill.bought
    assert {cut.stem: cut.bought for cut in plan.cuts if cut.bought} == dict(+bought)


@every_week
def test_the_plan_is_judged_by_what_is_in_it(problem: CutProblem, plan: CutPlan) -> None:
    stands, parts = problem.stands(), plan.parts
    assert parts.short == sum(plan.short.values())
    assert parts.waste == sum(cut.left for cut in plan.cuts)
    bought = sum(cut.bought * (stands[cut.stem].bought or 0) for cut in plan.cuts)
    assert parts.bought_cost == bought
    assert parts.grown_cost == sum(cut.cut * stands[cut.stem].grown for cut in plan.cuts)
    least = bought + Decimal("0.02") * parts.drift + Decimal("0.002") * parts.waste
    assert least <= parts.weighed <= least + Decimal("0.002") * parts_of_blocks(plan)


def parts_of_blocks(plan: CutPlan) -> int:
    """No more than all that stand-ins do for is met singly."""
    fills = [(each.stem, fill) for each in plan.filled for fill in each.fills]
    return sum(fill.of for stem, fill in fills if fill.stem != stem)


@every_week
def test_spare_is_the_stem_itself_from_the_garden(problem: CutProblem, plan: CutPlan) -> None:
    for each in plan.filled:
        assert all(fill.stem == each.stem for fill in each.spare)
        assert all((fill.count, fill.bought) == (fill.of, 0) for fill in each.spare)


def test_spare_is_missed_before_a_stem_is_bought_swapped_or_short() -> None:
    seen = Counter[str]()
    for plan in PLANS.values():
        bought = {cut.stem for cut in plan.cuts if cut.bought}
        short = {each.stem for each in plan.filled if each.short}
        swapped = {
            each.stem for each in plan.filled for fill in each.fills if fill.stem != each.stem
        }
        for cut in plan.cuts:
            seen["spare"] += cut.spare
            for name, some in (("bought", bought), ("short", short), ("swapped", swapped)):
                seen[name] += cut.stem in some
                assert not (cut.spare and cut.stem in some), name
    assert min(seen.values()) > 20


def test_with_no_time_there_is_a_plan_all_the_same() -> None:
    plan = plan_cut(busy_week(15, lines=15, stems=40), Settings(seconds=0))
    assert not plan.proven
    assert plan.gap > 0
    assert all(each.met + each.short == each.count for each in plan.filled)
