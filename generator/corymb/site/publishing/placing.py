"""How does a finished site get into its folder? Whole, or not at all.

It is put together beside the old one, and the two change places at the end, so that whatever
happens until then leaves the old site as it was. What someone else put there goes along. Where
nothing is different, nothing is touched.
"""

from __future__ import annotations

import shutil
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from corymb.site.publishing.exchange import exchange
from corymb.site.publishing.keeping import (
    MARK,
    clash,
    is_marked,
    is_of_a_host,
    marks_just,
    own_files,
)
from corymb.site.publishing.rooms import PublishError, Room, at_work, cannot_write
from corymb.site.publishing.staging import put_together
from corymb.site.publishing.standing import (
    Notes,
    Wanted,
    noted_mark,
    read_notes,
    unchanged,
    write_notes,
)


@dataclass(frozen=True)
class Staged:
    """A site that is ready to take its place; `notes` tell what is in it."""

    room: Room
    notes: Notes


def publish(written: Mapping[str, bytes], copies: Mapping[str, Path], folder: Path) -> None:
    """Make `folder` hold these files, and those that someone else added to the site there.

    The paths are within the folder. Raises PublishError, and changes nothing, when the folder is
    none of a site's, when a file of someone else's stands where one of these has to be, or when
    the disk is full.
    """
    publish_together({folder: Wanted(written, copies)})


def publish_together(sites: Mapping[Path, Wanted]) -> None:
    """Publish several sites, each into its folder: all of them, or none when one can't be."""
    with at_work(sites):
        staged: list[Staged] = []
        try:
            for folder, wanted in sites.items():
                with telling(folder):
                    ready = stage(Room.of(folder), wanted)
                    staged += [ready] if ready else []
            with telling(next(iter(sites), None)):
                take_places(staged)
        finally:
            for each in staged:
                shutil.rmtree(each.room.new, ignore_errors=True)


@contextmanager
def telling(folder: Path | None) -> Iterator[None]:
    """Whatever goes wrong in this block is told of this folder. Raises PublishError alone."""
    try:
        yield
    except PublishError as error:
        error.folder = folder
        raise
    except OSError as error:
        raise PublishError(cannot_write(error), folder) from error


def stage(room: Room, wanted: Wanted, lasting: bool = True) -> Staged | None:
    """Put a site together in its room; None when just that stands in its folder already.

    Raises PublishError and OSError.
    """
    folder = room.folder
    if folder.exists() and not folder.is_dir():
        raise PublishError(f"{folder.name} is a file, and the site needs a folder of this name.")
    before = read_notes(room.stands)
    same = unchanged(wanted, folder, before)
    if len(same) == len(set(wanted)) and _nothing_more(folder, wanted, before):
        same[MARK] = noted_mark(folder)
        if same != before:
            write_notes(room.stands, same)
        return None
    own = own_files(folder)
    _refuse_strange(folder, own)
    _refuse_clash(folder, own, wanted)
    try:
        return Staged(room, put_together(room.new, folder, wanted, same, own, lasting))
    except BaseException:
        shutil.rmtree(room.new, ignore_errors=True)
        raise


def _nothing_more(folder: Path, wanted: Wanted, before: Notes) -> bool:
    """Whether the site there has no file that is no longer wanted."""
    if before.get(MARK) == noted_mark(folder):
        return before.keys() - {MARK} == set(wanted)
    return marks_just(folder, wanted)


def _refuse_strange(folder: Path, own: list[str]) -> None:
    strange = [path for path in own if not is_of_a_host(path)]
    if strange and not is_marked(folder):
        raise PublishError(
            f"{folder.name}/ holds files that Corymb did not put there, such as {strange[0]}; "
            "move them away and build again. What belongs to the site can be put back then, and "
            "will stay."
        )


def _refuse_clash(folder: Path, own: list[str], wanted: Wanted) -> None:
    if (taken := clash(folder, own, wanted)) is not None:
        raise PublishError(
            f"{folder.name}/{taken} was not put there by Corymb, and the site now has something "
            "of its own at this address; move your file away, or give it another name."
        )


def take_places(staged: Sequence[Staged]) -> None:
    """Let each new site and its old one change places; all back again when one of them can't."""
    done: list[Staged] = []
    try:
        for each in staged:
            first = not each.room.folder.exists()
            take_place(each.room)
            if not first:
                done.append(each)
    except BaseException:
        for each in done:
            take_place(each.room)
        raise
    for each in staged:
        write_notes(each.room.stands, each.notes)


def take_place(room: Room, new: Path | None = None) -> None:
    """The new site into the folder, and the old one, if there was one, where the new one was."""
    room.begin_turn()
    new = new or room.new
    if room.folder.exists():
        exchange(new, room.folder, room.aside)
    else:
        new.rename(room.folder)
