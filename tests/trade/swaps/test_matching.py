"""Giving each missing stem a stand-in of its own."""

from __future__ import annotations

import itertools

from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.swaps.matching import matched
from corymb.trade.swaps.standing_in import StandIn


def choice(name: str) -> StandIn:
    return StandIn("out", name, "light", 1, 1, 0.0, 1.0, 0, True, 0.0)


def test_each_takes_its_best_where_none_is_wanted_twice() -> None:
    given_ = matched({0: [choice("a"), choice("b")], 1: [choice("c")]})
    assert {line: each.in_ for line, each in given_.items()} == {0: "a", 1: "c"}


def test_the_first_gives_way_to_one_that_has_no_other() -> None:
    given_ = matched({0: [choice("a"), choice("b")], 1: [choice("a")]})
    assert {line: each.in_ for line, each in given_.items()} == {0: "b", 1: "a"}


def test_giving_way_goes_down_a_row_of_three() -> None:
    given_ = matched(
        {0: [choice("a"), choice("b")], 1: [choice("b"), choice("c")], 2: [choice("a")]}
    )
    assert {line: each.in_ for line, each in given_.items()} == {0: "b", 1: "c", 2: "a"}


WISHES = st.lists(st.lists(st.sampled_from("abcde"), unique=True, max_size=4), max_size=5)


@given(WISHES)
def test_as_many_have_one_as_can_and_none_stands_in_twice(wishes: list[list[str]]) -> None:
    given_ = matched({i: [choice(name) for name in wish] for i, wish in enumerate(wishes)})
    names = [each.in_ for each in given_.values()]
    assert len(set(names)) == len(names)
    assert all(each.in_ in wishes[line] for line, each in given_.items())
    assert len(given_) == most(wishes)


def most(wishes: list[list[str]]) -> int:
    """The most that can have one, by trying every way."""
    ways = itertools.product(*([None, *wish] for wish in wishes))
    return max(
        len(taken)
        for way in ways
        if len(set(taken := [each for each in way if each is not None])) == len(taken)
    )
