"""A look once its swaps are made."""

from __future__ import annotations

from decimal import Decimal

from corymb.studio.values.share import Scale
from corymb.trade.changes import LookLine
from corymb.trade.looks import Look, sized
from corymb.trade.swaps.made import swapped_stage, with_swaps
from corymb.trade.swaps.standing_in import StandIn
from tests.trade.swaps.making import line

LINES = (
    LookLine("rose", 6, "light", None, True, "facing you"),
    LookLine("poppy", 3, "accent", "filler", False, "cut short"),
    LookLine("poppy", 4, "depth", None, False, ""),
    LookLine("mint", 5, "depth", None, False, ""),
)
LOOK = Look("gate-jar", "", LINES, LINES)


def swap(out: str, in_: str, role: str, out_count: int, in_count: int) -> StandIn:
    return StandIn(out, in_, role, out_count, in_count, 5.0, 1.0, 0, True, 5.0)


SMALL = Scale(Decimal("0.5"))
SWAPS = (swap("poppy", "zinnia", "accent", 3, 5), swap("mint", "sage", "depth", 5, 2))


def test_what_comes_in_takes_the_part_and_the_place_of_what_goes_out() -> None:
    made = with_swaps(LOOK, SWAPS)
    assert made.lines == (
        LINES[0],
        LookLine("zinnia", 5, "accent", "filler", False, ""),
        LINES[2],
        LookLine("sage", 2, "depth", None, False, ""),
    )
    assert (made.recipe, made.parent_lines) == ("gate-jar", LINES)


def test_a_look_without_swaps_is_as_it_was() -> None:
    assert with_swaps(LOOK, ()) == LOOK


def test_in_another_size_what_stands_in_comes_for_what_that_size_would_have_had() -> None:
    # Feverfew for depth is twelve of thirteen: half of it all is six of seven, whatever comes in.
    lines = (line(12, "feverfew", "depth"), line(1, "mint", "depth"), line(4, "rose", "light"))
    look = Look("gate-jar", "", lines, lines)
    made = with_swaps(look, [swap("feverfew", "moons", "depth", 12, 4)])
    assert sized(look, SMALL) == [6, 1, 2]
    assert sized(made, SMALL) == [2, 1, 2]
    assert sized(made, None) == [4, 1, 4]


def test_a_swapped_line_never_falls_to_nothing_where_its_own_line_would_stand() -> None:
    # One moon for four feverfew: half of the light is four of seven, and the moon stays.
    lines = (line(4, "feverfew", "light"), line(3, "scabious", "light"))
    look = Look("gate-jar", "", lines, lines)
    made = with_swaps(look, [swap("feverfew", "moons", "light", 4, 1)])
    assert sized(look, SMALL) == [2, 2]
    assert sized(made, SMALL) == [1, 2]


def test_what_a_size_leaves_out_isn_t_brought_back_by_a_swap() -> None:
    lines = (line(1, "feverfew", "light"), line(9, "scabious", "light"))
    made = with_swaps(
        Look("gate-jar", "", lines, lines), [swap("feverfew", "moons", "light", 1, 1)]
    )
    assert sized(made, Scale(Decimal("0.2"))) == [0, 2]


def test_words_are_told_of_swaps_as_of_a_variants() -> None:
    stage = swapped_stage(LOOK, SWAPS)
    assert [(each.out, each.in_) for each in stage.of.swap] == [
        ("poppy", "zinnia"),
        ("mint", "sage"),
    ]
    assert stage.lines == with_swaps(LOOK, SWAPS).lines
