"""What stands in a file, and where each piece of it stands."""

from dataclasses import dataclass, field
from typing import Any

Steps = tuple[str | int, ...]
"""The keys and the places in lists that lead to a value."""

Place = tuple[int, int]
"""A line and a column, both from 1."""


@dataclass
class Tree:
    """A file's data, every value the raw `Written` text, with the place of each."""

    data: dict[str, Any]
    places: dict[Steps, Place] = field(default_factory=dict)
    key_places: dict[Steps, Place] = field(default_factory=dict)
    left_out: set[Steps] = field(default_factory=set)
    """Keys whose value is missing from `data` because a problem already tells of it.

    For a list that lacks such a value, the path ends in an empty step.
    """

    def place(self, path: Steps) -> Place:
        """Where a value stands; for a missing one, where the nearest thing around it does."""
        for length in range(len(path), -1, -1):
            if path[:length] in self.places:
                return self.places[path[:length]]
            if path[:length] in self.key_places:
                return self.key_places[path[:length]]
        return (1, 1)

    def key_place(self, path: Steps) -> Place:
        """Where a key stands; for a place in a list, its value; else the nearest thing around."""
        return self.key_places.get(path) or self.place(path)
