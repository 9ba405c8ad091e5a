"""How does a text become the lines that a terminal holds?"""

from __future__ import annotations

import textwrap

WIDE = 84

WHOLE = "\N{NO-BREAK SPACE}"
"""Stands for a space within a name that isn't to be broken over two lines."""


def wrapped(text: str, first: str = "", rest: str | None = None) -> list[str]:
    """A text in lines, with what stands before the first; before the rest, two spaces more."""
    then = f"{first}  " if rest is None else rest
    lines = textwrap.wrap(
        text, WIDE, initial_indent=first, subsequent_indent=then, break_on_hyphens=False
    )
    return [line.replace(WHOLE, " ") for line in lines]


def whole(name: str) -> str:
    """A name that stays on one line."""
    return name.replace(" ", WHOLE)


def hyphened(text: str) -> str:
    """A season with the hyphen that its file has, where pages have a dash."""
    return text.replace("–", "-")
