"""A picture says how large its arrangement is in what the studio shows lengths in."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from corymb.picture.arrangement import Arrangement
from corymb.picture.plan import draw_plan, plan_of
from corymb.picture.words import description
from tests.picture.samples import ARRANGEMENTS

PIECE = replace(ARRANGEMENTS["hedgerow-jar"], across_cm=20.0, high_cm=40.0)


# 20 cm are 7.87 inches, 40 cm 15.75.
@pytest.mark.parametrize(
    ("unit", "said"),
    [("cm", "about 20 cm across and 40 cm high."), ("inches", "about 8 in across and 16 in high.")],
)
def test_a_picture_says_its_size_in_the_studios_unit(unit: str, said: str) -> None:
    assert description(replace(PIECE, lengths_in=unit)).endswith(said)


def test_the_bar_of_a_plan_is_a_whole_number_of_the_studios_units() -> None:
    assert bar_of(PIECE).removesuffix(" cm") in ("1", "2", "5", "10", "20", "50")
    assert bar_of(replace(PIECE, lengths_in="inches")).removesuffix(" in") in ("1", "2", "4", "6")


def bar_of(arrangement: Arrangement) -> str:
    """What is written beside the bar at the foot of a plan."""
    words = re.findall(r"<text[^>]*>([^<]+)</text>", draw_plan(plan_of(arrangement)))
    bars: list[str] = [word for word in words if word.endswith((" cm", " in"))]
    return bars[0]
