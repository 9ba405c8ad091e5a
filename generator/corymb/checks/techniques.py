"""Can the lessons be taken in some order, or does one need itself in the end?"""

from __future__ import annotations

from corymb.studio.circles import ARROW, circles
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio


def circular_lessons(studio: Studio) -> list[Problem]:
    """Each circle among the lessons' needs, told at one of its lessons."""
    needs = {known_as: t.heading.needs for known_as, t in studio.techniques.items()}
    problems = []
    for way in circles(needs):
        message = (
            f"These lessons need each other in a circle: {ARROW.join(way)}. "
            "Take one of them out of another's `needs`."
            if len(way) > 2
            else "This lesson needs itself: take it out of its own `needs`."
        )
        source, at = studio.sources["technique", way[0]], needs[way[0]].index(way[1])
        problems.append(source.problem(message, "needs", at))
    return problems
