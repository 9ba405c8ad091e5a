"""What is the least way of carrying one palette's colours over into another's?"""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.likeness import Palette, apart, palette
from corymb.trade.colour.transport import carried, distance

WHITE, RED, PINK, LEAF = "#f7f3ea", "#a11d2e", "#e8a0a8", "#5d7350"
COLOURS = [WHITE, RED, PINK, LEAF, "#2b1430", "#f2c84b", "#6f86c4", "#f4efe6"]
PARTS = st.lists(
    st.tuples(st.sampled_from(COLOURS), st.floats(0.01, 1)), min_size=1, max_size=8
).map(palette)
SIXTHS = st.lists(st.sampled_from(COLOURS), min_size=6, max_size=6)

FAR = difference(WHITE, RED)

KNOWN = {
    "nothing and nothing": ([], [], 0),
    "the same": ([(RED, 1)], [(RED, 1)], 0),
    "one colour and another": ([(WHITE, 1)], [(RED, 1)], FAR),
    "half of it stays": ([(WHITE, 1)], [(WHITE, 1), (RED, 1)], FAR / 2),
    "an edge and a heart changed about": (
        [(WHITE, 9), (RED, 1)],
        [(WHITE, 1), (RED, 9)],
        0.8 * FAR,
    ),
    "three into one": (
        [(WHITE, 2), (RED, 1), (PINK, 1)],
        [(LEAF, 1)],
        difference(WHITE, LEAF) / 2 + difference(RED, LEAF) / 4 + difference(PINK, LEAF) / 4,
    ),
    "two into two, crossed or not": (
        [(WHITE, 1), (RED, 1)],
        [(PINK, 1), (LEAF, 1)],
        min(
            difference(WHITE, PINK) + difference(RED, LEAF),
            difference(WHITE, LEAF) + difference(RED, PINK),
        )
        / 2,
    ),
}


@pytest.mark.parametrize(("one", "other", "expected"), KNOWN.values(), ids=KNOWN.keys())
def test_it_is_worked_out_as_by_hand(
    one: list[tuple[str, float]], other: list[tuple[str, float]], expected: float
) -> None:
    assert distance(palette(one), palette(other)) == pytest.approx(expected, abs=1e-9)


def test_it_doesnt_go_astray_where_the_likest_first_does() -> None:
    """With the two middle greys paired, the darkest has all the way to the lightest to go."""
    darkest, dark, light, lightest = "#3c3c3c", "#646464", "#686868", "#8c8c8c"
    one, other = palette([(darkest, 1), (light, 1)]), palette([(dark, 1), (lightest, 1)])
    least = (difference(darkest, dark) + difference(light, lightest)) / 2
    assert distance(one, other) == pytest.approx(least)
    assert apart(one, other) > least + 1


def test_with_room_to_spare_nothing_goes_further_than_it_must() -> None:
    """Half of the white finds white; with twice the room all of it does, and the red is left."""
    one, other = palette([(WHITE, 1)]), palette([(WHITE, 1), (RED, 1)])
    assert distance(one, other, room=1.5) == pytest.approx(FAR / 4)
    assert distance(one, other, room=2.0) == pytest.approx(0, abs=1e-9)
    assert distance(other, one, room=2.0) == pytest.approx(FAR / 2)


def test_only_one_without_colours_is_no_palette_to_compare() -> None:
    with pytest.raises(ValueError, match="no colours to compare with"):
        distance(palette([(RED, 1)]), ())


@given(PARTS, PARTS)
def test_it_is_the_same_either_way_round_and_nothing_to_itself(
    one: Palette, other: Palette
) -> None:
    assert distance(one, other) == distance(other, one)
    assert distance(one, one) == pytest.approx(0, abs=1e-9)


@given(PARTS, PARTS)
def test_it_is_never_longer_than_the_likest_first(one: Palette, other: Palette) -> None:
    assert distance(one, other) <= apart(one, other) + 1e-9


@given(PARTS, PARTS)
def test_all_of_the_one_arrives_and_fills_the_other(one: Palette, other: Palette) -> None:
    parts = carried(one, other)
    for hex_, share in one:
        assert sum(p.share for p in parts if p.hex == hex_) == pytest.approx(share, abs=1e-9)
    for hex_, share in other:
        assert sum(p.share for p in parts if p.to == hex_) == pytest.approx(share, abs=1e-9)


@settings(max_examples=40, deadline=None)
@given(SIXTHS, SIXTHS)
def test_no_way_of_pairing_whole_sixths_is_shorter(one: list[str], other: list[str]) -> None:
    """Equal shares are best carried whole (G. Birkhoff, 1946), so all pairings are all there is."""
    pairings = permutations(other)
    least = min(sum(map(difference, one, pairing)) for pairing in pairings) / 6
    first, second = (palette((hex_, 1 / 6) for hex_ in side) for side in (one, other))
    assert distance(first, second) == pytest.approx(least, abs=1e-9)


@given(PARTS, PARTS, PARTS)
def test_a_way_round_by_a_third_is_hardly_shorter(
    one: Palette, other: Palette, third: Palette
) -> None:
    """CIEDE2000 itself isn't quite a metric; no such way is shorter by more than a half."""
    assert distance(one, other) <= 1.5 * (distance(one, third) + distance(third, other)) + 1e-9
