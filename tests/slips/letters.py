"""What happens to one letter: left out, typed twice, and what a finger hits in its place."""

from __future__ import annotations

from collections.abc import Callable
from random import Random

OfLetters = Callable[[str, int, Random], str]
"""The text with a slip at the letter of this number."""

ROWS = ("qwertyuiop", "asdfghjkl", "zxcvbnm", "1234567890-", ".,-:;'")
SIGNS = (
    *("'", '"', ":", ": ", "#", " #", "\t", "-", "- ", ",", "\n", " ", "&", "*", "!", "|", ">"),
    *("%", "@", "`", "{", "}", "[", "]", "?", "\\", "/", "->", "<b>", "&amp;"),
)
LOOKALIKES = (
    *("\u2019", "\u201c", "\u201d", "\u00a0", "\u2013", "\u2212", "\u200b", "\u202e", "\ufeff"),
    *("\u0301", "\u0000", "\u001b", "\u2028", "\u0663", "\u00bd", "\ufffd", "\U0001f33c"),
)
"""What editors, web pages and other keyboards bring: curly quotes, a hard space, a dash, marks."""


def _put(text: str, at: int, sign: str) -> str:
    return text[:at] + sign + text[at + 1 :]


def _neighbour(text: str, at: int, random: Random) -> str:
    row = next((row for row in ROWS if text[at].lower() in row), ROWS[0])
    place = max(row.find(text[at].lower()), 0)
    return _put(text, at, row[max(0, min(len(row) - 1, place + random.choice((-1, 1))))])


OF_LETTERS: dict[str, OfLetters] = {
    "a letter left out": lambda text, at, _: _put(text, at, ""),
    "a letter typed twice": lambda text, at, _: _put(text, at, text[at] * 2),
    "two letters swapped": lambda text, at, _: text[:at] + text[at : at + 2][::-1] + text[at + 2 :],
    "the key beside it": _neighbour,
    "a sign in its place": lambda text, at, random: _put(text, at, random.choice(SIGNS)),
    "a sign before it": lambda text, at, random: text[:at] + random.choice(SIGNS) + text[at:],
    "a letter that looks like it": lambda text, at, random: _put(
        text, at, random.choice(LOOKALIKES)
    ),
}
