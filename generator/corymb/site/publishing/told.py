"""How does one edited page reach a site of thousands at once, and still never half of an edit?

A program that makes a site again and again knows what it made anew. It keeps the site before this
one as a spare: a step behind, every file of it another name for the one that stands. What it is
told has changed is written into the spare, what changed the last time is taken over, and the two
change places. That costs what the edit costs, however large the site is.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from corymb.site.publishing.keeping import link
from corymb.site.publishing.placing import stage, take_place, take_places, telling
from corymb.site.publishing.rooms import Room, at_work
from corymb.site.publishing.staging import put
from corymb.site.publishing.standing import Stamp, Wanted, stamp_at


@dataclass
class _Spare:
    """The site before this one: which files are older in it, and how both folders were left."""

    behind: set[str]
    itself: Stamp | None
    folders: dict[str, Stamp | None]

    def still_fits(self, folder: Path, here: Path) -> bool:
        """Whether it is where it was, and nobody put a file into the site or took one away."""
        return stamp_at(here) == self.itself and _folders_of(self.folders, folder) == self.folders


class ToldFolder:
    """A site's folder, for a program that says itself what has changed; for one thread."""

    def __init__(self, folder: Path) -> None:
        self.room = Room.of(folder)
        self._spare: _Spare | None = None
        self._paths: set[str] = set()
        self._left: tuple[int, str] | None = None

    def publish(self, wanted: Wanted, changed: Iterable[str] | None = None) -> None:
        """Publish what is `wanted`, of which only the paths in `changed` are new or different.

        Whoever doesn't know what has changed leaves that out. Files may come and go, too; that
        costs as much as not knowing, and so does a file that someone else put there or took away,
        or another build in between. What a hand changed *within* a published file stays until then.
        Raises PublishError as `publish` does.

        Unlike there, nothing waits for the disk: whoever edits is at hand if there is a power cut.
        """
        with at_work([self.room.folder], with_spare=True), telling(self.room.folder):
            ours = self._left is not None and self._left == self._standing()
            self._left = None  # what fails now is not told again
            told = set(changed) if ours and changed is not None else None
            if told is None or not self._keeps_to(wanted, told) or not self._swapped(wanted, told):
                self._publish_all(wanted)
            self._left = self._standing()

    def close(self) -> None:
        """Remove the spare."""
        with at_work([self.room.folder]):
            self._spare = None

    def _keeps_to(self, wanted: Wanted, changed: set[str]) -> bool:
        """Whether the same files are wanted as before, some of them with other contents."""
        return self._paths == set(wanted) >= changed

    def _standing(self) -> tuple[int, str]:
        """What tells our last site from any that another build may have put there since."""
        return self.room.folder.stat().st_ino, self.room.turn.read_text("ascii", "replace")

    def _publish_all(self, wanted: Wanted) -> None:
        self._spare = None
        self.room.begin_turn()
        if (ready := stage(self.room, wanted, lasting=False)) is not None:
            try:
                take_places([ready])
            finally:
                shutil.rmtree(self.room.new, ignore_errors=True)
        self._paths = set(wanted)

    def _swapped(self, wanted: Wanted, changed: set[str]) -> bool:
        """Write into the spare and let it take its place; False where that can't be done."""
        spare = self._ready()
        if spare is None:
            return False
        here, old = self.room.spare, self.room.folder
        # Until it has taken its place, a spare that could not be finished is none.
        self._spare = None
        for path in spare.behind - changed:
            (here / path).unlink(missing_ok=True)
            link(f"{old}{os.sep}{path}", f"{here}{os.sep}{path}")
        for path in changed:
            put(here, path, wanted)
        take_place(self.room, here)
        self._spare = _Spare(changed, stamp_at(here), _folders_of(spare.folders, old))
        return True

    def _ready(self) -> _Spare | None:
        spare, folder, here = self._spare, self.room.folder, self.room.spare
        if spare is None or not spare.still_fits(folder, here):
            shutil.rmtree(here, ignore_errors=True)
            self._spare = _doubled(folder, here) if folder.is_dir() else None
        return self._spare


def _folders_of(known: Iterable[str], folder: Path) -> dict[str, Stamp | None]:
    """How the folders in a site stand: each changes with a file that comes, goes or is replaced."""
    return {path: stamp_at(f"{folder}{os.sep}{path}") for path in known}


def _doubled(folder: Path, spare: Path) -> _Spare | None:
    """Every file of a site under a second name; none where the file system has no such names."""
    before: dict[str, Stamp | None] = {}
    inside = [""]
    for path in inside:
        before[path] = stamp_at(folder / path)
        (spare / path).mkdir()
        here, there = f"{folder / path}{os.sep}", f"{spare / path}{os.sep}"
        with os.scandir(folder / path) as entries:
            for entry in entries:
                if entry.is_dir(follow_symlinks=False):
                    inside.append(f"{path}/{entry.name}".lstrip("/"))
                elif entry.is_symlink():
                    Path(there + entry.name).symlink_to(Path(entry.path).readlink())
                elif not link(here + entry.name, there + entry.name):
                    return None
    return _Spare(set(), stamp_at(spare), before)
