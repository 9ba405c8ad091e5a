"""Is a photo for the same people wherever it is named?"""

from __future__ import annotations

import os.path
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from corymb.studio.photographs import photo_path, photos_of
from corymb.studio.problems import Problem
from corymb.studio.studio import Source, Step, Studio

KEY = "may be shown to"
NARROW_FIRST = {"nobody": "nobody", "staff": "staff alone", "clients": "clients"}
"""Each consent as a sentence says it, the narrowest first."""


@dataclass(frozen=True)
class _Shown:
    """A photo where it is named, and who may see it there."""

    written: str
    consent: str
    source: Source
    path: tuple[Step, ...]

    @property
    def rank(self) -> int:
        return list(NARROW_FIRST).index(self.consent)


def two_consents(studio: Studio) -> list[Problem]:
    """Each place where a photo is for more people than elsewhere.

    An error, since a photo that one file keeps back would be published for the other's sake.
    """
    return [
        _told(studio, wider, narrowest)
        for places in _by_photo(studio)
        for narrowest in [min(places, key=lambda place: place.rank)]
        for wider in places
        if wider.rank > narrowest.rank
    ]


def _by_photo(studio: Studio) -> Iterator[list[_Shown]]:
    places: dict[str, list[_Shown]] = defaultdict(list)
    for photo, source, path in photos_of(studio):
        if not source.in_doubt(*path, "file") and not source.in_doubt(*path, KEY):
            file = os.path.realpath(photo_path(studio.folder, photo.file))
            places[file].append(_Shown(photo.file, photo.may_be_shown_to, source, path))
    yield from places.values()


def _told(studio: Studio, wider: _Shown, narrower: _Shown) -> Problem:
    line, _ = narrower.source.tree.place((*narrower.source.path, *narrower.path, KEY))
    there = narrower.source.file.relative_to(studio.folder).as_posix()
    message = (
        f"‘{wider.written}’ is for {NARROW_FIRST[wider.consent]} here and for "
        f"{NARROW_FIRST[narrower.consent]} in line {line} of {there}. "
        "It can't be both: write the same word in both places."
    )
    return wider.source.problem(message, *wider.path, KEY)
