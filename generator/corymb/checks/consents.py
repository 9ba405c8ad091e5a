"""Is a photo for the same people wherever it is named?"""

from __future__ import annotations

import os
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from corymb.ledger import kept
from corymb.studio.photographs import files_with_photos, photo_path, photos_in
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
    places: dict[object, list[tuple[str, str, _Certain]]] = defaultdict(list)
    for kind, known_as in files_with_photos(studio):
        for certain in _certain_in(studio, kind, known_as):
            file = _which_file(studio.folder, certain.written)
            places[file].append((kind, known_as, certain))
    for named in places.values():
        if len({certain.consent for _, _, certain in named}) > 1:
            yield [
                _Shown(each.written, each.consent, studio.sources[kind, known_as], each.path)
                for kind, known_as, each in named
            ]


@dataclass(frozen=True)
class _Certain:
    """A photo as one file names it, where neither its name nor its consent is in doubt."""

    written: str
    consent: str
    path: tuple[Step, ...]


@kept
def _certain_in(studio: Studio, kind: str, known_as: str) -> tuple[_Certain, ...]:
    source = studio.sources[kind, known_as]
    return tuple(
        _Certain(photo.file, photo.may_be_shown_to, path)
        for photo, path in photos_in(studio, kind, known_as)
        if not source.in_doubt(*path, "file") and not source.in_doubt(*path, KEY)
    )


def _which_file(folder: Path, written: str) -> object:
    """The file itself, by whatever name, link or way it is reached."""
    try:
        stat = os.stat(f"{folder}/{written}")  # noqa: PTH116 (for every photo at every save)
    except (OSError, ValueError):
        return photo_path(folder, written)
    return stat.st_dev, stat.st_ino


def _told(studio: Studio, wider: _Shown, narrower: _Shown) -> Problem:
    line, _ = narrower.source.tree.place((*narrower.source.path, *narrower.path, KEY))
    there = narrower.source.file.relative_to(studio.folder).as_posix()
    message = (
        f"‘{wider.written}’ is for {NARROW_FIRST[wider.consent]} here and for "
        f"{NARROW_FIRST[narrower.consent]} in line {line} of {there}. "
        "It can't be both: write the same word in both places."
    )
    return wider.source.problem(message, *wider.path, KEY)
