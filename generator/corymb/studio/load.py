"""A studio's folder in; the studio, and everything that is wrong with its files, out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from corymb.studio.assemble import MODELS, assemble
from corymb.studio.filing import Filed, file_away
from corymb.studio.folder import files_of
from corymb.studio.problems import Problem
from corymb.studio.shelves import Key
from corymb.studio.studio import Studio
from corymb.studio.words import NOUNS

__all__ = ["MODELS", "ReadStudio", "read_folder", "read_studio"]


@dataclass(frozen=True)
class ReadStudio:
    """What came of a studio's folder."""

    studio: Studio | None
    """What could be read whole; None when `studio.yml` couldn't."""
    mended: Studio | None
    """The same with examples where something is wrong: to look for further problems in."""
    problems: list[Problem]


def read_studio(folder: Path) -> tuple[Studio | None, list[Problem]]:
    """The studio in `folder`, as far as it can be read, and all problems in the order of files.

    There is no studio when `studio.yml` itself can't be read.
    """
    read = read_folder(folder)
    return read.studio, read.problems


def read_folder(folder: Path) -> ReadStudio:
    """The studio in `folder`, and also as it would be without its slips."""
    if not folder.is_dir():
        why = "this is a file" if folder.exists() else "this folder doesn't exist"
        message = f"There is no studio here, since {why}: make one with `corymb new studio`."
        return ReadStudio(None, None, [Problem(folder, 1, 1, message)])
    files: dict[Key, Filed] = {}
    doubles: list[Filed] = []
    problems: list[Problem] = []
    for found in files_of(folder):
        if isinstance(found, Problem):
            problems.append(found)
            continue
        filed = file_away(found)
        problems += filed.problems
        if files.setdefault((found.kind, found.id), filed) is not filed:
            doubles.append(filed)
    problems += _taken_names(folder, files, doubles)
    made = assemble(folder, files, doubles)
    return ReadStudio(made.studio, made.mended, sorted({*problems, *made.problems}))


def _taken_names(folder: Path, files: dict[Key, Filed], doubles: list[Filed]) -> Iterator[Problem]:
    for filed in doubles:
        kind, known_as = filed.found.kind, filed.found.id
        first = files[kind, known_as].found.file.relative_to(folder).as_posix()
        message = (
            f"There is another {NOUNS.get(kind, kind)} called ‘{known_as}’, in {first}. "
            "Rename one of the two files: every name is used once."
        )
        yield Problem(filed.found.file, 1, 1, message, filed.text.split("\n")[0])
