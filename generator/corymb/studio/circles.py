"""Which recipes, variants or lessons lead back to themselves in the end?"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from graphlib import CycleError, TopologicalSorter

ARROW = " → "


def circles(leads: Mapping[str, Iterable[str]]) -> list[tuple[str, ...]]:
    """Each way that comes back to where it began, told once, from the first of its names on.

    `leads` has what each thing leads to. A way ends with the name it begins with.
    """
    left = {name: list(dict.fromkeys(others)) for name, others in leads.items()}
    names, found = list(left), []
    while True:
        try:
            TopologicalSorter(left).prepare()
        except CycleError as error:
            *way, _ = reversed(error.args[1])
            first = min(range(len(way)), key=lambda i: names.index(way[i]))
            circle = (*way[first:], *way[:first], way[first])
            found.append(circle)
            left[circle[0]].remove(circle[1])
        else:
            return sorted(found, key=lambda circle: names.index(circle[0]))
