"""What comes nearest where nothing within the limits does."""

from __future__ import annotations

from typing import Any

import pytest

from corymb.trade.swaps.beyond import Beyond, Nearest, Place
from corymb.trade.swaps.limits import SwapLimits
from tests.trade.making import stem, style
from tests.trade.swaps.making import line

WEEKS = 10
HERE: dict[str, Any] = {"length": "20-40 cm", "weight": "20 g"}
"""What a stem of the tests is like, unless it says otherwise: the rose is blush, 6 cm across."""


def nearest(
    stands: dict[str, int] | None = None,
    barred: tuple[str, ...] = (),
    count: int = 6,
    **others: dict[str, Any],
) -> Nearest | None:
    """What comes nearest to some roses in a posy, among these; all stand in all weeks if untold."""
    stems = {name: stem(name, **{**HERE, **keys}) for name, keys in {"rose": {}, **others}.items()}
    roses = line(count, role="light", essential=True)
    weeks = dict.fromkeys(stems, WEEKS) | (stands or {})
    return Beyond(stems, SwapLimits()).nearest(Place(roses, style(), weeks, WEEKS, barred))


BLUSH, BROWN = ["blush e6c4b0 100 %"], ["brown 805030 100 %"]

AGAINST = {
    "nothing": ({"colours": BLUSH}, ()),
    "colour": ({"colours": ["yellow e8d060 100 %"]}, ("further off in colour",)),
    "colour and role": ({"colours": BROWN}, ("too dark for light", "further off in colour")),
    "length": ({"colours": BLUSH, "length": "8-10 cm"}, ("too short",)),
    "weight": ({"colours": BLUSH, "weight": "60 g"}, ("too heavy",)),
    "small heads": ({"colours": BLUSH, "head": "2 cm"}, ("too many stems for one",)),
    "huge heads": (
        {"colours": BLUSH, "head": "18 cm"},
        ("too big for its place", "too few to be spread"),
    ),
}


@pytest.mark.parametrize(("keys", "against"), AGAINST.values(), ids=AGAINST)
def test_what_speaks_against_a_swap_is_told(keys: dict[str, Any], against: tuple[str, ...]) -> None:
    found = nearest(dahlia=keys)
    assert found and (found.swap.in_, found.against) == ("dahlia", against)


# For one rose of 6 cm: 9.5 cm show 2.5 times its area, 7.5 cm 1.56 times, 4.95 cm 0.68 times.
IN_WHOLE_STEMS = {
    "far too much": ("9.5 cm", ("shows too much in whole stems",)),
    "as much as may be": ("7.5 cm", ()),
    "a little less": ("4.95 cm", ()),
}


@pytest.mark.parametrize(("head", "against"), IN_WHOLE_STEMS.values(), ids=IN_WHOLE_STEMS)
def test_what_whole_stems_would_show_is_told_as_well(head: str, against: tuple[str, ...]) -> None:
    found = nearest(count=1, dahlia={"colours": BLUSH, "head": head})
    assert found and found.against == against


def test_one_that_keeps_the_limits_comes_before_one_that_doesn_t() -> None:
    found = nearest(dahlia={"colours": BLUSH, "weight": "60 g"}, zinnia={"colours": BLUSH})
    assert found and found.swap.in_ == "zinnia"


def test_one_that_stands_in_all_the_weeks_comes_before_one_a_little_liker() -> None:
    others: dict[str, Any] = {
        "aster": {"colours": ["blush e8c2b4 100 %"]},
        "zinnia": {"colours": BLUSH},
    }
    found = nearest({"aster": 6}, **others)
    assert found and (found.swap.in_, found.weeks) == ("zinnia", 10)
    found = nearest({"zinnia": 6}, **others)
    assert found and (found.swap.in_, found.weeks) == ("aster", 10)


NEVER = {
    "a hazard the style leaves out": ({}, (), {"hazards": ["poisonous if eaten"]}),
    "another use": ({}, (), {"use": "foliage"}),
    "fewer than half of the weeks": ({"dahlia": 4}, (), {}),
    "one that is in the look already": ({}, ("dahlia",), {}),
}


@pytest.mark.parametrize(("stands", "barred", "keys"), NEVER.values(), ids=NEVER)
def test_what_mends_nothing_or_might_hurt_is_never_named(
    stands: dict[str, int], barred: tuple[str, ...], keys: dict[str, Any]
) -> None:
    assert nearest(stands, barred, dahlia={"colours": BLUSH, **keys}) is None


def test_a_swap_shows_as_much_as_what_it_stands_for() -> None:
    # Heads of 3 cm for heads of 6: a quarter of the area each, four for one.
    found = nearest(dahlia={"colours": BLUSH, "head": "3 cm"})
    assert found and (found.swap.out_count, found.swap.in_count) == (6, 24)
