"""How does the book look on its paper? Styles of its own, beside what it shares with the sites."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from corymb.site.assets import STYLES
from corymb.site.book.asked import Paper

ORDER = STYLES / "book" / "order.txt"
CORNERS = {
    "a4": "size: A4; margin: 19mm 20mm 21mm",
    "a5": "size: A5; margin: 15mm 13mm 17mm",
}
LETTERS = {"a4": "10pt", "a5": "8.5pt"}
"""The size of letters that all other sizes go by: tried on paper, our own choice."""


def book_styles(paper: Paper, heads: Iterable[str]) -> bytes:
    """The book's styles; `heads` stand at the head of the pages of each chapter, in their order."""
    shared = [
        (STYLES / name).read_text("utf-8") for name in ORDER.read_text("utf-8").split() if name
    ]
    return "\n".join([*shared, *_of_paper(paper), *_heads(heads)]).encode()


def _of_paper(paper: Paper) -> Iterator[str]:
    yield f"@page {{ {CORNERS[paper]}; }}"
    yield f":root {{ font-size: {LETTERS[paper]}; }}"


def _heads(heads: Iterable[str]) -> Iterator[str]:
    for number, words in enumerate(heads, 1):
        page = f"chapter{number}"
        yield f".book-page-{number} {{ page: {page}; }}"
        yield f"@page {page} {{ @top-right {{ content: {quoted(words)}; }} }}"


def quoted(words: str) -> str:
    """A text as CSS has it between quotes: whatever might end it is written by its number.

    (CSS Syntax Level 3, 4.3.7: a backslash, the number in hexadecimal, and a space.)
    """
    plain = (sign if sign.isalnum() or sign in " .,-" else f"\\{ord(sign):x} " for sign in words)
    return f'"{"".join(plain)}"'
