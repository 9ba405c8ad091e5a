"""How far a swap may go is the studio's to say."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.studio.examples import EXAMPLES, data_of
from corymb.studio.models import StudioFile
from corymb.trade.swaps.beside import Pair, facts_of
from corymb.trade.swaps.limits import SwapLimits, limits_broken
from tests.trade.making import stem, style
from tests.trade.swaps.making import line

TOLD: dict[str, tuple[dict[str, str], SwapLimits]] = {
    "nothing": ({}, SwapLimits()),
    "the house's own": ({"colour within": "20", "most of a piece": "50 %"}, SwapLimits()),
    "colour alone": ({"colour within": "12.5"}, SwapLimits(colour=12.5)),
    "how much alone": ({"most of a piece": "30 %"}, SwapLimits(most=0.3)),
    "how many lines alone": ({"lines at most": "1"}, SwapLimits(lines=1)),
}


def house(**keys: Any) -> StudioFile:
    written = {key: data_of(text) for key, text in EXAMPLES["StudioFile"].items()}
    return StudioFile.model_validate({**written, **keys})


@pytest.mark.parametrize(("told", "limits"), TOLD.values(), ids=TOLD)
def test_what_a_studio_tells_is_taken_and_the_rest_is_the_house_s(
    told: dict[str, str], limits: SwapLimits
) -> None:
    assert SwapLimits.of(house(swaps=told)) == limits


# For one rose of 6 cm, where whole stems may show a fifth more or less.
WHOLE = {
    "7 cm": ("shows too much in whole stems",),
    "6.5 cm": (),
    "5.6 cm": (),
    "4.95 cm": ("shows too little in whole stems",),
}


@pytest.mark.parametrize(("head", "broken"), WHOLE.items(), ids=WHOLE)
def test_whole_stems_may_show_too_much_or_too_little(head: str, broken: tuple[str, ...]) -> None:
    rose, other = stem(), stem("other", head=head)
    pair = Pair(facts_of("rose", rose), facts_of("other", other))
    assert limits_broken(pair, line(1), style(), SwapLimits(area=1.2)) == broken


APART = {
    "a dried one": (
        {"vase_life": "365 days", "conditioning": {"hours": "0", "do": "Keep dry."}},
        ("dried for fresh",),
    ),
    "a pod": ({"form": "pod", "head": "8 cm"}, ("fruit for flowers",)),
    "one that hangs": ({"form": "trail", "head_length": "12 cm"}, ("hanging for flowers",)),
    "one for seven": ({"head": "15.8 cm"}, ("too big for its place", "too few to be spread")),
    "many for one": ({"head": "3 cm"}, ("too many stems for one",)),
}


@pytest.mark.parametrize(("keys", "broken"), APART.values(), ids=APART)
def test_what_sets_a_stem_apart_is_told_in_words(
    keys: dict[str, Any], broken: tuple[str, ...]
) -> None:
    pair = Pair(facts_of("rose", stem()), facts_of("other", stem("other", **keys)))
    assert limits_broken(pair, line(7), style(), SwapLimits()) == broken


def test_each_limit_that_is_broken_is_told_once() -> None:
    short = stem("other", length="6-8 cm", hazards=["thorns"])
    pair = Pair(facts_of("rose", stem()), facts_of("other", short))
    assert limits_broken(pair, line(), style(), SwapLimits()) == ("harmful", "too short")
