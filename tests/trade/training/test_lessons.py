"""Are lessons taken in an order in which each comes after those it needs?"""

from __future__ import annotations

from graphlib import CycleError
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.training.lessons import all_needed, in_order
from tests.trade.making import lesson


def lessons(**needs: list[str]) -> Any:
    return {known_as: lesson(known_as, needs=of) for known_as, of in needs.items()}


@pytest.mark.parametrize(
    ("needs", "order"),
    [
        ({"b": ["a"], "a": []}, ("a", "b")),
        ({"c": ["a"], "b": ["a"], "a": []}, ("a", "b", "c")),
        ({"a": ["c"], "b": [], "c": ["b"]}, ("b", "c", "a")),
        ({}, ()),
    ],
    ids=["the one it needs", "by name where both may come", "far back", "none at all"],
)
def test_each_lesson_comes_after_those_it_needs(
    needs: dict[str, list[str]], order: tuple[str, ...]
) -> None:
    assert in_order(lessons(**needs)) == order


def test_of_two_that_may_both_come_the_lower_order_goes_first() -> None:
    taken = {"a": lesson("a", order="2"), "b": lesson("b", order="1")}
    assert in_order(taken) == ("b", "a")


def test_lessons_in_a_circle_have_no_order() -> None:
    with pytest.raises(CycleError):
        in_order(lessons(a=["b"], b=["a"]))


def test_what_a_lesson_needs_is_known_however_far_back() -> None:
    taken = lessons(a=[], b=["a"], c=["b"], d=["a"])
    assert all_needed(taken, "c") == {"a", "b"}
    assert all_needed(taken, "a") == set()


@given(st.lists(st.lists(st.integers(0, 8), max_size=3), min_size=1, max_size=9))
def test_whatever_lessons_need_of_those_before_them_comes_before_them(
    needs: list[list[int]],
) -> None:
    named = {f"l{i}": sorted({f"l{each}" for each in of if each < i}) for i, of in enumerate(needs)}
    order = in_order(lessons(**named))
    assert sorted(order) == sorted(named)
    assert all(order.index(each) < order.index(one) for one, of in named.items() for each in of)
