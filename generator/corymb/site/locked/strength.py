"""Is a passphrase good enough to stand against someone who has the files and all the time?

Nothing can slow such a one down but the passphrase itself and what each guess costs. NIST SP
800-63B (revision 4, 2025) asks for 15 characters where a password is all there is, and for none
that are common or about oneself. So whatever is guessed first is taken out before counting: common
words and phrases, years, runs along the alphabet or a keyboard, the studio's own names.
"""

from __future__ import annotations

import re
import secrets
from collections.abc import Iterable
from unicodedata import category, normalize

LEAST = 15
LEAST_LEFT = 10  # once all that is guessed first is taken out; our own measure
LEAST_DIFFERENT = 6  # so is this
LEAST_OF_A_NAME = 4  # shorter words of a name are in too many others

COMMON = (
    *("correct horse battery staple", "to be or not to be", "the quick brown fox"),
    *("may the force be with you", "open sesame", "let me in", "i love you", "trust no one"),
    *("passphrase", "password", "passwort", "welcome", "sunshine", "princess", "football"),
    *("baseball", "superman", "iloveyou", "dragon", "monkey", "master", "secret", "admin"),
    *("login", "staff", "studio", "florist", "flowers", "flower", "garden", "corymb"),
)
ROWS = (
    *("abcdefghijklmnopqrstuvwxyz", "01234567890"),
    *("qwertyuiop", "qwertzuiop", "asdfghjkl", "zxcvbnm", "yxcvbnm"),
)
RUN = 4
YEAR = re.compile(r"(?:19|20)\d\d")
MARKS = re.compile(r"[\W_]+")

NEVER_TYPED = ("Cc", "Cs", "Cn", "Zl", "Zp")
"""Kinds of characters that no phone's keyboard has: ends of lines, halves of characters, none."""
MARK_OF_FILES = "\ufeff"  # a browser takes it off the ends of what is typed, and we wouldn't

CONSONANTS, VOWELS = "bdfghjklmnprstvz", "aeiou"
GROUPS = 6
"""Of two syllables each, 80 to choose from: six groups are 80 to the power of 12, 75 bits."""

ADVICE = (
    "A passphrase has {least} characters at least, such as five words that have nothing to do with "
    "each other, with you or with flowers. What is short, famous or near at hand is guessed first. "
    "One that was made just now by chance: {made}"
)


def fault(passphrase: str, names: Iterable[str] = ()) -> str | None:
    """What is wrong with a passphrase, and what would be right; `names` are the studio's own."""
    text = normalize("NFKC", passphrase).strip()
    left = left_over(text, names)
    if any(category(each) in NEVER_TYPED or each == MARK_OF_FILES for each in text):
        wrong = "This holds what can't be typed, such as the end of a line."
    elif len(text) < LEAST:
        wrong = f"This has {len(text)} characters."
    elif len(left) < LEAST_LEFT or len(set(left)) < LEAST_DIFFERENT or _repeats(text):
        wrong = "This is among what is guessed first."
    else:
        return None
    return f"{wrong} {ADVICE.format(least=LEAST, made=made_by_chance())}"


def left_over(passphrase: str, names: Iterable[str] = ()) -> str:
    """The letters and numbers that remain when everything guessed first is taken out."""
    left = MARKS.sub("", passphrase.casefold())
    own = (word for name in names for word in re.findall(r"\w+", name.casefold()))
    known = [MARKS.sub("", words) for words in COMMON]
    known += [word for word in own if len(word) >= LEAST_OF_A_NAME]
    for word in sorted(known, key=len, reverse=True):
        left = left.replace(word, "")
    return _without_runs(YEAR.sub("", left))


def made_by_chance() -> str:
    """A passphrase that can be said aloud and typed on any keyboard."""
    return "-".join("".join(_syllable() + _syllable()) for _ in range(GROUPS))


def _syllable() -> str:
    return secrets.choice(CONSONANTS) + secrets.choice(VOWELS)


def _without_runs(text: str) -> str:
    for row in (*ROWS, *(row[::-1] for row in ROWS)):
        for at in range(len(row) - RUN + 1):
            text = text.replace(row[at : at + RUN], "")
    return text


def _repeats(text: str) -> bool:
    """Whether it is one piece again and again."""
    return text in (text + text)[1:-1]
