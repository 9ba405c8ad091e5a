"""What has not changed is left as it stands, and whatever a hand changed is put right."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from corymb.site.publishing import publish
from corymb.site.publishing import standing as standing_module
from corymb.site.publishing.keeping import MARK
from corymb.site.publishing.rooms import Room

from .test_publish import put, standing_in

PAGES = {"index.html": b"front", "a/one.html": b"one"}


@pytest.fixture
def photo(tmp_path: Path) -> Path:
    """A kept photo that the site shows."""
    (tmp_path / "kept.jpg").write_bytes(b"photo")
    return tmp_path / "kept.jpg"


@pytest.fixture
def out(tmp_path: Path, photo: Path) -> Path:
    """A folder with a published site in it."""
    publish(PAGES, {"jar.jpg": photo}, tmp_path / "clients")
    return tmp_path / "clients"


@pytest.fixture
def again(out: Path, photo: Path) -> Callable[[], bool]:
    """Publish the same once more; whether that put another folder there."""

    def published() -> bool:
        before = out.stat().st_ino
        publish(PAGES, {"jar.jpg": photo}, out)
        assert standing_in(out) == {**PAGES, "jar.jpg": b"photo"}
        return out.stat().st_ino != before

    return published


@pytest.fixture
def unread(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Nothing that is published may be read."""

    def refuse(*_: object) -> bool:
        raise AssertionError("a published file was read")

    with monkeypatch.context() as patched:
        patched.setattr(standing_module, "_holds", refuse)
        patched.setattr(standing_module, "_is_copy", refuse)
        yield


def test_where_nothing_changed_nothing_is_read_or_written(
    again: Callable[[], bool], unread: None
) -> None:
    assert not again()


def harm_a_page(folder: Path) -> None:
    (folder / "a" / "one.html").write_bytes(b"two")


def move_another_of_the_same_length_and_time_there(folder: Path) -> None:
    page, other = folder / "a" / "one.html", folder / "other.html"
    other.write_bytes(b"two")
    os.utime(other, ns=(page.stat().st_mtime_ns, page.stat().st_mtime_ns))
    other.rename(page)


def harm_a_photo(folder: Path) -> None:
    (folder / "jar.jpg").write_bytes(b"prank")


def remove_a_page(folder: Path) -> None:
    (folder / "index.html").unlink()


def remove_a_folder(folder: Path) -> None:
    (folder / "a" / "one.html").unlink()
    (folder / "a").rmdir()


def link_a_page_elsewhere(folder: Path) -> None:
    (folder / "index.html").unlink()
    (folder / "index.html").symlink_to("a/one.html")


def link_a_photo_to_the_one_that_is_kept(folder: Path) -> None:
    """It holds the same, and would follow whatever becomes of that."""
    (folder / "jar.jpg").unlink()
    (folder / "jar.jpg").symlink_to("../kept.jpg")


def empty_the_mark(folder: Path) -> None:
    (folder / MARK).write_bytes(b"")


def scribble_on_the_mark(folder: Path) -> None:
    (folder / MARK).write_bytes((folder / MARK).read_bytes() + b"\xff\n")


@pytest.mark.parametrize(
    "harm",
    [
        harm_a_page,
        move_another_of_the_same_length_and_time_there,
        harm_a_photo,
        remove_a_page,
        remove_a_folder,
        link_a_page_elsewhere,
        link_a_photo_to_the_one_that_is_kept,
        empty_the_mark,
        scribble_on_the_mark,
    ],
)
def test_whatever_was_done_to_the_site_by_hand_is_put_right(
    out: Path, again: Callable[[], bool], harm: Callable[[Path], None]
) -> None:
    harm(out)
    assert again()
    assert not again()


def test_a_note_that_was_cut_off_or_harmed_costs_only_time(
    out: Path, again: Callable[[], bool]
) -> None:
    note = Room.of(out).stands
    whole = note.read_bytes()
    for harmed in (b"", whole[:-1], whole[:40], whole.replace(b"0", b"1"), b"[]" + whole[2:]):
        note.write_bytes(harmed)
        assert not again()
        assert note.read_bytes() == whole
    note.unlink()
    note.mkdir()
    assert not again()


def test_the_note_is_outside_of_what_a_host_publishes_and_of_what_git_sees(out: Path) -> None:
    assert {path.name for path in out.iterdir()} == {*PAGES, "jar.jpg", "a", MARK} - {"a/one.html"}
    assert (Room.of(out).here / ".gitignore").read_text("utf-8") == "*\n"


def test_a_folder_that_someone_added_a_file_to_is_left_too(
    out: Path, again: Callable[[], bool], photo: Path
) -> None:
    put(out, "a/mine.txt")
    before = out.stat().st_ino
    publish(PAGES, {"jar.jpg": photo}, out)
    assert out.stat().st_ino == before
    assert (out / "a" / "mine.txt").exists()


def test_a_photo_that_was_made_again_is_published_again(
    out: Path, photo: Path, tmp_path: Path
) -> None:
    photo.write_bytes(b"other")
    publish(PAGES, {"jar.jpg": photo}, out)
    assert (out / "jar.jpg").read_bytes() == b"other"
