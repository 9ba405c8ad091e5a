"""A program that says what changed has it published at once, and the same as if it had not said."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.site.publishing import PublishError, ToldFolder, Wanted, publish
from corymb.site.publishing import told as told_module

from .test_publish import put, standing_in


def site(**changed: str) -> dict[str, bytes]:
    """A site of a few pages, some of which say something else."""
    pages = {"index.html": "front", "a/one.html": "one", "a/two.html": "two"}
    changed_paths = {path.replace("__", "/") + ".html": text for path, text in changed.items()}
    return {path: text.encode() for path, text in (pages | changed_paths).items()}


@pytest.fixture
def told(tmp_path: Path) -> ToldFolder:
    """A folder with a site in it, and the spare made."""
    folder = ToldFolder(tmp_path / "clients")
    folder.publish(Wanted(site()))
    folder.publish(Wanted(site()), ())
    return folder


def only_told(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object, **__: object) -> None:
        raise AssertionError("the whole site was looked at")

    monkeypatch.setattr(told_module, "stage", refuse)


def test_one_edit_after_the_other_stands_there(
    told: ToldFolder, monkeypatch: pytest.MonkeyPatch
) -> None:
    only_told(monkeypatch)
    edits: list[dict[str, str]] = [
        {"a__one": "1"},
        {"a__one": "1", "index": "new"},
        {"a__one": "one", "index": "new"},
        {"a__one": "one", "index": "newer", "a__two": "2"},
    ]
    changed = [{"a/one.html"}, {"index.html"}, {"a/one.html"}, {"index.html", "a/two.html"}]
    for edit, paths in zip(edits, changed, strict=True):
        told.publish(Wanted(site(**edit)), paths)
        assert standing_in(told.room.folder) == site(**edit)
    told.close()
    assert not told.room.spare.exists()


def test_a_photo_is_replaced_by_what_lies_there_now(told: ToldFolder, tmp_path: Path) -> None:
    photo = tmp_path / "jar.jpg"
    for content in (b"first", b"second", b"third"):
        photo.write_bytes(content)
        told.publish(Wanted(site(), {"jar.jpg": photo}), {"jar.jpg"})
        assert standing_in(told.room.folder)["jar.jpg"] == content


def test_pages_come_and_go(told: ToldFolder) -> None:
    more = {**site(), "b/new.html": b"new"}
    told.publish(Wanted(more), {"b/new.html"})
    assert standing_in(told.room.folder) == more
    told.publish(Wanted(site()), {"b/new.html"})
    assert standing_in(told.room.folder) == site()


def test_what_someone_put_there_in_between_stays(told: ToldFolder) -> None:
    for name, number in (("CNAME", "1"), ("a/mine.txt", "2"), ("b/mine.txt", "3")):
        put(told.room.folder, name)
        told.publish(Wanted(site(index=number)), {"index.html"})
        standing = standing_in(told.room.folder)
        assert standing[name] == b"mine"
        assert standing["index.html"] == number.encode()


def test_a_site_that_another_build_put_there_is_replaced_as_a_whole(told: ToldFolder) -> None:
    publish(site(a__one="of another day"), {}, told.room.folder)
    told.publish(Wanted(site(index="new")), {"index.html"})
    assert standing_in(told.room.folder) == site(index="new")


def test_what_could_not_be_published_comes_with_the_next(told: ToldFolder) -> None:
    pages = {path: text for path, text in site(index="new").items() if path != "a/two.html"}
    with pytest.raises(PublishError, match="No such file"):
        gone = {"a/two.html": Path("gone.html")}
        told.publish(Wanted(pages, gone), {"index.html", "a/two.html"})
    assert standing_in(told.room.folder) == site()
    told.publish(Wanted(site(index="new", a__one="1")), {"a/one.html"})
    assert standing_in(told.room.folder) == site(index="new", a__one="1")


def test_a_folder_of_someone_elses_is_refused_as_ever(tmp_path: Path) -> None:
    put(tmp_path / "clients", "accounts.txt")
    with pytest.raises(PublishError, match=r"accounts\.txt"):
        ToldFolder(tmp_path / "clients").publish(Wanted(site()), {"index.html"})
