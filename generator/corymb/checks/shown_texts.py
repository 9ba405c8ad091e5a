"""Does a page or a lesson hold what its readers won't see as it was meant?

Tags of HTML are shown as they are written: whoever copies a page from elsewhere would bring its
scripts along. Pictures come from the studio's own files alone, so that no other host hears who
reads what.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from corymb.checks.reached import Reached, Text
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.suggest import quoted

MOST_TAGS = 3
"""Told of one text: with more it was copied from a web page, which three of them show."""

ELSEWHERE = re.compile("(?i)(?:https?:)?//")


def shown_otherwise(studio: Studio) -> list[Problem]:
    """Advice on tags, and an error for every picture from another site."""
    texts = Reached(studio).texts.values()
    return [problem for text in texts for problem in (*_tags(text), *_pictures(text))]


def _tags(text: Text) -> Iterator[Problem]:
    opening = [tag for tag in text.leads.tags if not tag.startswith("</")]
    for tag in opening[:MOST_TAGS]:
        message = (
            f"{quoted(tag)} will be read as it stands here, since pages hold no HTML: write it in "
            "Markdown, or between backticks where it is meant to be read."
        )
        yield _told(text, tag, message, advice=True)


def _pictures(text: Text) -> Iterator[Problem]:
    for written in text.leads.images:
        if ELSEWHERE.match(written):
            message = (
                f"{quoted(written)} is a picture on another site, and pages show none but your "
                "own: show it in made work or in a recipe, or lead to it with a link."
            )
            yield _told(text, written, message, advice=False)


def _told(text: Text, written: str, message: str, advice: bool) -> Problem:
    """At the first place where it is written; at the text's beginning where that isn't found."""
    source, sought = text.source, written.partition("\n")[0]
    for number, line in enumerate(source.lines[text.first_line - 1 :], text.first_line):
        if (column := line.find(sought)) >= 0:
            return Problem(source.file, number, column + 1, message, line, advice=advice)
    line = source.line_of(text.first_line)
    return Problem(source.file, text.first_line, 1, message, line, advice=advice)
