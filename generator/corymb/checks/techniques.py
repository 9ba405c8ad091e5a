"""Can the lessons be taken in some order, or does one need itself in the end?"""

from __future__ import annotations

from graphlib import CycleError, TopologicalSorter

from corymb.studio.problems import Problem
from corymb.studio.studio import Studio


def circles(studio: Studio) -> list[Problem]:
    """The first circle among the lessons' needs, told at one of its lessons."""
    needs = {known_as: t.heading.needs for known_as, t in studio.techniques.items()}
    try:
        tuple(TopologicalSorter(needs).static_order())
    except CycleError as error:
        way = [str(step) for step in error.args[1]][::-1]
        source = studio.sources["technique", way[0]]
        message = f"these lessons need each other in a circle: {' → '.join(way)}."
        return [source.problem(message, "needs")]
    return []
