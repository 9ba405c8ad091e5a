"""One piece of an order's line, as it will be made: whole stems, and whether it is as written."""

from __future__ import annotations

import pytest

from corymb.trade.changes import LookLine
from corymb.trade.cut import Fill
from corymb.trade.looks import Look
from corymb.trade.orders.as_cut import Met
from corymb.trade.orders.due import DueLine
from corymb.trade.orders.one_made import half_up, one_made
from corymb.trade.orders.pieces import Piece


def line(stem: str, count: int, role: str = "light") -> LookLine:
    return LookLine(stem, count, role, None, False, "")


LOOK = Look("jar", "", (line("cosmos", 5), line("zinnia", 2, "accent")), ())


def met(of: LookLine, wanted: int, short: int, *fills: tuple[str, int, int]) -> Met:
    return Met(of, wanted, tuple(Fill(stem, count, of) for stem, count, of in fills), (), short)


COSMOS, ZINNIA = LOOK.lines
PLAIN = (met(COSMOS, 20, 0, ("cosmos", 20, 20)), met(ZINNIA, 8, 0, ("zinnia", 8, 8)))
SWAPPED = (
    met(COSMOS, 20, 0, ("cosmos", 8, 8), ("scabious", 18, 12)),
    met(ZINNIA, 8, 0, ("zinnia", 8, 8)),
)
SHORT = (met(COSMOS, 20, 20), met(ZINNIA, 8, 0, ("zinnia", 8, 8)))
TWICE = (met(COSMOS, 20, 0, ("mint", 20, 20)), met(line("mint", 1), 4, 0, ("mint", 4, 4)))


@pytest.mark.parametrize(
    ("mets", "stems", "as_written", "alike"),
    [
        pytest.param(PLAIN, {"cosmos": 5, "zinnia": 2}, True, True, id="as written"),
        # 18 scabious for four pieces: 4.5 each, so two of them get five.
        pytest.param(
            SWAPPED, {"cosmos": 2, "scabious": 5, "zinnia": 2}, False, False, id="with a stand-in"
        ),
        pytest.param(SHORT, {"zinnia": 2}, False, True, id="what is missing is not in it"),
        pytest.param(TWICE, {"mint": 6}, False, True, id="one stem for one part is one line"),
    ],
)
def test_one_piece_has_what_the_cut_gives_it(
    mets: tuple[Met, ...], stems: dict[str, int], as_written: bool, alike: bool
) -> None:
    due = DueLine(1, 4, Piece.__new__(Piece))
    object.__setattr__(due.piece, "look", LOOK)
    made = one_made(due, mets)
    assert {each.stem: each.count for each in made.look.lines} == stems
    assert (made.as_written, made.all_alike) == (as_written, alike)
    assert made.look.id == LOOK.id


@pytest.mark.parametrize(
    ("count", "pieces", "one"), [(20, 4, 5), (18, 4, 5), (17, 4, 4), (1, 3, 0), (2, 3, 1)]
)
def test_a_piece_gets_the_nearest_whole_stem(count: int, pieces: int, one: int) -> None:
    assert half_up(count, pieces) == one
