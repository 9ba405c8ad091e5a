"""Which words in a text are the author's own, and stand on no page? Those in `<!-- -->`."""

from __future__ import annotations

import re

import markdown
from markdown.preprocessors import Preprocessor

AFTER_FENCES = 22
"""After fenced code is set aside (25), whose comments are examples; before all other reading."""

_CODE = r"(?<!`)(?P<ticks>`+)(?!`)(?:(?!\n[ \t]*\n).)+?(?<!`)(?P=ticks)(?!`)"
_CODE_OR_COMMENT = re.compile(rf"(?P<code>{_CODE})|<!--", re.DOTALL)
"""Whichever begins first: code between backticks stays as it is, with what looks like a comment."""


def without_comments(text: str) -> str:
    """A text in Markdown as its readers get it."""
    kept, at, end = [], 0, 0
    while (found := _CODE_OR_COMMENT.search(text, end)) is not None:
        end = found.end()
        if found["code"]:
            continue
        closed = text.find("-->", end)
        if closed < 0:  # nor is any later one
            break
        kept.append(text[at : found.start()])
        at = end = closed + len("-->")
    return "".join([*kept, text[at:]])


class LeaveOutComments(Preprocessor):
    """Takes comments out before the library sees them."""

    def run(self, lines: list[str]) -> list[str]:
        """Called by the library once for each text."""
        return without_comments("\n".join(lines)).split("\n")


def leave_out_comments(maker: markdown.Markdown) -> None:
    """Set a maker up so."""
    maker.preprocessors.register(LeaveOutComments(maker), "corymb_comments", AFTER_FENCES)
