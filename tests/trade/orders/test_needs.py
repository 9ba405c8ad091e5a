"""What an order asks of the cut: each stem with its spare once, by a key that can be read back."""

from __future__ import annotations

from collections import Counter

import pytest

from corymb.trade.orders.cut_days import cut_days
from corymb.trade.orders.due import Due, Dues
from corymb.trade.orders.needs import Key, needs_of
from corymb.trade.orders.timed import timed
from corymb.trade.season.makeable import Makeable
from tests.trade.making import recipe
from tests.trade.orders.hall import RECIPES, order, studio

BUTTON = recipe("button", stems=["1 rose, light, essential", "1 holly, depth, essential"])


def due_of(*lines: str, **keys: str) -> tuple[Due, Makeable]:
    read = studio(order("tea", "2026-06-18", *lines, **keys), recipes=(*RECIPES, BUTTON))
    makeable = Makeable.of(read)
    (due,) = Dues(read, makeable).between(*[read.orders["tea"].date] * 2)
    return due, makeable


SPARE = {
    "many lines of one": (["1 button"] * 10, "10 %", {"rose": 1, "holly": 1}),
    "one line of many": (["10 button"], "10 %", {"rose": 1, "holly": 1}),
    "a part counts whole": (["1 button", "10 button"], "10 %", {"rose": 2, "holly": 2}),
    "two looks": (["2 jar", "4 bowl"], "10 %", {"rose": 1, "holly": 3}),
    "none of what is from the mix": (["2 button", "9 button, from the mix"], "50 %",
                                     {"rose": 1, "holly": 1}),
    "none wished for": (["3 button"], "0 %", {}),
}  # fmt: skip


@pytest.mark.parametrize(("lines", "share", "spare"), SPARE.values(), ids=SPARE)
def test_spare_is_a_share_of_each_stem_of_the_whole_order(
    lines: list[str], share: str, spare: dict[str, int]
) -> None:
    due, _ = due_of(*lines, spare=share)
    found: Counter[str] = Counter()
    for need in needs_of(due):
        found[need.look_line.stem] += need.spare
    assert +found == spare


@pytest.mark.parametrize(("lines", "share", "spare"), SPARE.values(), ids=SPARE)
def test_hours_and_cut_count_the_same_stems(
    lines: list[str], share: str, spare: dict[str, int]
) -> None:
    due, makeable = due_of(*lines, spare=share)
    (day,) = cut_days([due], studio(), makeable)
    asked = sum(each.count + each.spare for each in day.problem.wanted)
    assert timed(due, studio(), makeable).stems == asked


KEYS = [
    Key("barn-supper", 1, 2, "dahlia-shell"),
    Key("lantern-house--2026-09-22", 12, 10, "rose"),
]


@pytest.mark.parametrize("key", KEYS, ids=str)
def test_a_key_reads_back_what_it_was_written_of(key: Key) -> None:
    assert Key.of(str(key)) == key


def test_every_need_is_named_by_its_line_and_its_place() -> None:
    due, _ = due_of("2 button", "1 jar")
    assert [str(Key.of(need.key)) for need in needs_of(due)] == [need.key for need in needs_of(due)]
    assert {Key.of(need.key)[1:3] for need in needs_of(due)} == {(1, 1), (1, 2), (2, 1), (2, 2)}
