"""What orders really took becomes a proposal, with its evidence, and only where it is enough."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.reality import (
    Correction,
    Evidence,
    MadeLine,
    MadeOrder,
    Written,
    corrections,
    is_enough,
    together,
)

ROSES = Written(("jar",), "rose", 6)
MINUTES = Written(("jar",), None, 20)
JAR = (ROSES, Written(("jar",), "mint", 4), MINUTES)


def made(known_as: str, used: int, pieces: int = 10, **keys: Any) -> MadeOrder:
    """An order of so many jars, six roses in each, in which so many roses went."""
    line = MadeLine("jar", pieces, {"rose": 6 * pieces, "mint": 4 * pieces}, 20 * pieces)
    return MadeOrder(known_as, [line], {"rose": used}, **keys)


ENOUGH: dict[str, tuple[list[tuple[int, int]], bool]] = {
    "nothing told": ([], False),
    "one order, a little more": ([(60, 66)], False),
    "one order, a quarter more": ([(60, 75)], False),
    "one order, more than a quarter more": ([(60, 76)], True),
    "one order, more than a quarter fewer": ([(60, 44)], True),
    "two a little more": ([(60, 66), (60, 63)], True),
    "two a little fewer": ([(60, 54), (60, 57)], True),
    "one more, one fewer": ([(60, 66), (60, 54)], False),
    "two more, one just as asked": ([(60, 66), (60, 63), (60, 60)], True),
    "two more, two fewer": ([(60, 66), (60, 66), (60, 54), (60, 54)], False),
    "two more, and one large order fewer": ([(20, 21), (20, 21), (200, 180)], False),
    "all as asked": ([(60, 60), (60, 60)], False),
}


@pytest.mark.parametrize(("told", "enough"), ENOUGH.values(), ids=ENOUGH)
def test_two_orders_that_agree_or_one_far_off_are_enough(
    told: list[tuple[int, int]], enough: bool
) -> None:
    evidence = [Evidence(f"o{i}", 1, asked, asked, used) for i, (asked, used) in enumerate(told)]
    assert is_enough(evidence) is enough


def test_a_count_is_proposed_with_the_orders_that_speak_for_it() -> None:
    orders = [made("barn", 72), made("chapel", 33, pieces=5)]
    assert corrections(orders, JAR) == (
        Correction(
            ROSES,
            proposed=7,  # 105 for 90 asked: 6 x 7/6
            evidence=(Evidence("barn", 10, 60, 60, 72), Evidence("chapel", 5, 30, 30, 33)),
        ),
    )


def test_a_time_is_proposed_after_the_counts() -> None:
    orders = [made("barn", 90, minutes=300), made("chapel", 60)]
    assert [(c.written, c.proposed) for c in corrections(orders, JAR)] == [
        (ROSES, 8),  # 150 for 120: 7.5, and a half goes up
        (MINUTES, 30),
    ]


NOTHING_PROPOSED = {
    "the roses were not counted": MadeOrder("barn", made("barn", 0).lines, {"lily": 9}),
    "no rose went in: another stem stood in": made("barn", 0),
    "no whole stem comes of it": made("barn", 62),
    "the order has no such look": MadeOrder("barn", [MadeLine("urn", 1, {"rose": 9})], {"rose": 3}),
}


@pytest.mark.parametrize("order", NOTHING_PROPOSED.values(), ids=NOTHING_PROPOSED)
def test_nothing_is_proposed_where_nothing_follows(order: MadeOrder) -> None:
    assert corrections([order, order], JAR) == ()


def test_a_stem_that_several_looks_take_gives_each_the_orders_ratio_and_says_so() -> None:
    lines = [MadeLine("jar", 10, {"rose": 60}), MadeLine("urn", 2, {"rose": 40})]
    order = MadeOrder("barn", lines, {"rose": 150})
    jar, urn = corrections([order], [ROSES, Written(("urn",), "rose", 20)])
    assert (jar.proposed, urn.proposed) == (9, 30)
    assert jar.evidence == (Evidence("barn", 10, 60, 100, 150, ("urn",)),)
    assert urn.evidence == (Evidence("barn", 2, 40, 100, 150, ("jar",)),)
    assert jar.ratio == urn.ratio == Fraction(3, 2)


def test_sizes_of_a_look_count_as_one() -> None:
    lines = [MadeLine("jar", 2, {"rose": 12}), MadeLine("jar", 3, {"rose": 9})]
    (jar,) = corrections([MadeOrder("barn", lines, {"rose": 28})], JAR)
    assert jar.evidence == (Evidence("barn", 5, 21, 21, 28),)
    assert jar.proposed == 8


def test_what_is_written_once_for_several_looks_is_told_of_by_the_orders_of_all() -> None:
    lines = [MadeLine("jar", 2, {"rose": 12}), MadeLine("jar--later", 5, {"rose": 30})]
    both = Written(("jar", "jar--later"), "rose", 6)
    (jar,) = corrections([MadeOrder("barn", lines, {"rose": 56})], [both])
    assert jar == Correction(both, 8, (Evidence("barn", 7, 42, 42, 56),))


def test_a_recipe_is_never_told_to_leave_a_stem_out() -> None:
    (jar,) = corrections([made("barn", 1)], JAR)
    assert jar.proposed == 1


ASKED = st.integers(1, 300)
EVIDENCE = st.lists(
    st.builds(Evidence, st.just("o"), ASKED, ASKED, ASKED, st.integers(1, 600)), min_size=1
)


@given(EVIDENCE)
def test_what_is_proposed_lies_between_the_orders_whichever_comes_first(
    evidence: list[Evidence],
) -> None:
    ratios = [one.ratio for one in evidence]
    assert min(ratios) <= together(evidence) <= max(ratios)
    assert together(evidence) == together(evidence[::-1])
    assert is_enough(evidence) == is_enough(evidence[::-1])
