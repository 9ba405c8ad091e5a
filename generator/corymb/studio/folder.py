"""Which files in the studio's folder are of which kind, and which does nobody read?"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from corymb.studio.problems import Problem
from corymb.studio.suggest import did_you_mean, nearest, quoted
from corymb.studio.values.dates import parse_iso_week
from corymb.studio.values.text import parse_id, slug

FOLDERS = {
    "stems": "stems",
    "recipes": "recipe",
    "made": "made",
    "orders": "order",
    "walks": "walk",
    "log": "log",
    "links": "link",
    "pages": "page",
    "techniques": "technique",
}
MARKDOWN_KINDS = ("page", "technique")
UNREAD_FOLDERS = ("photos",)
KNOWN = (*FOLDERS, *UNREAD_FOLDERS, "studio.yml")
ALMOST = {".yml": (".yaml", ".yml.txt", ".yaml.txt"), ".md": (".markdown", ".mdown", ".md.txt")}
"""What people, and their editors, write for an ending; in any case."""


@dataclass(frozen=True)
class Found:
    """A file to read: its kind, its id (the file's name) and, for a recipe, its style."""

    kind: str
    id: str
    file: Path
    parent: str
    refused: str = ""
    """Why the file isn't opened, where it isn't."""


def files_of(folder: Path) -> Iterator[Found | Problem]:
    """Every file of the studio in a steady order, and what is wrong with the files' names.

    A file whose name is a little off is an error, and is read all the same, so that whatever
    names it isn't wrong as well. On what is none of the studio's there is advice.
    """
    try:
        entries = sorted(entry for entry in folder.iterdir() if not entry.name.startswith("."))
    except OSError as error:
        yield _closed(folder, error)
        return
    root = Path(os.path.realpath(folder))
    if not any(entry.name == "studio.yml" for entry in entries):
        yield from _studio_file(folder, entries, root)
    for entry in entries:
        if entry.name == "studio.yml":
            yield Found("studio", "studio", entry, "", leads_out(entry, root))
        elif entry.name in FOLDERS and _is_folder(entry):
            yield from _files_in(entry, FOLDERS[entry.name], root)
        elif entry.name not in UNREAD_FOLDERS and not _is_almost(entry, "studio", ".yml"):
            yield from _unread(entry, {other.name for other in entries}, root)


def leads_out(file: Path, root: Path) -> str:
    """Why a link isn't followed: it leads out of the studio's folder, or nowhere.

    What lies outside is someone else's to show, and isn't there on another computer.
    """
    if not file.is_symlink():
        return ""
    target = Path(os.path.realpath(file))
    if target.is_relative_to(root):
        return ""
    return "This is a link that leads out of the studio's folder: put the file itself here."


def _studio_file(folder: Path, entries: list[Path], root: Path) -> Iterator[Found | Problem]:
    """The studio's own file where it isn't called `studio.yml`."""
    for entry in entries:
        if _is_almost(entry, "studio", ".yml"):
            yield _rename(entry, "studio.yml")
            yield Found("studio", "studio", entry, "", leads_out(entry, root))
            return
    yield Found("studio", "studio", folder / "studio.yml", "")


def _files_in(folder: Path, kind: str, root: Path) -> Iterator[Found | Problem]:
    wanted = ".md" if kind in MARKDOWN_KINDS else ".yml"
    for file in _walk(folder):
        if isinstance(file, Problem):
            yield file
            continue
        name = _name_of(file, wanted)
        if name is None:
            yield _other_ending(file, wanted)
            continue
        standing = kind == "order" and file.parent.name == "standing"
        known_as, message = _checked(name, kind)
        if message:
            yield Problem(file, 1, 1, message)
        elif file.name != f"{name}{wanted}":
            yield _rename(file, f"{known_as}{wanted}")
        refused = leads_out(file, root)
        yield Found("standing" if standing else kind, known_as, file, file.parent.name, refused)


def _walk(folder: Path) -> Iterator[Path | Problem]:
    """All files below a folder but the hidden ones, and each folder that can't be looked into."""
    if folder.is_symlink():
        yield _linked(folder)
        return
    files: list[Path] = []
    closed: list[OSError] = []
    for here, folders, names in os.walk(folder, onerror=closed.append):
        folders[:] = [name for name in folders if not name.startswith(".")]
        files += [Path(here) / name for name in names if not name.startswith(".")]
        yield from _odd_folders([Path(here) / name for name in folders])
    for error in closed:
        yield _closed(Path(error.filename or folder), error)
    yield from sorted(files, key=lambda file: file.parts)


def _odd_folders(folders: list[Path]) -> Iterator[Problem]:
    """Folders that are links, which aren't followed, and those that are called like files."""
    for folder in folders:
        if folder.is_symlink():
            yield _linked(folder)
        elif folder.suffix in ALMOST:
            message = "This is a folder that is called like a file: give it another name."
            yield Problem(folder, 1, 1, message)


def _linked(folder: Path) -> Problem:
    message = (
        "This is a link to a folder, and such links are not followed: put the folder itself here."
    )
    return Problem(folder, 1, 1, message)


def _closed(folder: Path, error: OSError) -> Problem:
    message = f"This folder can't be read ({error.strerror or error}): see who may open it."
    return Problem(folder, 1, 1, message)


def _name_of(file: Path, wanted: str) -> str | None:
    """A file's name without its ending; None when it has quite another one."""
    for ending in (wanted, *ALMOST[wanted]):
        if file.name.casefold().endswith(ending):
            return file.name[: -len(ending)]
    return None


def _is_folder(entry: Path) -> bool:
    """Not one that nobody may ask about: what that is gets told when it is opened."""
    with suppress(OSError):
        return entry.is_dir()
    return False


def _is_almost(entry: Path, name: str, wanted: str) -> bool:
    found = _name_of(entry, wanted)
    return found is not None and found.casefold() == name and not _is_folder(entry)


def _checked(name: str, kind: str) -> tuple[str, str]:
    """The id that a file's name is, or was meant to be; and what is wrong with the name."""
    if kind == "walk":
        try:
            return str(parse_iso_week(name)), ""
        except ValueError as error:
            return name, f"A walk's file is named after its week. {error}"
    if kind == "log":
        right = re.fullmatch("(19|20|21)[0-9]{2}", name)
        wrong = f"{quoted(name)} is not a year. A log's file is named after its year: ‘2025.yml’."
        return name, "" if right else wrong
    try:
        return parse_id(name), ""
    except ValueError as error:
        known_as = slug(name) or name
        return known_as, f"This file's name can't be used. {error}"


def _rename(file: Path, right: str) -> Problem:
    return Problem(file, 1, 1, f"This file has the wrong name: rename it to {quoted(right)}.")


def _other_ending(file: Path, wanted: str) -> Problem:
    message = f"This file is not read: files here end in {wanted}. "
    if wanted not in file.name.casefold():
        message += (
            f"Rename it to {quoted(file.stem + wanted)}, or move it out of the studio's folder."
        )
    else:
        # What an editor, or its writer, put by: `jar.yml.bak`, `jar.yml~`.
        message += "It seems to be an old copy: delete it, or move it out of the studio's folder."
    return Problem(file, 1, 1, message, "", advice=True)


def _unread(entry: Path, there: set[str], root: Path) -> Iterator[Found | Problem]:
    """A folder that is almost called what it should be is read; all else isn't."""
    is_folder = _is_folder(entry)
    meant = next(iter(nearest(entry.name, FOLDERS, limit=1)), "") if is_folder else ""
    if meant and meant not in there:
        message = f"This folder has the wrong name: rename it to {quoted(meant)}."
        yield Problem(entry, 1, 1, message)
        yield from _files_in(entry, FOLDERS[meant], root)
        return
    what = "folder" if is_folder else "file"
    hint = did_you_mean(entry.name, KNOWN) or " Move it out of the studio's folder."
    message = f"This {what} is not read.{hint}"
    yield Problem(entry, 1, 1, message, "", advice=True)
