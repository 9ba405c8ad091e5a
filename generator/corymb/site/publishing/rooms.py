"""Where is a new site made ready, and who else is at it?

Beside each site's folder is a hidden one, the room in which the next site is put together. One
build at a time is in it: others wait at its door. So whatever is found there by the build that
comes in was left by one that died, and is swept out, once a site that was left aside is back.
"""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from pathlib import Path
from uuid import uuid4

from filelock import FileLock, Timeout

from corymb.files.unharmed import make_way
from corymb.site.publishing.exchange import mended

LONGEST_WAIT_S = 600.0
"""For another build; a first one, with all its photos to make, may take minutes."""

Waiting = Callable[[str], None]


class PublishError(Exception):
    """The site can't be put into its folder; the text says why."""

    def __init__(self, why: str, folder: Path | None = None) -> None:
        super().__init__(why)
        self.folder = folder


@dataclass(frozen=True)
class Room:
    """The room of one site's folder, and what may lie in it."""

    folder: Path

    @classmethod
    def of(cls, folder: Path) -> Room:
        """A link to the folder stays a link: the room is beside what it leads to."""
        return cls(folder.resolve())

    @property
    def here(self) -> Path:
        return self.folder.parent / f".{self.folder.name}.corymb"

    @property
    def new(self) -> Path:
        """The site that is being put together."""
        return self.here / "new"

    @property
    def aside(self) -> Path:
        """The old site, for the moment in which the new one takes its place."""
        return self.here / "aside"

    @property
    def spare(self) -> Path:
        """The site before this one, kept by a program that publishes again and again."""
        return self.here / "spare"

    @property
    def stands(self) -> Path:
        """The note of what stands in the folder."""
        return self.here / "stands"

    @property
    def in_use(self) -> Path:
        """Locked by whoever is at work."""
        return self.here / "in-use"

    @property
    def turn(self) -> Path:
        """Something new each time that a site takes its place."""
        return self.here / "turn"

    def begin_turn(self) -> None:
        """Let whoever published here before know that another has come."""
        make_way(self.turn)
        self.turn.write_text(uuid4().hex, encoding="ascii")

    def lock(self) -> FileLock:
        """One for all who ask in this program; in one thread it may be taken again."""
        return FileLock(self.in_use, is_singleton=True)

    def sweep(self, but: Path | None = None) -> None:
        """Remove what other builds left, once the site they may have left aside is back."""
        mended(self.folder, self.aside)
        for left in {self.new, self.aside, self.spare} - {but}:
            if left.exists():
                shutil.rmtree(left)


@contextmanager
def at_work(
    folders: Iterable[Path],
    waiting: Waiting | None = None,
    longest_s: float = LONGEST_WAIT_S,
    with_spare: bool = False,
) -> Iterator[None]:
    """Keep other builds out of these folders; `waiting` is told so when there is one to wait for.

    Raises PublishError when that takes too long, or when nothing can be written there.
    """
    rooms = sorted({Room.of(folder) for folder in folders}, key=lambda room: str(room.folder))
    with ExitStack() as held:
        for room in rooms:  # in one order everywhere, or two builds could wait for each other
            held.enter_context(_entered(room, waiting, longest_s, with_spare))
        yield


@contextmanager
def _entered(
    room: Room, waiting: Waiting | None, longest_s: float, with_spare: bool
) -> Iterator[None]:
    with ExitStack() as held:
        try:
            _furnish(room)
            lock = room.lock()
            again = lock.is_locked
            _wait(lock, room, waiting, longest_s)
            held.callback(lock.release)
            if not again:
                room.sweep(room.spare if with_spare else None)
        except OSError as error:
            raise PublishError(cannot_write(error), room.folder) from error
        yield


def cannot_write(error: OSError) -> str:
    """What is said when the disk is full, or someone else's."""
    return (
        f"the site can't be written here: {error.strerror or error}. Make room, or see who may "
        "write here, and build again; the site that stands is as it was."
    )


def _furnish(room: Room) -> None:
    room.here.mkdir(parents=True, exist_ok=True)
    make_way(room.in_use)
    ignored = room.here / ".gitignore"
    if not ignored.exists():
        ignored.write_text("*\n", encoding="utf-8")  # nobody else's business


def _wait(lock: FileLock, room: Room, waiting: Waiting | None, longest_s: float) -> None:
    try:
        lock.acquire(timeout=0)
        return
    except NotImplementedError:  # a file system without locks: who builds there, builds alone
        return
    except Timeout:
        if waiting:
            waiting(f"Another build is at work on {room.folder.name}/: waiting for it to end.")
    try:
        lock.acquire(timeout=longest_s)
    except Timeout as error:
        raise PublishError(
            f"another build has been at work on {room.folder.name}/ for {longest_s:.0f} seconds; "
            "let it end, or end it, and build again.",
            room.folder,
        ) from error
