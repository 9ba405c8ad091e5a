"""Which two stems are never out together."""

from __future__ import annotations

import pytest

from corymb.trade.season.apart import never_together
from corymb.trade.season.beds import Beds
from tests.trade.making import stem

BEDS = Beds({
    "tulip": stem("tulip", in_season="W15 - W20"),
    "daisy": stem("daisy", in_season="W35 - W42"),
    "poppy": stem("poppy", in_season="W20 - W35"),
    "ivy": stem("ivy", in_season="all year"),
})  # fmt: skip

PAIRS = {
    "two that are never out together": (["ivy", "tulip", "daisy"], ("tulip", "daisy")),
    "each with each": (["tulip", "poppy", "ivy"], None),
    "one alone": (["tulip", "tulip"], None),
}


@pytest.mark.parametrize(("stems", "pair"), PAIRS.values(), ids=PAIRS)
def test_the_first_two_without_a_common_week_are_found(
    stems: list[str], pair: tuple[str, str] | None
) -> None:
    assert never_together(stems, BEDS) == pair
