"""A finished site goes into its folder whole, and never over someone else's files."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.site.publishing import PublishError, publish
from corymb.site.publishing.keeping import MARK
from corymb.site.publishing.rooms import Room


def standing_in(folder: Path) -> dict[str, bytes]:
    return {
        str(file.relative_to(folder)): file.read_bytes()
        for file in folder.rglob("*")
        if file.is_file() and file.name != MARK
    }


def left_in_the_room(folder: Path) -> set[str]:
    """What a build leaves in its room that the next one has no use for."""
    kept = {".gitignore", "in-use", "stands", "turn"}
    return {path.name for path in Room.of(folder).here.iterdir()} - kept


def test_a_folder_holds_exactly_what_was_published(tmp_path: Path) -> None:
    photo = tmp_path / "photo.jpg"
    photo.write_bytes(b"photo")
    out = tmp_path / "clients"
    publish({"index.html": b"one", "a/b.html": b"two"}, {"a/photo.jpg": photo}, out)
    assert standing_in(out) == {"index.html": b"one", "a/b.html": b"two", "a/photo.jpg": b"photo"}
    publish({"index.html": b"new"}, {}, out)
    assert standing_in(out) == {"index.html": b"new"}
    assert {path.name for path in tmp_path.iterdir()} == {"photo.jpg", "clients", ".clients.corymb"}
    assert left_in_the_room(out) == set()


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


def put(folder: Path, *names: str) -> None:
    for name in names:
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(b"mine")


def test_files_that_are_not_a_sites_are_left_alone(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    put(out, "accounts.txt")
    with pytest.raises(PublishError) as refused:
        publish({"index.html": b"one"}, {}, out)
    assert str(refused.value) == (
        "clients/ holds files that Corymb did not put there, such as accounts.txt; move them away "
        "and build again. What belongs to the site can be put back then, and will stay."
    )
    assert standing_in(out) == {"accounts.txt": b"mine"}


OWN = ["CNAME", ".nojekyll", ".well-known/security.txt", ".git/config", "a/mine.html", "b/c/d.txt"]


def test_files_that_someone_added_to_a_site_stay_in_it(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"index.html": b"one", "a/b.html": b"two"}, {}, out)
    put(out, *OWN)
    (out / ".git" / "refs").mkdir()
    (out / "latest").symlink_to("index.html")
    for content in (b"two", b"three"):
        publish({"index.html": content}, {}, out)
        added = dict.fromkeys(OWN, b"mine")
        assert standing_in(out) == {"index.html": content, "latest": content} | added
        assert (out / ".git" / "refs").is_dir()
        assert (out / "latest").is_symlink()


def test_a_first_site_is_built_around_what_a_host_needs(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    put(out, "CNAME", ".git/config")
    publish({"index.html": b"one"}, {}, out)
    assert sorted(standing_in(out)) == [".git/config", "CNAME", "index.html"]


@pytest.mark.parametrize(
    ("mine", "wanted"),
    [
        pytest.param("prices.html", "prices.html", id="the same file"),
        pytest.param("made", "made/wedding.html", id="a file for a folder"),
        pytest.param("made/old.html", "made", id="a folder for a file"),
    ],
)
def test_a_file_of_someone_else_is_not_built_over(tmp_path: Path, mine: str, wanted: str) -> None:
    out = tmp_path / "clients"
    publish({"index.html": b"one"}, {}, out)
    put(out, mine)
    with pytest.raises(PublishError) as refused:
        publish({"index.html": b"two", wanted: b"site"}, {}, out)
    assert str(refused.value) == (
        f"clients/{mine} was not put there by Corymb, and the site now has something of its own "
        "at this address; move your file away, or give it another name."
    )
    assert standing_in(out) == {"index.html": b"one", mine: b"mine"}


def test_a_folder_of_the_site_that_someone_emptied_is_filled_again(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"a/b.html": b"one"}, {}, out)
    (out / "a" / "b.html").unlink()
    publish({"a/b.html": b"two"}, {}, out)
    assert standing_in(out) == {"a/b.html": b"two"}


def test_all_but_the_hidden_is_the_sites_under_a_mark_that_names_nothing(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    put(out, "old.html", ".git/config")
    (out / MARK).touch()
    publish({"index.html": b"one"}, {}, out)
    assert sorted(standing_in(out)) == [".git/config", "index.html"]


def test_the_mark_gives_no_address_away(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"for/a-client-alone.html": b"one"}, {}, out)
    assert "client-alone" not in (out / MARK).read_text(encoding="utf-8")


def test_the_old_site_stands_when_the_new_one_fails(tmp_path: Path) -> None:
    out = tmp_path / "clients"
    publish({"index.html": b"old"}, {}, out)
    with pytest.raises(PublishError, match="No such file"):
        publish({"index.html": b"new"}, {"photo.jpg": tmp_path / "gone.jpg"}, out)
    assert standing_in(out) == {"index.html": b"old"}
    assert left_in_the_room(out) == set()
