"""Which files in the studio's folder are of which kind, and which does nobody read?"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from corymb.studio.problems import Problem
from corymb.studio.suggest import did_you_mean

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
READ_ENDINGS = {".yml": "YAML", ".md": "Markdown"}


@dataclass(frozen=True)
class Found:
    """A file to read: its kind, its id (the file's name) and, for a recipe, its style."""

    kind: str
    id: str
    file: Path
    parent: str


def files_of(folder: Path) -> Iterator[Found | Problem]:
    """Every file of the studio in a steady order; advice on what would not be read."""
    yield Found("studio", "studio", folder / "studio.yml", "")
    for entry in sorted(folder.iterdir()):
        if entry.name.startswith(".") or entry.name in ("studio.yml", *UNREAD_FOLDERS):
            continue
        if entry.is_dir() and entry.name in FOLDERS:
            yield from _files_in(entry, FOLDERS[entry.name])
        else:
            yield _unread(entry)


def _files_in(folder: Path, kind: str) -> Iterator[Found | Problem]:
    wanted = ".md" if kind in MARKDOWN_KINDS else ".yml"
    for file in sorted(p for p in folder.rglob("*") if not p.name.startswith(".")):
        if file.is_dir():
            continue
        if file.suffix != wanted:
            yield _wrong_ending(file, wanted)
            continue
        standing = kind == "order" and file.parent.name == "standing"
        yield Found("standing" if standing else kind, file.stem, file, file.parent.name)


def _wrong_ending(file: Path, wanted: str) -> Problem:
    message = (
        f"this file is not read: files here end in {wanted}. "
        f"Rename it to ‘{file.stem}{wanted}’, or move it out of the studio's folder."
    )
    return Problem(file, 1, 1, message, "", advice=True)


def _unread(entry: Path) -> Problem:
    known = (*FOLDERS, *UNREAD_FOLDERS, "studio.yml")
    what = "folder" if entry.is_dir() else "file"
    message = f"this {what} is not read.{did_you_mean(entry.name, known)}"
    return Problem(entry, 1, 1, message, "", advice=True)
