"""A finished site goes into its folder whole, and never over someone else's files."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.site.publish import MARK, PublishError, publish


def standing_in(folder: Path) -> dict[str, bytes]:
    return {
        str(file.relative_to(folder)): file.read_bytes()
        for file in folder.rglob("*")
        if file.is_file() and file.name != MARK
    }


def test_a_folder_holds_exactly_what_was_published(tmp_path: Path) -> None:
    photo = tmp_path / "photo.jpg"
    photo.write_bytes(b"photo")
    out = tmp_path / "clients"
    publish({"index.html": b"one", "a/b.html": b"two"}, {"a/photo.jpg": photo}, out)
    assert standing_in(out) == {"index.html": b"one", "a/b.html": b"two", "a/photo.jpg": b"photo"}
    publish({"index.html": b"new"}, {}, out)
    assert standing_in(out) == {"index.html": b"new"}
    assert {path.name for path in tmp_path.iterdir()} == {"photo.jpg", "clients"}


def test_what_has_not_changed_is_not_written_again(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"same.html": b"same", "other.html": b"one"}, {}, out)
    before = (out / "same.html").stat()
    publish({"same.html": b"same", "other.html": b"two"}, {}, out)
    after = (out / "same.html").stat()
    assert (after.st_ino, after.st_mtime_ns) == (before.st_ino, before.st_mtime_ns)


def test_a_photo_in_the_cache_is_not_tied_to_the_published_one(tmp_path: Path) -> None:
    photo = tmp_path / "photo.jpg"
    photo.write_bytes(b"photo")
    out = tmp_path / "clients"
    publish({}, {"photo.jpg": photo}, out)
    (out / "photo.jpg").write_bytes(b"scribbled over")
    assert photo.read_bytes() == b"photo"
    publish({}, {"photo.jpg": photo}, out)
    assert (out / "photo.jpg").read_bytes() == b"photo"


def test_files_that_are_not_a_sites_are_left_alone(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    out.mkdir()
    (out / "accounts.txt").write_text("mine")
    with pytest.raises(PublishError, match="holds files that Corymb did not put there"):
        publish({"index.html": b"one"}, {}, out)
    assert standing_in(out) == {"accounts.txt": b"mine"}


def test_the_old_site_stands_when_the_new_one_fails(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"index.html": b"old"}, {}, out)
    with pytest.raises(FileNotFoundError):
        publish({"index.html": b"new"}, {"photo.jpg": tmp_path / "gone.jpg"}, out)
    assert standing_in(out) == {"index.html": b"old"}
    assert {path.name for path in tmp_path.iterdir()} == {"clients"}


@pytest.mark.parametrize("failing", [1, 2], ids=["the old one goes", "the new one comes"])
def test_the_old_site_stands_when_the_folders_cannot_change_places(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, failing: int
) -> None:
    out = tmp_path / "clients"
    publish({"index.html": b"old"}, {}, out)
    rename, calls = Path.rename, iter((1, 2, 3))

    def refusing(self: Path, target: Path) -> Path:
        if next(calls) == failing:
            raise OSError("the disk is full")
        return rename(self, target)

    monkeypatch.setattr(Path, "rename", refusing)
    with pytest.raises(OSError, match="full"):
        publish({"index.html": b"new"}, {}, out)
    assert standing_in(out) == {"index.html": b"old"}
    assert {path.name for path in tmp_path.iterdir()} == {"clients"}
