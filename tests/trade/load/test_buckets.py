"""Stems into buckets: by order, full ones first, the ends sharing where they may."""

from collections import Counter
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.load.buckets import Lot, fill
from corymb.trade.load.kinds import BucketKind, bucket_for
from corymb.trade.load.weight import bucket_kg, filled_kg, water_kg_per_m3

TALL = BucketKind("tall bucket", 29, 38, 5, 0.9)
SHORT = BucketKind("short bucket", 25, 24, 3, 0.6)
CRATE = BucketKind("posy crate", 32, 18, 1, 1.1)
KINDS = (TALL, SHORT, CRATE)


def lot(stem: str = "rose", count: int = 25, per_bucket: int = 25, **facts: Any) -> Lot:
    own = {"shortest_cm": 60, "longest_cm": 90, "weight_g": 20, **facts}
    return Lot(stem, count, per_bucket, **own)


HOMES = {
    # shortest and longest stem in cm, the bucket, whether they stand in it
    "long": (60, 90, TALL, True),
    "a third of the stem exactly": (60, 114, TALL, True),
    "too long for all": (70, 150, TALL, False),
    "two buckets suit, the one with more water": (60, 70, TALL, True),
    "two thirds of the stem exactly": (57, 70, TALL, True),
    "a little more than two thirds": (56, 70, SHORT, True),
    "middling, the short of which would drown in the tall one": (40, 70, SHORT, True),
    "short": (27, 50, CRATE, True),
    "so short that they drown in all": (12, 30, CRATE, True),
    "short and long in one, upright first": (25, 60, SHORT, True),
}


@pytest.mark.parametrize(("shortest", "longest", "kind", "stands"), HOMES.values(), ids=HOMES)
def test_stems_go_where_they_neither_topple_nor_drown(
    shortest: float, longest: float, kind: BucketKind, stands: bool
) -> None:
    assert bucket_for(shortest, longest, KINDS) == (kind, stands)


def test_a_studio_without_buckets_is_told_so() -> None:
    with pytest.raises(ValueError, match="no bucket to stand stems in"):
        bucket_for(20, 30, ())


# Common practice: about 25 large-headed roses to a bucket.
COUNTS = [(130, 25, 6), (200, 25, 8), (24, 25, 1), (25, 25, 1), (26, 25, 2), (45, 20, 3), (0, 9, 0)]


@pytest.mark.parametrize(("count", "per_bucket", "buckets"), COUNTS)
def test_one_kind_takes_as_many_buckets_as_it_needs(
    count: int, per_bucket: int, buckets: int
) -> None:
    filled = fill("supper", [lot(count=count, per_bucket=per_bucket)], KINDS)
    assert len(filled) == buckets
    assert sum(part.count for one in filled for part in one.parts) == count


SHARING = {
    # lots, and what stands together in each bucket
    "two halves": ([lot("a", 10, 20), lot("b", 15, 30)], [{"a": 10, "b": 15}]),
    "full first, then the ends": (
        [lot("a", 25, 20), lot("b", 15, 30)],
        [{"a": 20}, {"b": 15, "a": 5}],
    ),
    "the largest share first": (
        [lot("a", 4, 20), lot("b", 12, 20), lot("c", 8, 20), lot("d", 16, 20)],
        [{"d": 16, "a": 4}, {"b": 12, "c": 8}],
    ),
    "a delicate head needs air": (
        [lot("a", 10, 20), lot("b", 10, 20, delicate=True)],
        [{"a": 10}, {"b": 10}],
    ),
    "a delicate head with few others": (
        [lot("a", 6, 20), lot("b", 10, 20, delicate=True)],
        [{"b": 10, "a": 6}],
    ),
    "a delicate head by itself fills its bucket": (
        [lot("b", 19, 20, delicate=True)],
        [{"b": 19}],
    ),
    "sap keeps apart": ([lot("a", 2, 20, alone=True), lot("b", 2, 20)], [{"a": 2}, {"b": 2}]),
    "dried with dried": (
        [lot("a", 8, 20, dry=True), lot("b", 2, 20), lot("c", 2, 20, dry=True)],
        [{"a": 8, "c": 2}, {"b": 2}],
    ),
    "other lengths, other buckets": (
        [lot("a", 2, 20), lot("b", 2, 20, shortest_cm=12, longest_cm=30)],
        [{"a": 2}, {"b": 2}],
    ),
}


@pytest.mark.parametrize(("lots", "together"), SHARING.values(), ids=SHARING)
def test_ends_of_one_order_share_a_bucket(lots: list[Lot], together: list[dict[str, int]]) -> None:
    filled = fill("supper", lots, KINDS)
    assert [{part.lot.stem: part.count for part in one.parts} for one in filled] == together


LOTS = st.lists(
    st.builds(
        Lot,
        st.sampled_from("abcdef"),
        st.integers(0, 120),
        st.integers(1, 60),
        st.integers(10, 40),
        st.integers(40, 160),
        st.integers(2, 90),
        st.booleans(),
        st.booleans(),
        st.booleans(),
    ),
    max_size=8,
)


@given(LOTS)
def test_no_stem_is_lost_and_no_bucket_overfull(lots: list[Lot]) -> None:
    filled = fill("supper", lots, KINDS)
    wanted, found = Counter[str](), Counter[str]()
    for each in lots:
        wanted[each.stem] += each.count
    for one in filled:
        assert 0 < one.share <= 1
        if len(one.parts) > 1 and any(part.lot.delicate for part in one.parts):
            assert one.share <= Fraction(4, 5)
        assert len({part.lot.dry for part in one.parts}) == 1
        for part in one.parts:
            found[part.lot.stem] += part.count
    assert +wanted == +found


@pytest.mark.parametrize("wrong", [lot(count=-1), lot(per_bucket=0)])
def test_a_count_that_cannot_be_is_refused(wrong: Lot) -> None:
    with pytest.raises(ValueError, match="a bucket holds 1 or more"):
        fill("supper", [wrong], KINDS)


def test_a_bucket_is_as_tall_as_its_longest_stem_or_its_rim() -> None:
    assert [fill("s", [lot(longest_cm=cm)], [TALL])[0].tall_cm for cm in (90, 30)] == [90, 38]


# 5 L of water at 15 degrees, 4.995 kg; 10 stems of 20 g and 15 of 30 g, 0.65 kg; 0.9 kg.
def test_a_shared_bucket_weighs_all_its_stems() -> None:
    lots = [lot("a", 10, 20), lot("b", 15, 30, weight_g=30)]
    (bucket,) = fill("supper", lots, KINDS)
    assert filled_kg(bucket) == pytest.approx(6.545, abs=0.001)


def test_a_bucket_of_dried_stems_has_no_water_to_carry() -> None:
    (bucket,) = fill("supper", [lot(count=10, dry=True)], [TALL])
    assert filled_kg(bucket) == pytest.approx(1.1)


@pytest.mark.parametrize("celsius", [-0.1, 100.1])
def test_ice_and_steam_are_no_water(celsius: float) -> None:
    with pytest.raises(ValueError, match="ice or steam"):
        water_kg_per_m3(celsius)


@pytest.mark.parametrize("measures", [(-1, 0, 0), (0, -1, 0), (0, 0, -1)])
def test_nothing_weighs_less_than_nothing(measures: tuple[int, int, int]) -> None:
    with pytest.raises(ValueError, match="less than nothing"):
        bucket_kg(*measures)
