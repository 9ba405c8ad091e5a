"""Chances are said in words."""

from __future__ import annotations

import pytest

from corymb.trade.season.sureness import WORDS, sureness


@pytest.mark.parametrize(
    ("chance", "word"),
    [
        (1.0, "sure"),
        (0.9, "sure"),
        (0.899, "likely"),
        (0.65, "likely"),
        (0.649, "touch and go"),
        (0.35, "touch and go"),
        (0.349, "not then"),
        (0.0, "not then"),
    ],
)
def test_a_chance_has_a_word(chance: float, word: str) -> None:
    assert sureness(chance) == word


@pytest.mark.parametrize("chance", [0.349, 0.0])
def test_the_log_may_doubt_what_the_windows_hold_and_cant_forbid_it(chance: float) -> None:
    assert sureness(chance, held=True) == "touch and go"
    assert sureness(0.9, held=True) == "sure"


def test_words_run_from_the_surest_to_the_least() -> None:
    said = list(dict.fromkeys(sureness(percent / 100) for percent in range(100, -1, -1)))
    assert said == list(WORDS)
