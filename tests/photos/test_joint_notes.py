"""The notes of all finished photos in one file: it saves time, and nothing hangs on it."""

from pathlib import Path

import pytest

from corymb.photos.joint_notes import JointNotes

STAMP = [100, 5, 33188]
NOTE = {"width": 1200}


@pytest.fixture
def file(tmp_path: Path) -> Path:
    notes = JointNotes(tmp_path / "notes.json")
    notes.add("one", STAMP, NOTE)
    notes.save()
    return tmp_path / "notes.json"


@pytest.mark.parametrize(
    ("key", "stamp", "found"),
    [
        pytest.param("one", STAMP, NOTE, id="as it was kept"),
        pytest.param("one", [100, 6, 33188], None, id="its own file was written anew"),
        pytest.param("one", [], None, id="its own file is gone"),
        pytest.param("other", STAMP, None, id="another photo"),
    ],
)
def test_a_note_counts_while_its_own_file_stands_as_it_did(
    file: Path, key: str, stamp: list[int], found: object
) -> None:
    assert JointNotes(file).of(key, stamp) == found


def test_two_programs_keep_each_other_s_notes(file: Path) -> None:
    here, there = JointNotes(file), JointNotes(file)
    here.add("two", STAMP, NOTE)
    there.add("three", STAMP, NOTE)
    here.save()
    there.save()
    assert all(JointNotes(file).of(key, STAMP) for key in ("one", "two", "three"))


def test_notes_of_photos_that_nobody_uses_any_more_go(file: Path) -> None:
    JointNotes(file).keep_only(["two"])
    assert JointNotes(file).of("one", STAMP) is None


@pytest.mark.parametrize("harm", [b"", b"{}", b'{"one": 1}' + bytes(16)])
def test_a_harmed_or_lost_file_only_holds_nothing(file: Path, harm: bytes) -> None:
    file.write_bytes(harm)
    notes = JointNotes(file)
    assert notes.of("one", STAMP) is None
    notes.add("one", STAMP, NOTE)
    notes.save()
    assert JointNotes(file).of("one", STAMP) == NOTE
