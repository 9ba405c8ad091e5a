"""How alike are the colours of two stems, or of two arrangements?"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.colour.ciede2000 import difference
from corymb.trade.colour.likeness import (
    LARGEST,
    apart,
    mean_lab,
    palette,
    palette_of,
)
from tests.trade.making import stem

WHITE, RED, PINK = "#f7f3ea", "#a11d2e", "#e8a0a8"

PARTS = st.lists(
    st.tuples(
        st.sampled_from([WHITE, RED, PINK, "#5d7350", "#2b1430", "#f2c84b", "#6f86c4"]),
        st.floats(0.01, 1),
    ),
    min_size=1,
    max_size=6,
)

FAR = difference(WHITE, RED)
KNOWN = {
    "the same": ([(RED, 1)], [(RED, 1)], 0),
    "the same, told in parts": ([(RED, 0.5), (RED, 0.5)], [(RED, 1)], 0),
    "the same at any scale": ([(RED, 3), (WHITE, 1)], [(RED, 0.75), (WHITE, 0.25)], 0),
    "one colour and another": ([(WHITE, 1)], [(RED, 1)], FAR),
    "half of it stays": ([(WHITE, 1)], [(WHITE, 0.5), (RED, 0.5)], FAR / 2),
    "an edge and a heart changed about": (
        [(WHITE, 0.9), (RED, 0.1)],
        [(WHITE, 0.1), (RED, 0.9)],
        0.8 * FAR,
    ),
}


@pytest.mark.parametrize(("one", "other", "distance"), KNOWN.values(), ids=KNOWN)
def test_palettes_are_as_far_apart_as_their_shares_travel(
    one: list[tuple[str, float]], other: list[tuple[str, float]], distance: float
) -> None:
    assert apart(palette(one), palette(other)) == pytest.approx(distance)


def test_a_stem_is_as_far_from_another_as_its_colours_are() -> None:
    white = stem("white", colours=["white f7f3ea 90 %", "red a11d2e 10 %"])
    red = stem("red", colours=["red a11d2e 90 %", "white f7f3ea 10 %"])
    pale, deep = palette_of(white), palette_of(red)
    assert apart(pale, deep) == pytest.approx(0.8 * FAR)
    assert apart(deep, pale) == apart(pale, deep)
    assert apart(deep, deep) == 0


@given(PARTS, PARTS)
def test_it_is_the_same_either_way_round_and_no_further_than_the_furthest_colours(
    one: list[tuple[str, float]], other: list[tuple[str, float]]
) -> None:
    distance = apart(palette(one), palette(other))
    assert distance == pytest.approx(apart(palette(other), palette(one)), abs=1e-9)
    assert 0 <= distance <= max(difference(a, b) for a, _ in one for b, _ in other) + 1e-9


@given(PARTS, PARTS)
def test_lightness_alone_is_never_further_apart_than_the_colours(
    one: list[tuple[str, float]], other: list[tuple[str, float]]
) -> None:
    """So a stem that is far lighter can be passed over without looking at its colours."""
    a, b = palette(one), palette(other)
    assert apart(a, b) >= abs(mean_lab(a)[0] - mean_lab(b)[0]) / 1.75 - 1e-9


@given(PARTS)
def test_the_order_in_which_colours_are_told_makes_no_difference(
    parts: list[tuple[str, float]],
) -> None:
    told, turned = dict(palette(parts)), dict(palette(reversed(parts)))
    assert told.keys() == turned.keys()
    assert list(told.values()) == pytest.approx([turned[hex_] for hex_ in told])
    assert sum(told.values()) == pytest.approx(1)


def test_only_the_largest_colours_stand_for_an_arrangement() -> None:
    many = [(f"#0000{blue:02x}", 1.0 + blue) for blue in range(LARGEST + 4)]
    kept = palette(many)
    assert [hex_ for hex_, _ in kept] == [f"#0000{blue:02x}" for blue in range(11, 3, -1)]
    assert sum(share for _, share in kept) == pytest.approx(1)


def test_nothing_is_like_nothing_and_can_be_compared_with_nothing_else() -> None:
    assert apart((), ()) == 0
    with pytest.raises(ValueError, match="no colours to compare with"):
        apart(((RED, 1.0),), ())
