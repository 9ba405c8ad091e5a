"""Lifting, against the filter that the Health and Safety Executive publishes (INDG143)."""

import pytest

from corymb.trade.load import lifting
from corymb.trade.load.lifting import FILTER_KG, Reach, Who, Zone, lift_words

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
    assert [FILTER_KG[who][zone][reach] for zone in ZONES] == FIGURE_1[who, reach]


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


# INDG143: one or two lifts a minute 30 % less; twisted beyond 45 degrees 10 % less.
def test_the_words_say_when_the_filter_is_less() -> None:
    words = lift_words(5)
    assert "30 % less where one lifts once or twice a minute" in words
    assert "10 % less where one turns at the waist" in words
