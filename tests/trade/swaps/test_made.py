"""A look once its swaps are made."""

from __future__ import annotations

from corymb.trade.changes import LookLine
from corymb.trade.looks import Look
from corymb.trade.swaps.made import swapped_stage, with_swaps
from corymb.trade.swaps.standing_in import StandIn

LINES = (
    LookLine("rose", 6, "light", None, True, "facing you"),
    LookLine("poppy", 3, "accent", "filler", False, "cut short"),
    LookLine("poppy", 4, "depth", None, False, ""),
    LookLine("mint", 5, "depth", None, False, ""),
)
LOOK = Look("gate-jar", "", LINES, LINES)


def swap(out: str, in_: str, role: str, out_count: int, in_count: int) -> StandIn:
    return StandIn(out, in_, role, out_count, in_count, 5.0, 1.0, 0, True, 5.0)


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


def test_words_are_told_of_swaps_as_of_a_variants() -> None:
    stage = swapped_stage(LOOK, SWAPS)
    assert [(each.out, each.in_) for each in stage.of.swap] == [
        ("poppy", "zinnia"),
        ("mint", "sage"),
    ]
    assert stage.lines == with_swaps(LOOK, SWAPS).lines
