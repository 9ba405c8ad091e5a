"""Which stems are dried?"""

from __future__ import annotations

import pytest

from corymb.trade.dried import is_dried
from tests.trade.making import stem

STEMS = {
    "dried statice": (0, "180-365 days", True),
    "a seed head that keeps for a month or two": (0, "30-60 days", True),
    "one that goes into a crown at once": (0, "2-3 days", False),
    "a long-lived twig": (2, "21-28 days", False),
    "orchids that drink": (6, "60-90 days", False),
}


@pytest.mark.parametrize(("hours", "vase_life", "dried"), STEMS.values(), ids=STEMS)
def test_dried_is_what_needs_no_water_and_keeps_for_months(
    hours: int, vase_life: str, dried: bool
) -> None:
    conditioning = {"hours": str(hours), "do": "As it needs."}
    assert is_dried(stem(vase_life=vase_life, conditioning=conditioning)) == dried
