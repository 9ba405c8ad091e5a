"""How far a swap may go is the studio's to say."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.examples import EXAMPLES, data_of
from corymb.studio.models import StudioFile
from corymb.trade.swaps.standing_in import SwapLimits

TOLD: dict[str, tuple[dict[str, str], SwapLimits]] = {
    "nothing": ({}, SwapLimits()),
    "the house's own": ({"colour within": "20", "most of a piece": "50 %"}, SwapLimits()),
    "colour alone": ({"colour within": "12.5"}, SwapLimits(colour=12.5)),
    "how much alone": ({"most of a piece": "30 %"}, SwapLimits(most=0.3)),
}


def house(**keys: Any) -> StudioFile:
    written = {key: data_of(text) for key, text in EXAMPLES["StudioFile"].items()}
    return StudioFile.model_validate({**written, **keys})


@pytest.mark.parametrize(("told", "limits"), TOLD.values(), ids=TOLD)
def test_what_a_studio_tells_is_taken_and_the_rest_is_the_house_s(
    told: dict[str, str], limits: SwapLimits
) -> None:
    assert SwapLimits.of(house(swaps=told)) == limits
