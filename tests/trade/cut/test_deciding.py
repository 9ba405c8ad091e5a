"""What is decided in plain cases, worked out by hand."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

import pytest

from corymb.trade.cut import (
    CutProblem,
    Settings,
    Standing,
    StandInOption,
    Wanted,
    Weights,
    plan_cut,
)


def stands(
    stem: str, standing: int, step: int = 1, keep: str = "0", bought: str = "", broken: bool = False
) -> Standing:
    price = Decimal(bought) if bought else None
    return Standing(stem, standing, step, Decimal(keep), Decimal("0.30"), price, broken)


def wants(count: int, stem: str = "dahlia", spare: int = 0, line: str = "1") -> Wanted:
    return Wanted(f"supper/{line}/{stem}", "supper", stem, count, spare)


def cosmos(out: int = 1, in_: int = 1, drift: float = 5.0) -> StandInOption:
    return StandInOption("supper/1/dahlia", "cosmos", out, in_, drift, ("a little paler",))


CASES = {
    # standing, wanted, options: cut and bought of each stem, short
    "up to a whole step": ([stands("dahlia", 100, 25)], [wants(37)], [], {"dahlia": (50, 0)}, 0),
    "what the share to keep leaves": (
        [stands("dahlia", 100, keep="0.25")], [wants(90)], [], {"dahlia": (75, 0)}, 15,
    ),
    "a share that floats get wrong": (  # 1000 * (1 - 0.9) is 99.99999999999997
        [stands("dahlia", 1000, 100, keep="0.9")], [wants(80)], [], {"dahlia": (100, 0)}, 0,
    ),
    "less than a step stands": ([stands("dahlia", 24, 25)], [wants(5)], [], {"dahlia": (0, 0)}, 5),
    "less than a step, and it may be broken": (
        [stands("dahlia", 24, 25, broken=True)], [wants(5)], [], {"dahlia": (5, 0)}, 0,
    ),
    "bought in where too few stand": (
        [stands("dahlia", 10, bought="1.40")], [wants(12, spare=1)], [], {"dahlia": (10, 2)}, 0,
    ),
    "a stand-in before buying in": (
        [stands("dahlia", 10, bought="1.40"), stands("cosmos", 50)], [wants(12)], [cosmos()],
        {"dahlia": (10, 0), "cosmos": (2, 0)}, 0,
    ),
    "buying in before a colour far off": (  # 2 stems at 0.30 against 2 x 20 x 0.02
        [stands("dahlia", 10, bought="0.30"), stands("cosmos", 50)], [wants(12)],
        [cosmos(drift=20)], {"dahlia": (10, 2), "cosmos": (0, 0)}, 0,
    ),
    "by whole blocks, five for three": (
        [stands("dahlia", 6), stands("cosmos", 50)], [wants(12)], [cosmos(3, 5)],
        {"dahlia": (6, 0), "cosmos": (10, 0)}, 0,
    ),
    "a part of a block singly, two for one": (
        [stands("dahlia", 5), stands("cosmos", 50)], [wants(12)], [cosmos(3, 5)],
        {"dahlia": (5, 0), "cosmos": (12, 0)}, 0,
    ),
    "one for two, and one more for the odd one": (
        [stands("cosmos", 50)], [wants(5)], [cosmos(2, 1)],
        {"dahlia": (0, 0), "cosmos": (3, 0)}, 0,
    ),
    "nothing is wanted": ([stands("dahlia", 50, 25)], [], [], {"dahlia": (0, 0)}, 0),
    "nothing stands and nothing will do": ([], [wants(7)], [], {"dahlia": (0, 0)}, 7),
}  # fmt: skip


@pytest.mark.parametrize(
    ("standing", "wanted", "options", "cuts", "short"), CASES.values(), ids=CASES
)
def test_the_cut_is_the_one_worked_out_by_hand(
    standing: list[Standing],
    wanted: list[Wanted],
    options: list[StandInOption],
    cuts: dict[str, tuple[int, int]],
    short: int,
) -> None:
    plan = plan_cut(CutProblem(standing, wanted, options))
    assert {cut.stem: (cut.cut, cut.bought) for cut in plan.cuts} == cuts
    assert plan.parts.short == short
    assert bool(plan.short) is (short > 0)
    assert plan.proven


def test_an_essential_stem_is_served_first() -> None:
    plain = Wanted("a-supper/1/dahlia", "a-supper", "dahlia", 10)
    essential = Wanted("b-supper/1/dahlia", "b-supper", "dahlia", 10, essential=True)
    plan = plan_cut(CutProblem([stands("dahlia", 12)], [plain, essential]))
    assert plan.short == {"a-supper/1/dahlia": 8}
    assert plan.parts.short_weighed == 8


def test_what_is_short_falls_on_as_few_lines_as_can_be() -> None:
    lines = [wants(10, line=str(number)) for number in range(3)]
    plan = plan_cut(CutProblem([stands("dahlia", 22)], lines))
    assert plan.short == {"supper/2/dahlia": 8}


def test_lines_that_are_alike_keep_blocks_of_two_sizes_whole() -> None:
    # Each of the two wants 4: two blocks of 2 for it, and 4 stems stand in all.
    lines = [wants(4, line="1"), wants(4, line="2")]
    options = [
        StandInOption(each.key, stem, out, in_, drift)
        for each in lines
        for stem, out, in_, drift in (("cosmos", 2, 1, 1.0), ("zinnia", 3, 2, 2.0))
    ]
    plan = plan_cut(CutProblem([stands("cosmos", 4), stands("zinnia", 2)], lines, options))
    assert [(fill.stem, fill.count, fill.of) for each in plan.filled for fill in each.fills] == [
        ("cosmos", 2, 4),
        ("cosmos", 2, 4),
    ]


def test_the_first_lines_keep_the_stem_itself_and_the_last_get_stand_ins() -> None:
    lines = [wants(3, line="1"), wants(3, line="2")]
    options = [StandInOption(each.key, "cosmos", 3, 5, 1.0) for each in lines]
    plan = plan_cut(CutProblem([stands("dahlia", 3), stands("cosmos", 5)], lines, options))
    assert [fill.stem for each in plan.filled for fill in each.fills] == ["dahlia", "cosmos"]


def test_a_studio_that_does_not_buy_in_is_short() -> None:
    problem = CutProblem([stands("dahlia", 10, bought="1.40")], [wants(12)])
    plan = plan_cut(problem, Settings(buy_in=False))
    assert (plan.parts.short, plan.parts.bought_cost) == (2, Decimal(0))


def test_the_studios_weights_decide_between_colour_and_waste() -> None:
    standing = [stands("dahlia", 50, 25), stands("cosmos", 9)]
    problem = CutProblem(standing, [wants(26)], [cosmos(drift=1)])
    careful = Settings(weights=Weights(waste=Decimal("0.10")))
    assert plan_cut(problem).parts.waste == 0  # 1 x 0.02 of drift against 24 x 0.002 of waste
    exact = Settings(weights=Weights(drift=Decimal(1)))
    assert plan_cut(problem, exact).parts.waste == 24
    assert plan_cut(problem, careful).parts.drift == 1


SPARE = {
    # standing, spare wished beside 12 wanted, options, spare given
    "as far as it stands": ([stands("dahlia", 13)], 2, [], 1),
    "none where some are bought": ([stands("dahlia", 10, bought="1.40")], 2, [], 0),
    "none bought, of the wanted ones either": ([stands("dahlia", 13, bought="0.01")], 2, [], 1),
    "none swapped, of the wanted ones either": (
        [stands("dahlia", 13), stands("cosmos", 50)], 2, [cosmos(drift=0)], 1,
    ),
    "none where one is swapped": (
        [stands("dahlia", 11), stands("cosmos", 50)], 2, [cosmos(drift=0)], 0,
    ),
    "a further step for it": ([stands("dahlia", 50, 12)], 1, [], 1),
}  # fmt: skip


@pytest.mark.parametrize(("standing", "spare", "options", "given"), SPARE.values(), ids=SPARE)
def test_spare_is_only_what_stands_beyond_the_wanted(
    standing: list[Standing], spare: int, options: list[StandInOption], given: int
) -> None:
    plan = plan_cut(CutProblem(standing, [wants(12, spare=spare)], options))
    (filled,) = plan.filled
    assert (sum(fill.count for fill in filled.spare), filled.spare_missed) == (given, spare - given)
    assert not plan.short
    lacking = max(0, 12 - standing[0].may_cut)
    not_cut = sum(fill.count if fill.stem == "cosmos" else fill.bought for fill in filled.fills)
    assert not_cut == lacking


def test_the_first_lines_get_the_spare_there_is() -> None:
    lines = [wants(5, spare=1, line=str(number)) for number in range(3)]
    plan = plan_cut(CutProblem([stands("dahlia", 17)], lines))
    assert [each.spare_missed for each in plan.filled] == [0, 0, 1]


REFUSED = {
    "fewer than none stand": (lambda: stands("dahlia", -1), "dahlia: -1 can't stand"),
    "no step": (lambda: stands("dahlia", 1, 0), "dahlia: a cutting step is 1 or more, not 0"),
    "more is kept than stands": (
        lambda: Standing("dahlia", 1, 1, Fraction(3, 2), Decimal(0)),
        "dahlia: a share to keep lies from 0 to 1, not 3/2",
    ),
    "a price below nothing": (
        lambda: stands("dahlia", 1, bought="-1"), "dahlia: a stem can't cost less than nothing",
    ),
    "fewer than none wanted": (lambda: wants(-1), "supper/1/dahlia: nobody wants fewer stems"),
    "none for one": (lambda: cosmos(1, 0), "supper/1/dahlia: 0 cosmos can't do for 1"),
    "no colour": (lambda: cosmos(drift=float("nan")), "no colour is nan away from cosmos"),
    "a weight below 0": (lambda: Weights(drift=Decimal(-1)), "a weight is not below 0"),
    "a stem that stands twice": (
        lambda: CutProblem([stands("dahlia", 1)] * 2, []), "dahlia stands twice",
    ),
    "a key twice": (lambda: CutProblem([], [wants(1)] * 2), "supper/1/dahlia is wanted twice"),
    "a stand-in twice": (
        lambda: CutProblem([], [wants(1)], [cosmos()] * 2),
        "cosmos for supper/1/dahlia may stand in twice",
    ),
    "a stand-in for nothing": (
        lambda: CutProblem([], [], [cosmos()]),
        "cosmos may stand in for supper/1/dahlia, which nobody wants",
    ),
    "a stand-in for itself": (
        lambda: CutProblem([], [wants(1)], [StandInOption("supper/1/dahlia", "dahlia", 1, 1, 0)]),
        "supper/1/dahlia: dahlia can't stand in for itself",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("make", "sentence"), REFUSED.values(), ids=REFUSED)
def test_what_makes_no_sense_is_refused_in_words(make: object, sentence: str) -> None:
    assert callable(make)
    with pytest.raises(ValueError, match=sentence):
        make()
