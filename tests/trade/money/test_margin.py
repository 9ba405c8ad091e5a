"""An order's price stays; what swaps and spare cost is told, each by itself."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.costs import Needs, StemsOf, costs_of
from corymb.trade.money.margin import Standing, margin_change
from tests.trade.money.figures import RATES

NET = Decimal(100)
ROSES = StemsOf("rose", 40, Decimal("0.50"))
WRITTEN = Needs((ROSES,), minutes=Decimal(60))
"""Stems 20.00, waste 5.00, labour 18.00, overhead a fifth of 43.00: 51.60."""


def test_an_order_done_as_written_and_lost_as_reckoned_keeps_its_margin() -> None:
    cut = [replace(ROSES, count=50)]
    change = margin_change(NET, WRITTEN, [ROSES], cut, RATES)
    assert change.before == change.swapped == change.after == Standing(NET, Decimal("51.60"))
    assert (change.before.left, change.before.margin) == (Decimal("48.40"), Decimal("0.484"))
    assert change.altogether == 0


def test_what_swaps_cost_and_what_spare_cost_are_told_apart() -> None:
    swapped = [replace(ROSES, count=30), StemsOf("lily", 10, Decimal(2), bought=True)]
    cut = [replace(ROSES, count=50), StemsOf("lily", 10, Decimal(2), bought=True)]
    change = margin_change(NET, WRITTEN, swapped, cut, RATES)
    # 35.00 and 8.75 of waste instead of 25.00, and a fifth more: 22.50 dearer
    assert change.by_swaps == Decimal("-22.50")
    # 45.00 cut and no waste reckoned, instead of 43.75, and a fifth more
    assert change.by_spare == Decimal("-1.50")
    assert change.altogether == Decimal("-24.00")


def test_losing_less_than_reckoned_is_left_over() -> None:
    change = margin_change(NET, WRITTEN, [ROSES], [ROSES], RATES)
    assert change.by_spare == Decimal("6.00")  # 5.00 of waste and a fifth of it


def test_an_order_for_nothing_has_no_margin() -> None:
    assert Standing(Decimal(0), Decimal(10)).margin is None
    assert Standing(Decimal(0), Decimal(10)).left == -10


STEMS = st.lists(
    st.builds(
        StemsOf,
        st.sampled_from("abc"),
        st.integers(0, 90),
        st.decimals(0, 5, places=2),
        st.booleans(),
    )
)


@given(STEMS, STEMS, STEMS)
def test_swaps_and_spare_add_up_to_the_whole_change(
    written: list[StemsOf], swapped: list[StemsOf], cut: list[StemsOf]
) -> None:
    needs = Needs(tuple(written), minutes=Decimal(30))
    change = margin_change(NET, needs, swapped, cut, RATES)
    assert change.by_swaps + change.by_spare == change.altogether
    assert change.before.cost == costs_of(needs, RATES).total
