"""One build at a time is at a site; what a dead one left there is put right by the next."""

from __future__ import annotations

import errno
import os
from collections.abc import Mapping
from pathlib import Path
from threading import Thread

import pytest
from filelock import FileLock

from corymb.site.publishing import PublishError, Wanted, at_work, publish, publish_together
from corymb.site.publishing import exchange as exchange_module
from corymb.site.publishing.exchange import exchange
from corymb.site.publishing.rooms import Room

from .test_publish import left_in_the_room, put, standing_in

OLD: Mapping[str, bytes] = {"index.html": b"old", "same.html": b"same"}
NEW: Mapping[str, bytes] = {"index.html": b"new", "same.html": b"same"}


@pytest.fixture
def out(tmp_path: Path) -> Path:
    """A folder with the old site in it."""
    publish(OLD, {}, tmp_path / "clients")
    return tmp_path / "clients"


@pytest.fixture(params=["in one step", "by renaming"])
def ways(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> str:
    """Both ways for folders to change places."""
    if request.param == "by renaming":
        monkeypatch.setattr(exchange_module, "_in_one_step", lambda one, other: False)
    return str(request.param)


def test_folders_change_places(tmp_path: Path, ways: str) -> None:
    put(tmp_path, "one/a.html", "other/b.html")
    exchange(tmp_path / "one", tmp_path / "other", tmp_path / "aside")
    assert standing_in(tmp_path) == {"one/b.html": b"mine", "other/a.html": b"mine"}


def test_a_new_site_takes_its_place_either_way(out: Path, ways: str) -> None:
    publish(NEW, {}, out)
    assert standing_in(out) == NEW
    assert left_in_the_room(out) == set()


@pytest.mark.parametrize("failing", [1, 2], ids=["the old one goes", "the new one comes"])
def test_the_old_site_stands_when_the_folders_cannot_change_places(
    out: Path, monkeypatch: pytest.MonkeyPatch, failing: int
) -> None:
    rename, calls = Path.rename, iter((1, 2, 3))

    def refusing(self: Path, target: Path) -> Path:
        if next(calls) == failing:
            raise OSError(errno.ENOSPC, "the disk is full")
        return rename(self, target)

    monkeypatch.setattr(exchange_module, "_in_one_step", lambda one, other: False)
    monkeypatch.setattr(Path, "rename", refusing)
    with pytest.raises(PublishError, match=r"can't be written here: the disk is full\."):
        publish(NEW, {}, out)
    assert standing_in(out) == OLD
    assert left_in_the_room(out) == set()


def test_a_site_that_a_dead_build_left_aside_is_put_back_and_the_rest_swept_out(out: Path) -> None:
    room = Room.of(out)
    out.rename(room.aside)
    put(room.new, "half.html")
    put(room.spare, "older.html")
    with at_work([out]):
        assert standing_in(out) == OLD
        assert left_in_the_room(out) == set()


def test_a_full_disk_leaves_the_old_site_as_it_was(
    out: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write = Path.write_bytes

    def full(self: Path, data: bytes) -> int:
        write(self, data[:1])
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    with monkeypatch.context() as patched, pytest.raises(PublishError, match="No space left"):
        patched.setattr(Path, "write_bytes", full)
        publish(NEW, {}, out)
    assert standing_in(out) == OLD
    assert left_in_the_room(out) == set()
    publish(NEW, {}, out)
    assert standing_in(out) == NEW


def test_of_two_sites_none_is_published_when_one_cannot_be(tmp_path: Path, out: Path) -> None:
    strange = tmp_path / "staff"
    put(strange, "accounts.txt")
    with pytest.raises(PublishError, match=r"accounts\.txt") as refused:
        publish_together({out: Wanted(NEW), strange: Wanted(NEW)})
    assert refused.value.folder == strange
    assert standing_in(out) == OLD
    assert left_in_the_room(out) == set()


def test_of_two_sites_both_are_the_old_ones_when_one_cannot_take_its_place(
    tmp_path: Path, out: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    staff = tmp_path / "staff"
    publish(OLD, {}, staff)

    def refusing(one: Path, other: Path, aside: Path) -> None:
        if other == staff:
            raise OSError(errno.EACCES, os.strerror(errno.EACCES))
        exchange(one, other, aside)

    monkeypatch.setattr("corymb.site.publishing.placing.exchange", refusing)
    with pytest.raises(PublishError, match="Permission denied"):
        publish_together({out: Wanted(NEW), staff: Wanted(NEW)})
    assert standing_in(out) == standing_in(staff) == OLD


def test_a_second_build_waits_for_the_first_and_says_so(out: Path) -> None:
    told: list[str] = []

    def second() -> None:
        with at_work([out], told.append):
            told.append("begun")

    with at_work([out]):
        thread = Thread(target=second)
        thread.start()
        while not told:
            thread.join(0.01)
        thread.join(0.1)
        assert told == ["Another build is at work on clients/: waiting for it to end."]
    thread.join()
    assert told[1:] == ["begun"]


def test_who_waits_too_long_is_told_what_to_do(out: Path) -> None:
    told: list[str] = []

    def second() -> None:
        try:
            with at_work([out], longest_s=0.1):
                told.append("begun")
        except PublishError as error:
            told.append(str(error))

    with at_work([out]):
        thread = Thread(target=second)
        thread.start()
        thread.join()
    assert told == [
        "another build has been at work on clients/ for 0 seconds; let it end, or end it, and "
        "build again."
    ]


def test_nothing_is_swept_from_under_a_build_that_is_at_work(out: Path) -> None:
    with at_work([out]):
        put(Room.of(out).new, "half.html")
        with at_work([out]):
            assert left_in_the_room(out) == {"new"}


def test_folders_in_place_of_its_own_files_give_way(out: Path) -> None:
    room = Room.of(out)
    for file in (room.in_use, room.turn, room.stands):
        file.unlink()
        put(file, "inside")
    publish(NEW, {}, out)
    assert standing_in(out) == NEW
    assert room.in_use.is_file() and room.turn.is_file() and room.stands.is_file()


def test_where_the_disk_has_no_locks_a_build_goes_on_without(
    out: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def unable(self: FileLock, timeout: float) -> None:
        raise NotImplementedError

    monkeypatch.setattr(FileLock, "acquire", unable)
    publish(NEW, {}, out)
    assert standing_in(out) == NEW


def test_a_link_to_a_folder_stays_a_link(tmp_path: Path, out: Path) -> None:
    link = tmp_path / "linked"
    link.symlink_to(out)
    publish(NEW, {}, link)
    assert link.is_symlink()
    assert standing_in(out) == NEW


def test_a_file_in_place_of_the_folder_is_not_built_over(tmp_path: Path) -> None:
    put(tmp_path, "clients")
    with pytest.raises(PublishError, match="clients is a file, and the site needs a folder"):
        publish(NEW, {}, tmp_path / "clients")
    assert (tmp_path / "clients").read_bytes() == b"mine"
