"""In which order are lessons taken, each after those it needs?"""

from __future__ import annotations

from collections.abc import Mapping
from graphlib import TopologicalSorter

from corymb.studio.models import Technique

Lessons = Mapping[str, Technique]
"""The headings of all lessons, by id."""


def in_order(lessons: Lessons) -> tuple[str, ...]:
    """All lessons, each after those it needs; of two that could go either way by their `order`.

    Raises graphlib.CycleError where lessons need each other in a circle.
    """
    by_order = sorted(lessons, key=lambda each: (lessons[each].order, each))
    return tuple(TopologicalSorter({each: lessons[each].needs for each in by_order}).static_order())


def all_needed(lessons: Lessons, wanted: str) -> frozenset[str]:
    """Every lesson that has to be taken before one, however far back."""
    found: set[str] = set()
    left = list(lessons[wanted].needs)
    while left:
        each = left.pop()
        if each in lessons and each not in found:
            found.add(each)
            left += lessons[each].needs
    return frozenset(found)
