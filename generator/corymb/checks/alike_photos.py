"""Which photos have names that other computers can't tell apart?

Most keep no two files whose names differ in capitals alone, and some write an accent in a way of
their own (Unicode's NFD). The studio's folder, copied there, would lose one of the two photos.
"""

from __future__ import annotations

from pathlib import Path
from posixpath import normpath
from unicodedata import normalize

from corymb.studio.photographs import photo_path, photos_of
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio


def alike_photos(studio: Studio) -> list[Problem]:
    """Advice at each photo whose name was written otherwise before, where both are there."""
    first: dict[str, str] = {}
    told: set[str] = set()
    problems = []
    for photo, source, path in photos_of(studio):
        if source.in_doubt(*path, "file"):
            continue
        written = normpath(photo.file)
        known = first.setdefault(_as_elsewhere(written), written)
        if written == known or written in told or not _are_two(studio.folder, written, known):
            continue
        told.add(written)
        message = (
            f"‘{written}’ and ‘{known}’ are one file on many computers: rename one of the two, "
            "or write the same name in both places."
        )
        problems.append(source.problem(message, *path, "file", advice=True))
    return problems


def _as_elsewhere(name: str) -> str:
    return normalize("NFC", normalize("NFC", name).casefold())


def _are_two(folder: Path, one: str, other: str) -> bool:
    """Whether both are there, and more than an accent's writing tells them apart."""
    try:
        is_same = photo_path(folder, one).samefile(photo_path(folder, other))
    except (OSError, ValueError):
        return False
    return not is_same or normalize("NFC", one) != normalize("NFC", other)
