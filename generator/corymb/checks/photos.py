"""Is every photo that a file names there, inside the studio's folder, and an image?"""

from __future__ import annotations

import os
from pathlib import Path

from corymb.ledger import kept
from corymb.photos import PhotoError, inspect
from corymb.studio.photographs import photo_path, photos_of
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.studio.suggest import nearest, quoted


def missing_photos(studio: Studio) -> list[Problem]:
    """Every photo that can't be shown, and why."""
    problems = []
    faults: dict[str, str] = {}
    for photo, source, path in photos_of(studio):
        if source.in_doubt(*path, "file"):
            continue
        if photo.file not in faults:
            faults[photo.file] = _fault_now(studio, photo.file)
        if faults[photo.file]:
            problems.append(source.problem(faults[photo.file], *path, "file"))
    return problems


def _fault_now(studio: Studio, written: str) -> str:
    """The same file isn't looked into twice."""
    try:
        stat = os.stat(f"{studio.folder}/{written}")  # noqa: PTH116 (for every photo at every save)
    except (OSError, ValueError):
        return _fault(studio.folder, written)
    return _fault_of(studio, written, (stat.st_mtime_ns, stat.st_ctime_ns, stat.st_size))


@kept
def _fault_of(studio: Studio, written: str, stamp: tuple[int, ...]) -> str:
    return _fault(studio.folder, written)


def _fault(folder: Path, written: str) -> str:
    """What is wrong with a photo's file, in a sentence; nothing when it is right."""
    if "://" in written:
        return (
            f"{quoted(written)} is a web address: copy the photo into photos/ and name that file."
        )
    try:
        path = photo_path(folder, written).resolve()
        if not path.is_relative_to(folder.resolve()):
            name = written.replace("\\", "/").rpartition("/")[2]
            return (
                f"‘{written}’ lies outside the studio's folder: copy the photo into photos/ and "
                f"write ‘photos/{name}’."
            )
        if not path.exists():
            return _not_there(folder, written)
    except (OSError, RuntimeError):  # a name too long, a link that leads to itself
        return f"{quoted(written)} can't be the name of a photo: write it like ‘photos/barn.jpg’."
    try:
        inspect(path)
    except PhotoError as error:
        return f"‘{written}’ {error.trouble}"
    return ""


def _not_there(folder: Path, written: str) -> str:
    there = sorted(
        p.relative_to(folder).as_posix() for p in folder.glob("photos/**/*") if p.is_file()
    )
    flat = written.replace("\\", "/")
    if flat in there:
        return f"‘{written}’ is written with backslashes: write ‘{flat}’."
    by_name = {Path(name).stem: name for name in there}
    near = nearest(Path(flat).stem, by_name, limit=1)
    hint = f"Did you mean ‘{by_name[near[0]]}’?" if near else "Copy it there, or mend its name."
    return f"There is no photo ‘{written}’. {hint}"
