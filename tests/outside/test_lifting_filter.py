"""Lifting, against the filter that the Health and Safety Executive publishes (INDG143)."""

from decimal import Decimal

import pytest

from corymb.trade.load import lifting
from corymb.trade.load.lifting import Reach, Who, Zone, filter_kg, lift_words

ZONES: tuple[Zone, ...] = (
    "above the shoulder",
    "shoulder to elbow",
    "elbow to knuckle",
    "knuckle to mid lower leg",
    "below mid lower leg",
)

# INDG143, figure 1, from the top down; the same in L23. Arms extended: from memory, and as
# quoted in a works guide read on pdfcoffee.com.
FIGURE_1: dict[tuple[Who, Reach], list[int]] = {
    ("men", "close to the body"): [10, 20, 25, 20, 10],
    ("men", "arms extended"): [5, 10, 15, 10, 5],
    ("women", "close to the body"): [7, 13, 16, 13, 7],
    ("women", "arms extended"): [3, 7, 10, 7, 3],
}


@pytest.mark.parametrize(("who", "reach"), FIGURE_1, ids=[" ".join(key) for key in FIGURE_1])
def test_the_filter_is_that_of_figure_1(who: Who, reach: Reach) -> None:
    assert [filter_kg(who, zone, reach) for zone in ZONES] == FIGURE_1[who, reach]


# INDG143: one or two a minute 30 % less, five to eight 50 %, over twelve 80 %; twisted beyond
# 45 degrees 10 % less, beyond 90 degrees 20 %. Women, elbow to knuckle, close: 16 kg.
REDUCED = {
    "30 an hour": (0.5, 0, "16"),
    "once a minute": (1, 0, "11.2"),
    "twice a minute": (2, 0, "11.2"),
    "five a minute": (5, 0, "8"),
    "eight a minute": (8, 0, "8"),
    "thirteen a minute": (13, 0, "3.2"),
    "twisted by 45 degrees": (0, 45, "16"),
    "twisted beyond 45 degrees": (0, 46, "14.4"),
    "twisted by 90 degrees": (0, 90, "14.4"),
    "twisted beyond 90 degrees": (0, 91, "12.8"),
    "once a minute and twisted": (1, 60, "10.08"),
    "four a minute, between two ranges": (4, 0, "8"),
    "ten a minute, between two ranges": (10, 0, "3.2"),
}


@pytest.mark.parametrize(("often", "twist", "kg"), REDUCED.values(), ids=REDUCED)
def test_the_filter_falls_with_lifting_often_and_with_twisting(
    often: float, twist: float, kg: str
) -> None:
    told = filter_kg(
        "women", "elbow to knuckle", "close to the body", per_minute=often, twist_degrees=twist
    )
    assert told == Decimal(kg)


# "They are not 'safe limits' for lifting": hse.gov.uk/msd/manual-handling-risk-filters.htm
@pytest.mark.parametrize("kg", [2, 7, 7.1, 10, 10.1, 30])
def test_the_words_speak_of_a_filter_and_never_of_a_limit(kg: float) -> None:
    words = lift_words(kg)
    assert "filter" in words
    assert "guideline" in words
    for text in (words.casefold(), (lifting.__doc__ or "").casefold()):
        assert "safe limit" not in text
        assert "legal limit" not in text
    assert "limit" not in words
    assert "your local rules" in words
    assert "a qualified person" in words
