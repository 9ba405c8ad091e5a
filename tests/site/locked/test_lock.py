"""Does a lock stay for as long as its passphrase does, and no longer?"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from corymb.site.locked.keys import Passphrase
from corymb.site.locked.lock import Lock, is_locked, lock_for, standing_lock
from corymb.site.locked.places import LOCK

RIGHT, WRONG = Passphrase("bako-rimu-tesa", 10), Passphrase("bako-rimu-tesi", 10)


@pytest.fixture
def hung(tmp_path: Path) -> Lock:
    """The lock on the site in a folder."""
    lock = lock_for(RIGHT, tmp_path)
    (tmp_path / LOCK).parent.mkdir()
    (tmp_path / LOCK).write_bytes(lock.file())
    return lock


def test_with_the_same_passphrase_the_lock_stays_to_the_byte(hung: Lock, tmp_path: Path) -> None:
    again = lock_for(RIGHT, tmp_path)
    assert again == hung
    assert again.file() == hung.file()


def test_with_another_passphrase_there_is_another_lock(hung: Lock, tmp_path: Path) -> None:
    assert standing_lock(WRONG, tmp_path) is None
    assert lock_for(WRONG, tmp_path).salt != hung.salt


def test_two_sites_of_one_passphrase_have_nothing_in_common(tmp_path: Path) -> None:
    one, other = lock_for(RIGHT, tmp_path / "a"), lock_for(RIGHT, tmp_path / "b")
    assert one.salt != other.salt and one.keys != other.keys


CHANGED: dict[str, dict[str, object]] = {
    "fewer rounds": {"rounds": 1},
    "another salt": {"salt": "00" * 16},
    "a short salt": {"salt": "00"},
    "no salt": {"salt": None},
    "not hexadecimal": {"check": "zz"},
    "a check cut off": {"check": "00"},
}


@pytest.mark.parametrize("change", CHANGED)
def test_a_lock_that_someone_changed_is_none(change: str, hung: Lock, tmp_path: Path) -> None:
    (tmp_path / LOCK).write_text(json.dumps({**hung.told, **CHANGED[change]}))
    assert standing_lock(RIGHT, tmp_path) is None


@pytest.mark.parametrize("written", ["", "[]", "{}", "\x00"], ids=repr)
def test_a_lock_that_is_broken_is_replaced(written: str, hung: Lock, tmp_path: Path) -> None:
    (tmp_path / LOCK).write_text(written)
    assert is_locked(tmp_path)
    assert lock_for(RIGHT, tmp_path).salt != hung.salt


def test_an_empty_folder_is_not_locked(tmp_path: Path) -> None:
    assert not is_locked(tmp_path)
    assert standing_lock(RIGHT, tmp_path) is None
