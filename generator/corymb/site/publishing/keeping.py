"""What in a site's folder did Corymb put there, and what is someone's own and has to stay?

A studio puts files of its own beside the finished pages: a host's `CNAME`, a `.git`, a page from
elsewhere. They go along into each new site.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterable, Iterator
from contextlib import suppress
from hashlib import blake2b
from pathlib import Path
from unicodedata import normalize

MARK = ".corymb-site"
HEAD = (
    "# The files that Corymb put here and replaces with every build, as digests of their names.\n"
)
OF_HOSTS = ("CNAME",)


def mark(folder: Path, paths: Iterable[str]) -> None:
    """Note which files in a site's folder are Corymb's.

    As digests, for hosts publish this file too, and some addresses are known to one client only.
    """
    (folder / MARK).write_text(_mark_of(paths), encoding="utf-8")


def marks_just(folder: Path, paths: Iterable[str]) -> bool:
    """Whether these files, and no others, are noted as Corymb's."""
    try:
        return (folder / MARK).read_text(encoding="utf-8") == _mark_of(paths)
    except (OSError, ValueError):
        return False


def mark_all(folder: Path) -> None:
    """Note that all files here are Corymb's, but for the hidden ones, which MkDocs leaves alone."""
    mark(folder, (path for path in _inside(folder) if not _hidden(path)))


def is_marked(folder: Path) -> bool:
    """Whether a site of Corymb's stands here."""
    return (folder / MARK).is_file()


def own_files(folder: Path) -> list[str]:
    """What is someone's own in a site's folder: files, links and empty folders, by their paths."""
    ours = _ours(folder)
    return sorted(path for path in _inside(folder) if path != MARK and not ours(path))


def is_of_a_host(path: str) -> bool:
    """Whether a file tells a host, or a tool, about the folder, as `CNAME` and `.git` do."""
    return _hidden(path) or path in OF_HOSTS


def clash(folder: Path, own: Iterable[str], wanted: Iterable[str]) -> str | None:
    """The first of someone's own files that stands where the site needs to put one."""
    own = list(own)
    if not own:
        return None
    files = set(wanted)
    folders = {above for path in files for above in _above(path)}
    for path in own:
        in_the_way = path in folders and not _is_folder(folder / path)
        if in_the_way or path in files or any(above in files for above in _above(path)):
            return path
    return None


def carry(path: str, old: Path, new: Path) -> None:
    """Take one of someone's own files along."""
    source, target = old / path, new / path
    target.parent.mkdir(parents=True, exist_ok=True)
    if source.is_symlink():
        target.symlink_to(source.readlink())
    elif _is_folder(source):
        target.mkdir(exist_ok=True)
    else:
        link(source, target)


def link(source: str | Path, target: str | Path) -> bool:
    """One more name for a file where the file system has that, and a copy elsewhere."""
    with suppress(OSError):
        os.link(source, target)
        return True
    shutil.copy2(source, target)
    return False


def _ours(folder: Path) -> Callable[[str], bool]:
    try:
        text = (folder / MARK).read_text(encoding="utf-8", errors="replace")
    except OSError:
        return lambda path: False
    if not text:  # of an earlier Corymb
        return lambda path: not _hidden(path)
    known = frozenset(text.split("\n"))
    return lambda path: _digest(path) in known


def _inside(folder: Path, above: str = "") -> Iterator[str]:
    """Files, links and empty folders. Raises OSError where it can't look.

    What can't be looked into can't be taken along, so nothing is built over it.
    """
    if not folder.exists():
        return
    empty = True
    with os.scandir(folder) as entries:
        for entry in entries:
            empty = False
            if entry.is_dir(follow_symlinks=False):
                yield from _inside(folder / entry.name, f"{above}{entry.name}/")
            else:
                yield above + entry.name
    if empty and above:
        yield above.rstrip("/")


def _mark_of(paths: Iterable[str]) -> str:
    return HEAD + "".join(sorted(f"{_digest(path)}\n" for path in paths))


def _is_folder(path: Path) -> bool:
    return path.is_dir() and not path.is_symlink()


def _hidden(path: str) -> bool:
    return path.startswith(".")


def _above(path: str) -> list[str]:
    parts = path.split("/")
    return ["/".join(parts[:end]) for end in range(1, len(parts))]


def _digest(path: str) -> str:
    return blake2b(normalize("NFC", path).encode(), digest_size=16).hexdigest()
