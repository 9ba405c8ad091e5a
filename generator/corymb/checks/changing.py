"""Which of a list of changes can't be made? Each is tried, and passed over when it can't."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.checks.references import known_names
from corymb.studio.models import RecipeLine
from corymb.studio.models.recipe import Changes
from corymb.studio.problems import Problem
from corymb.studio.saying import and_list
from corymb.studio.studio import Source, Studio
from corymb.studio.suggest import nearest
from corymb.trade.changes import ChangeError, LookLine, changed

Lines = tuple[LookLine, ...]

PLENTY = 10_000
"""So many come in with a swap that can't be made: no later change shall want for them."""


def try_changes(
    studio: Studio, lines: Lines, changes: Changes, source: Source
) -> tuple[Lines, list[Problem]]:
    """The lines after `changes`, and a problem for each that can't be made."""
    problems: list[Problem] = []
    for key, i, stem, step in _steps(changes):
        try:
            lines = changed(lines, step)
        except ChangeError as error:
            message = _told(studio, lines, stem, str(error))
            if message:
                problems.append(source.problem(message, key, i, word=stem))
            lines = changed(lines, _as_if_made(step))
    rest = Changes.model_construct(add=changes.add, scale=changes.scale)
    return changed(lines, rest), problems


def _steps(changes: Changes) -> Iterator[tuple[str, int, str, Changes]]:
    """Each swap and each drop by itself: its key, its place, the stem that goes, the change."""
    for i, swap in enumerate(changes.swap):
        yield "swap", i, swap.out, Changes.model_construct(swap=[swap])
    for i, drop in enumerate(changes.drop):
        yield "drop", i, drop.stem, Changes.model_construct(drop=[drop])


def _told(studio: Studio, lines: Lines, stem: str, message: str) -> str:
    """What to say of a change; nothing when a line above means the stem and is misspelt."""
    here, known = list(dict.fromkeys(line.stem for line in lines)), known_names(studio, "stem")
    if stem in here:
        return message
    if nearest(stem, (name for name in here if name not in known)):
        return ""
    if stem in known and here:  # it is spelt right, so no other is likely to be meant
        return f"‘{stem}’ isn't in what this changes. It has {and_list(here)}."
    return message


def _as_if_made(step: Changes) -> Changes:
    """What a swap that can't be made would have brought in."""
    come = [
        RecipeLine.model_construct(stem=swap.in_, count=PLENTY, role=swap.role or "light")
        for swap in step.swap
    ]
    return Changes.model_construct(add=come)
