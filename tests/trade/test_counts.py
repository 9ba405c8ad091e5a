"""A recipe in another size: whole stems, roles kept, essentials kept."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from corymb.trade.counts import Counted, scaled, times

MIX = [
    Counted(7, "depth"),
    Counted(6, "light"),
    Counted(6, "light"),
    Counted(4, "depth"),
    Counted(3, "accent", essential=True),
]

SIZES = {
    # scale, and the counts worked out by hand: depth 11, light 12, accent 3
    "as written": ("1", [7, 6, 6, 4, 3]),
    "half": ("0.5", [4, 3, 3, 2, 2]),  # 5.5 -> 6 = 3.8 + 2.2; 6 = 3 + 3; 1.5 -> 2
    "half as much again": ("1.5", [11, 9, 9, 6, 5]),  # 16.5 -> 17 = 10.8 + 6.2; 18; 4.5 -> 5
    "a tenth": ("0.1", [1, 1, 0, 0, 1]),  # 1.1, 1.2 and 0.3: no role is lost
}


@pytest.mark.parametrize(("scale", "counts"), SIZES.values(), ids=SIZES)
def test_a_size_has_whole_stems_in_each_role(scale: str, counts: list[int]) -> None:
    assert scaled(MIX, Fraction(scale)) == counts


def test_an_essential_stem_is_kept_at_the_cost_of_the_most_plentiful_of_its_role() -> None:
    lines = [Counted(20, "light"), Counted(10, "light"), Counted(1, "light", essential=True)]
    assert scaled(lines, Fraction(1, 10)) == [1, 1, 1]


def test_a_role_keeps_room_for_all_its_essentials() -> None:
    lines = [Counted(2, "accent", True), Counted(2, "accent", True), Counted(2, "accent", True)]
    assert scaled(lines, Fraction(1, 10)) == [1, 1, 1]


LINES = st.lists(
    st.builds(
        Counted, st.integers(1, 60), st.sampled_from(("depth", "light", "accent")), st.booleans()
    ),
    min_size=1,
    max_size=15,
)


@given(LINES, st.fractions(min_value="1/20", max_value=20))
def test_every_size_keeps_each_role_and_each_essential(
    lines: list[Counted], scale: Fraction
) -> None:
    counts = scaled(lines, scale)
    assert all(count >= 0 for count in counts)
    assert all(count >= 1 for line, count in zip(lines, counts, strict=True) if line.essential)
    for role in {line.role for line in lines}:
        wanted = sum(line.count for line in lines if line.role == role) * scale
        got = sum(c for line, c in zip(lines, counts, strict=True) if line.role == role)
        essentials = sum(line.essential for line in lines if line.role == role)
        assert got >= 1
        assert got in (max(essentials, 1),) or abs(got - wanted) <= Fraction(1, 2)


@given(LINES)
def test_a_recipe_at_its_own_size_is_as_written(lines: list[Counted]) -> None:
    assert scaled(lines, Fraction(1)) == [line.count for line in lines]


def test_a_dozen_takes_twelve_times_the_stems_of_one() -> None:
    assert times([7, 0, 3], 12) == [84, 0, 36]


@pytest.mark.parametrize("scale", [0, -1])
def test_a_size_of_nothing_is_refused(scale: int) -> None:
    with pytest.raises(ValueError, match="more than nothing"):
        scaled(MIX, Fraction(scale))


def test_a_quantity_of_none_is_refused() -> None:
    with pytest.raises(ValueError, match="1 or more"):
        times([1], 0)
