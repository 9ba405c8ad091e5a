"""The plain words that someone would look for a colour by."""

import pytest

from corymb.trade.colour.words import WORDS, colour_word

# Each colour by a name most people agree on: the CSS named colours (CSS Color Level 4), whose
# names were given by others, and a few of the trade's usual ones (common practice, no source).
NAMED = {
    "snow": ("#fffafa", "white"),
    "ivory": ("#fffff0", "white"),
    "cornsilk": ("#fff8dc", "cream"),
    "gold": ("#ffd700", "yellow"),
    "dark orange": ("#ff8c00", "orange"),
    "fire brick": ("#b22222", "red"),
    "hot pink": ("#ff69b4", "pink"),
    "light pink": ("#ffb6c1", "pink"),
    "salmon": ("#fa8072", "pink"),
    "medium purple": ("#9370db", "purple"),
    "lavender": ("#b57edc", "purple"),
    "royal blue": ("#4169e1", "blue"),
    "sky blue": ("#87ceeb", "blue"),
    "olive drab": ("#6b8e23", "green"),
    "forest green": ("#228b22", "green"),
    "silver": ("#c0c0c0", "grey"),
    "saddle brown": ("#8b4513", "brown"),
    "burgundy": ("#6e1426", "plum"),
    "aubergine": ("#3f1a35", "plum"),
    "bronze leaf": ("#5a3f38", "brown"),
}


@pytest.mark.parametrize(("hex_", "word"), NAMED.values(), ids=NAMED)
def test_a_colour_is_found_by_the_word_people_use(hex_: str, word: str) -> None:
    assert colour_word(hex_) == word
    assert word in WORDS
