"""Which passphrases are refused, and is the one that is offered good?"""

from __future__ import annotations

import math
import re

import pytest

from corymb.site.locked.strength import CONSONANTS, GROUPS, VOWELS, fault, made_by_chance

NAMES = ("Teasel & Rook", "Dunmallow")

WEAK = {
    "too short": ("plum lamp oar", "This has 13 characters."),
    "short but for spaces at its end": ("plum lamp oar   ", "This has 13 characters."),
    "of two lines": ("plum lamp oar\nvelvet kite", "can't be typed"),
    "with a byte that was no letter": ("plum lamp oar v\udce4lvet kite", "can't be typed"),
    "with the mark of a file": ("\ufeffplum lamp oar velvet kite", "can't be typed"),
    "one letter": ("a" * 20, "guessed first"),
    "one piece again and again": ("lampoar-lampoar-lampoar-", "guessed first"),
    "few letters": ("ababbabaabbababba", "guessed first"),
    "the alphabet": ("abcdefghijklmnopqrs", "guessed first"),
    "numbers in a row": ("123456789012345678", "guessed first"),
    "along the keyboard": ("qwertyuiopasdfghjkl", "guessed first"),
    "back along it": ("poiuytrewqlkjhgfdsa", "guessed first"),
    "a common word with a year": ("Password Password 2026!", "guessed first"),
    "a famous one": ("Correct-Horse-Battery-Staple", "guessed first"),
    "the studio's name with a year": ("TeaselAndRook2026", "guessed first"),
    "the studio's name and place": ("teasel rook dunmallow!", "guessed first"),
}
GOOD = (
    "plum lamp oar velvet kite",
    "teasel lamp oar velvet kite",
    "bako-rimu-tesa-hofi",
    "mauve ladder, 7 otters",
    "fünf blaue Hüte im Schnee",
    "五つの青い帽子と長い梯子が雪の中に",
)


@pytest.mark.parametrize("row", WEAK)
def test_what_is_guessed_first_is_refused_with_advice(row: str) -> None:
    passphrase, wrong = WEAK[row]
    said = fault(passphrase, NAMES)
    assert said is not None and wrong in said
    assert "five words that have nothing to do with each other" in said
    assert passphrase.strip() not in said


@pytest.mark.parametrize("passphrase", GOOD)
def test_a_long_one_that_is_nobodys_first_guess_is_taken(passphrase: str) -> None:
    assert fault(passphrase, NAMES) is None


def test_the_one_offered_is_good_and_never_the_same() -> None:
    made = [made_by_chance() for _ in range(50)]
    assert len(set(made)) == 50
    assert [each for each in made if fault(each, NAMES)] == []
    assert all(re.fullmatch(r"[a-z]{4}(-[a-z]{4}){5}", each) for each in made)


def test_the_one_offered_stands_for_more_than_70_bits() -> None:
    """Each bit doubles the guesses."""
    syllables = len(set(CONSONANTS)) * len(set(VOWELS))
    assert math.log2(syllables) * 2 * GROUPS > 70
