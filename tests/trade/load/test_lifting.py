"""Lifting a bucket into a vehicle: whom the words warn."""

import pytest

from corymb.trade.load.lifting import Reach, lift_words

# From the floor up close to the body the least of the zones is 7 kg for women, 10 kg for men;
# with arms extended 3 kg and 5 kg.
WARNED: dict[str, tuple[float, Reach, str]] = {
    "light": (6.9, "close to the body", "It is within the guideline filter from the floor up"),
    "at the filter": (7, "close to the body", "It is within the guideline filter"),
    "over it for women": (7.1, "close to the body", "7 kg for women, 10 kg for men) for women:"),
    "at the filter for men": (10, "close to the body", "10 kg for men) for women:"),
    "over it for all": (10.5, "close to the body", "for both women and men: look closer first"),
    "reached for": (3.5, "arms extended", "3 kg for women, 5 kg for men) for women:"),
}


@pytest.mark.parametrize(("kg", "reach", "words"), WARNED.values(), ids=WARNED)
def test_the_words_say_for_whom_to_look_closer(kg: float, reach: Reach, words: str) -> None:
    assert words in lift_words(kg, reach)


def test_a_weight_is_told_to_a_tenth_of_a_kilogram() -> None:
    assert lift_words(7.016).startswith("A full bucket weighs about 7.0 kg.")
