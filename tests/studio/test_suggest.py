"""A misspelt word is answered with the known word it was meant to be."""

import pytest

from corymb.studio.suggest import did_you_mean, nearest, quoted

KEYS = ("in season", "at best", "vase life", "stems per bucket", "head length", "hazards", "head")
STEMS = ("dahlia-shell", "dahlia-ember", "sweet-pea-plum", "scabious-plum", "smoke-bush")


@pytest.mark.parametrize(
    ("word", "known", "first"),
    [
        pytest.param("in_season", KEYS, "in season", id="underscore for space"),
        pytest.param("In Season", KEYS, "in season", id="capitals"),
        pytest.param("inseason", KEYS, "in season", id="no space"),
        pytest.param("hazard", KEYS, "hazards", id="singular for plural"),
        pytest.param("heads", KEYS, "head", id="plural for singular"),
        pytest.param("stem per bucket", KEYS, "stems per bucket", id="one s short"),
        pytest.param("vaselive", KEYS, "vase life", id="a slip"),
        pytest.param("dahlia shell", STEMS, "dahlia-shell", id="space for hyphen"),
        pytest.param("smokebush", STEMS, "smoke-bush", id="no hyphen"),
        pytest.param("sweet-pea-plumm", STEMS, "sweet-pea-plum", id="a letter twice"),
        pytest.param("sacbious-plum", STEMS, "scabious-plum", id="letters turned"),
    ],
)
def test_the_nearest_word_comes_first(word: str, known: tuple[str, ...], first: str) -> None:
    assert nearest(word, known)[0] == first


def test_a_word_that_differs_only_in_spelling_is_offered_alone() -> None:
    assert nearest("Dahlia Shell", STEMS) == ["dahlia-shell"]


@pytest.mark.parametrize("word", ["zzz", "", " ", "-", "banana"])
def test_a_strange_word_is_not_answered_with_a_guess(word: str) -> None:
    assert nearest(word, KEYS) == []
    assert did_you_mean(word, KEYS) == ""


def test_no_more_words_are_offered_than_asked_for() -> None:
    assert len(nearest("aaaax", [f"aaaa{n}" for n in range(20)], limit=3)) == 3


def test_one_guess_is_a_question_with_one_word() -> None:
    assert did_you_mean("smokebush", STEMS) == " Did you mean ‘smoke-bush’?"


def test_two_guesses_as_good_as_each_other_are_a_question_with_two_words() -> None:
    assert did_you_mean("cm2", ("cm", "mm", "m")) == " Did you mean ‘cm’?"
    assert did_you_mean("cmm", ("cm", "mm", "m")) == " Did you mean ‘cm’ or ‘mm’?"


def test_a_very_long_word_is_shortened_in_messages() -> None:
    assert quoted("x" * 200) == f"‘{'x' * 57}…’"
