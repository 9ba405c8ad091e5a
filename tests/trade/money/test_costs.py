"""A piece costs its stems with their waste, its sundries, the time and a share of the rest."""

from __future__ import annotations

from dataclasses import fields, replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.money.costs import Costs, Needs, Rates, StemsOf, SundryOf, costs_of, together
from tests.trade.money.figures import JAR, RATES


def test_the_jar_costs_what_one_works_out_by_hand() -> None:
    costs = costs_of(JAR, RATES)
    assert costs == Costs(
        grown=Decimal("3.60"),
        bought=Decimal("4.00"),
        waste_grown=Decimal("0.90"),  # 3.60 / 0.8 = 4.50: the five that are cut for every four used
        waste_bought=Decimal("1.00"),
        sundries=Decimal("1.50"),
        labour=Decimal("6.00"),  # a third of an hour at 18
        overhead=Decimal("3.40"),  # a fifth of 17.00
    )
    assert (costs.stems, costs.total) == (Decimal("9.50"), Decimal("20.40"))


def test_a_stem_of_a_fraction_of_a_cent_is_rounded_when_all_of_it_is_counted() -> None:
    assert StemsOf("grass", 25, Decimal("0.0385")).cost() == Decimal("0.96")  # 0.9625
    assert StemsOf("grass", 1, Decimal("0.005")).cost() == Decimal("0.01")


def test_measured_sundries_follow_the_size_and_counted_ones_stay() -> None:
    twine, jar = SundryOf("twine", Decimal("0.30"), measured=True), SundryOf("jar", Decimal("1.20"))
    assert twine.in_size(Decimal("1.5")).cost == Decimal("0.45")
    assert jar.in_size(Decimal("1.5")).cost == Decimal("1.20")


def test_a_dozen_needs_twelve_times_all_of_one() -> None:
    dozen = JAR.times(12)
    assert [stem.count for stem in dozen.stems] == [72, 48, 24]
    assert sum(sundry.cost for sundry in dozen.sundries) == 18
    assert dozen.minutes == 240


def test_the_same_stem_in_several_pieces_stands_in_one_line() -> None:
    other = Needs(
        (StemsOf("rose", 3, Decimal("0.40")), StemsOf("rose", 5, Decimal(1), True)), (), Decimal(10)
    )
    whole = together([JAR, other])
    assert [(stem.stem, stem.count, stem.bought) for stem in whole.stems] == [
        ("rose", 9, False), ("mint", 4, False), ("lily", 2, True), ("rose", 5, True),
    ]  # fmt: skip
    assert len(whole.sundries) == 2
    assert whole.minutes == 30


def test_nothing_costs_nothing() -> None:
    assert costs_of(Needs(), RATES).total == 0


@pytest.mark.parametrize("waste", ["1", "1.2", "-0.1"])
def test_waste_of_all_that_is_cut_is_refused(waste: str) -> None:
    with pytest.raises(ValueError, match="waste is below 100 %"):
        replace(RATES, waste=Decimal(waste))


CENTS = st.decimals(0, 50, places=3)
SHARES = st.decimals(0, "0.9", places=3)
STEMS = st.lists(
    st.builds(StemsOf, st.sampled_from(["a", "b"]), st.integers(0, 200), CENTS, st.booleans()),
    max_size=6,
)
NEEDS = st.builds(
    Needs,
    STEMS.map(tuple),
    st.lists(st.builds(SundryOf, st.just("s"), CENTS, st.booleans()), max_size=3).map(tuple),
    st.decimals(0, 600, places=1),
)
ANY_RATES = st.builds(Rates, CENTS, SHARES, SHARES)


@given(NEEDS, ANY_RATES)
def test_the_heads_add_up_to_the_total_and_none_is_below_nothing(
    needs: Needs, rates: Rates
) -> None:
    costs = costs_of(needs, rates)
    heads: list[Decimal] = [getattr(costs, field.name) for field in fields(costs)]
    assert sum(heads) == costs.total
    assert min(heads) >= 0
    assert sum((stem.cost() for stem in needs.stems), Decimal(0)) == costs.grown + costs.bought


@given(NEEDS, ANY_RATES, st.integers(1, 20), CENTS, st.booleans())
def test_more_stems_never_cost_less(
    needs: Needs, rates: Rates, count: int, each: Decimal, bought: bool
) -> None:
    more = replace(needs, stems=(*needs.stems, StemsOf("c", count, each, bought)))
    assert costs_of(more, rates).total >= costs_of(needs, rates).total


@given(NEEDS, ANY_RATES)
def test_every_head_is_in_whole_cents(needs: Needs, rates: Rates) -> None:
    costs = costs_of(needs, rates)
    assert all(getattr(costs, field.name) % Decimal("0.01") == 0 for field in fields(costs))
