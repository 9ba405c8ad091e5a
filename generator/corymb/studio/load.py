"""A studio's folder in; the studio, and everything that is wrong with its files, out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from corymb.studio.assemble import MODELS, MadeOut, assemble
from corymb.studio.filing import Filed, file_away
from corymb.studio.folder import Found, files_of
from corymb.studio.problems import Problem, in_order
from corymb.studio.shelves import Key
from corymb.studio.studio import Studio
from corymb.studio.words import NOUNS

__all__ = ["MODELS", "FolderReader", "ReadStudio", "read_folder", "read_studio"]

Stamp = tuple[int, int, int, int] | None
"""When a file was last written, how long it is and where it lies; None when it can't be seen."""


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
    return FolderReader(folder).read()


class FolderReader:
    """Reads a studio's folder, and again after each change: what hasn't changed is read once."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._filed: dict[Found, tuple[Stamp, Filed]] = {}
        self._made_out: MadeOut = {}

    def read(self) -> ReadStudio:
        """The studio as it is written now."""
        if not self.folder.is_dir():
            return _no_folder(self.folder)
        files: dict[Key, Filed] = {}
        doubles: list[Filed] = []
        problems: list[Problem] = []
        before, self._filed = self._filed, {}
        for found in files_of(self.folder):
            if isinstance(found, Problem):
                problems.append(found)
                continue
            filed = self._file_away(found, before.get(found))
            problems += filed.problems
            if files.setdefault((found.kind, found.id), filed) is not filed:
                doubles.append(filed)
        problems += _taken_names(self.folder, files, doubles)
        made = assemble(self.folder, files, doubles, self._made_out)
        return ReadStudio(made.studio, made.mended, in_order((*problems, *made.problems)))

    def _file_away(self, found: Found, before: tuple[Stamp, Filed] | None) -> Filed:
        """Stamped before it is read: what is written meanwhile is read the next time."""
        stamp = _stamp(found.file)
        if before is not None and stamp is not None and before[0] == stamp:
            filed = before[1]
        else:
            filed = file_away(found)
        self._filed[found] = stamp, filed
        return filed


def _no_folder(folder: Path) -> ReadStudio:
    why = "this is a file" if folder.exists() else "this folder doesn't exist"
    message = f"There is no studio here, since {why}: make one with `corymb new studio`."
    return ReadStudio(None, None, [Problem(folder, 1, 1, message)])


def _stamp(file: Path) -> Stamp:
    try:
        stat = file.stat()
    except OSError:
        return None
    return stat.st_mtime_ns, stat.st_ctime_ns, stat.st_size, stat.st_ino


def _taken_names(folder: Path, files: dict[Key, Filed], doubles: list[Filed]) -> Iterator[Problem]:
    for filed in doubles:
        kind, known_as = filed.found.kind, filed.found.id
        first = files[kind, known_as].found.file.relative_to(folder).as_posix()
        message = (
            f"There is another {NOUNS.get(kind, kind)} called ‘{known_as}’, in {first}. "
            "Rename one of the two files: every name is used once."
        )
        yield Problem(filed.found.file, 1, 1, message, filed.text.split("\n")[0])
