"""How large a piece is in each of its sizes: the answers are arithmetic, written in the rows."""

from __future__ import annotations

import pytest

from corymb.studio.models import Recipe
from corymb.studio.models.recipe import Vessel
from corymb.studio.values.length import Length
from corymb.studio.values.share import parse_scale
from corymb.trade.sizes import piece_size


def recipe(kind: str, across: float, high: float, vessel: tuple[float, float] | None) -> Recipe:
    return Recipe.model_construct(
        across=Length(across),
        high=Length(high),
        vessel=Vessel.model_construct(
            kind=kind,
            name=kind,
            across=Length(vessel[0]) if vessel else None,
            high=Length(vessel[1]) if vessel else None,
        ),
    )


JAR = recipe("jar", 20, 26, (9, 10))
HAND = recipe("hand", 32, 44, None)
TROUGH = recipe("trough", 65, 30, (60, 12))


@pytest.mark.parametrize(
    ("piece", "size", "across", "high", "vessel"),
    [
        pytest.param(JAR, None, 20, 26, 9, id="as written"),
        # The root of 2.25 is 1.5: 20 x 1.5 across, and 10 + 16 x 1.5 high.
        pytest.param(JAR, "2.25", 30, 34, 9, id="what stands above the rim grows"),
        # The root of 0.25 is a half: 10 across, and 10 + 16 / 2 high.
        pytest.param(JAR, "0.25", 10, 18, 9, id="and shrinks, in the same vessel"),
        pytest.param(JAR, "0.04", 9, 13.2, 9, id="never narrower than its vessel"),
        pytest.param(HAND, "0.25", 16, 22, None, id="a bunch has no rim"),
        pytest.param(TROUGH, "0.6", 39, 30, 36, id="a short trough is shorter, not lower"),
    ],
)
def test_a_size_says_how_large_its_piece_is(
    piece: Recipe, size: str | None, across: float, high: float, vessel: float | None
) -> None:
    found = piece_size(piece, parse_scale(size) if size else None)
    assert (found.across_cm, found.high_cm) == pytest.approx((across, high))
    assert found.vessel_across_cm == (pytest.approx(vessel) if vessel else None)
