"""When it could be made last, and when it can be next."""

from __future__ import annotations

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.either_side import either_side

# 2026 has 53 weeks, 2025 and 2027 have 52; a 53rd is answered as the 52nd.
SIDES = {
    "within a year": ({20, 30}, (2026, 25), ((2026, 20), (2026, 30))),
    "the nearest of many": (set(range(20, 31)), (2026, 40), ((2026, 30), (2027, 20))),
    "back over the new year": ({40, 20}, (2027, 2), ((2026, 40), (2027, 20))),
    "to a 53rd week": ({52}, (2027, 2), ((2026, 53), (2027, 52))),
    "one week of the year": ({20}, (2026, 21), ((2026, 20), (2027, 20))),
}


@pytest.mark.parametrize(("can", "week", "sides"), SIDES.values(), ids=SIDES)
def test_the_nearest_weeks_are_told_on_either_side(
    can: set[int], week: tuple[int, int], sides: tuple[tuple[int, int], tuple[int, int]]
) -> None:
    found = either_side(can, IsoWeek(*week))
    assert found == tuple(IsoWeek(*side) for side in sides)


def test_what_can_never_be_made_has_no_nearest_week() -> None:
    assert either_side(set(), IsoWeek(2026, 20)) is None
