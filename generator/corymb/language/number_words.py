"""How is a small number said in a word?"""

from __future__ import annotations

from corymb.language.speaking import pgettext


def number_word(number: int) -> str:
    """`three`; beyond ten in figures."""
    words = (
        pgettext("how many", "no"),
        pgettext("how many", "one"),
        pgettext("how many", "two"),
        pgettext("how many", "three"),
        pgettext("how many", "four"),
        pgettext("how many", "five"),
        pgettext("how many", "six"),
        pgettext("how many", "seven"),
        pgettext("how many", "eight"),
        pgettext("how many", "nine"),
        pgettext("how many", "ten"),
    )
    return words[number] if number < len(words) else str(number)
