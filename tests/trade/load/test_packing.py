"""Round buckets on a floor: nothing overlaps, nothing sticks out, and rows are told in words."""

from itertools import combinations
from math import dist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.load.packing import Layout, at_most, on_floor
from corymb.trade.load.shelves import on_shared_floor

SIDES = st.decimals(min_value=10, max_value=300, places=1)
WIDTHS = st.decimals(min_value=20, max_value=60, places=1)


@given(SIDES, SIDES, WIDTHS)
def test_buckets_never_overlap_nor_stand_off_the_floor(
    long: float, wide: float, across: float
) -> None:
    layout = on_floor(long, wide, across)
    half = float(across) / 2 - 1e-9
    assert all(half <= x <= float(long) - half for x, _ in layout.places)
    assert all(half <= y <= float(wide) - half for _, y in layout.places)
    assert all(dist(*pair) >= 2 * half for pair in combinations(layout.places, 2))
    assert layout.count <= at_most(long, wide, across)


@given(SIDES, SIDES, WIDTHS)
def test_a_turned_floor_takes_as_many(long: float, wide: float, across: float) -> None:
    assert on_floor(long, wide, across).count == on_floor(wide, long, across).count


WORDS = {
    "squarely": (180, 120, 30, "rows of 6 along the length, square behind each other"),
    "in gaps": (200, 150, 25, "rows of 6 and 5 along the width, the shorter in the gaps"),
    "mixed": (
        240,
        120,
        29,
        "3 rows of 4 along the width, square behind each other, "
        "then rows of 3 and 4 in the gaps, spread from wall to wall",
    ),
    "in step": (
        280,
        140,
        22,
        "rows of 12 along the length, every second moved along, spread from wall to wall",
    ),
    "too wide": (20, 90, 30, "no bucket fits"),
}


@pytest.mark.parametrize(("long", "wide", "across", "words"), WORDS.values(), ids=WORDS)
def test_whoever_loads_is_told_how_the_rows_run(
    long: int, wide: int, across: int, words: str
) -> None:
    assert on_floor(long, wide, across).words == words


def test_a_floor_narrower_than_a_bucket_takes_none() -> None:
    assert on_floor(20, 90, 30) == Layout((), "no bucket fits")
    assert at_most(20, 90, 30) == 0


@pytest.mark.parametrize("floor", [(0, 90, 30), (90, 0, 30), (90, 90, 0), (90, 90, -1)])
def test_a_measure_of_nothing_is_refused(floor: tuple[int, int, int]) -> None:
    with pytest.raises(ValueError, match="more than nothing"):
        on_floor(*floor)


@given(SIDES, SIDES, st.lists(WIDTHS, max_size=15))
def test_buckets_of_several_widths_never_overlap(
    long: float, wide: float, widths: list[float]
) -> None:
    places = on_shared_floor(long, wide, widths)
    assert len({place.bucket for place in places}) == len(places)
    for place in places:
        half = float(widths[place.bucket]) / 2 - 1e-9
        assert half <= place.x <= float(long) - half
        assert half <= place.y <= float(wide) - half
    for one, other in combinations(places, 2):
        apart = float(widths[one.bucket] + widths[other.bucket]) / 2
        assert dist((one.x, one.y), (other.x, other.y)) >= apart - 1e-9


MIXES = {
    # floor, widths, how many stand
    "all alike, as the best rows": ((240, 120), [29] * 40, 33),
    "wide and narrow in rows": ((100, 60), [40, 40, 20, 20, 20, 20, 20], 7),
    "the narrow one stays behind": ((80, 40), [40, 20, 40], 2),
    "the wide one can't, the narrow can": ((80, 30), [40, 20, 20], 2),
    "nothing to load": ((80, 30), [], 0),
}


@pytest.mark.parametrize(("floor", "widths", "count"), MIXES.values(), ids=MIXES)
def test_a_shared_floor_takes_the_widest_first(
    floor: tuple[int, int], widths: list[int], count: int
) -> None:
    assert len(on_shared_floor(*floor, widths)) == count


def test_what_stays_behind_is_the_narrowest() -> None:
    assert {place.bucket for place in on_shared_floor(80, 40, [40, 20, 40])} == {0, 2}
