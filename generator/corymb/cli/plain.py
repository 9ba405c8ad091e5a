"""What does a terminal get that knows nothing but ASCII?"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from unicodedata import combining, normalize

SIGNS = str.maketrans(
    {"█": "#", "▒": "+", "▂": "_", "·": ".", "→": "->", "–": "-", "×": "x", "‘": "'", "’": "'"}
    | {"€": "EUR ", "£": "GBP "}
)


def for_terminal(lines: Iterable[str], plain: bool) -> Iterator[str]:
    """The lines as they are, or in ASCII alone."""
    for line in lines:
        yield _in_ascii(line) if plain else line


def _in_ascii(line: str) -> str:
    """With plain letters for those that carry accents."""
    letters = normalize("NFKD", line.translate(SIGNS))
    bare = "".join(letter for letter in letters if not combining(letter))
    return bare.encode("ascii", "replace").decode()


def is_plain() -> bool:
    """Whether the terminal can't show more than ASCII."""
    try:
        "█▒▂·→".encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return True
    return False
