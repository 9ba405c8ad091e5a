"""What does a terminal get that knows nothing but ASCII?"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator

SIGNS = str.maketrans(
    {"█": "#", "▒": "+", "▂": "_", "·": ".", "→": "->", "–": "-", "×": "x", "‘": "'", "’": "'"}
    | {"€": "EUR ", "£": "GBP "}
)


def for_terminal(lines: Iterable[str], plain: bool) -> Iterator[str]:
    """The lines as they are, or in ASCII alone."""
    for line in lines:
        yield line.translate(SIGNS).encode("ascii", "replace").decode() if plain else line


def is_plain() -> bool:
    """Whether the terminal can't show more than ASCII."""
    try:
        "█▒▂·→".encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return True
    return False
