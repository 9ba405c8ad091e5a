"""A kept file that was cut off anywhere, or in which a bit turned, is known for broken."""

from __future__ import annotations

from pathlib import Path

import pytest

from corymb.files.sharing import SharedUse
from corymb.files.unharmed import keep, kept_in, sealed, unsealed
from corymb.photos.stat_index import StatIndex
from corymb.photos.store import Store

BODIES = [
    pytest.param(b"", id="nothing"),
    pytest.param(b'<svg viewBox="0 0 1 1"></svg>\n', id="a drawing"),
    pytest.param(bytes(range(256)), id="any bytes"),
]


@pytest.mark.parametrize("body", BODIES)
def test_what_is_kept_is_found_as_it_was(tmp_path: Path, body: bytes) -> None:
    keep(tmp_path / "kept", body)
    assert kept_in(tmp_path / "kept") == body


@pytest.mark.parametrize("body", BODIES)
def test_nothing_shorter_is_taken_for_it(body: bytes) -> None:
    whole = sealed(body)
    for length in range(len(whole)):
        with pytest.raises(ValueError, match="not what was written"):
            unsealed(whole[:length])


@pytest.mark.parametrize("body", BODIES)
def test_no_turned_bit_is_overlooked(body: bytes) -> None:
    whole = sealed(body)
    for place in range(8 * len(whole)):
        broken = bytearray(whole)
        broken[place // 8] ^= 1 << place % 8
        with pytest.raises(ValueError, match="not what was written"):
            unsealed(bytes(broken))


def test_a_folder_in_place_of_a_kept_file_gives_way(tmp_path: Path) -> None:
    for name in ("kept", "seen.json", "in-use"):
        (tmp_path / name / "inside").mkdir(parents=True)
    keep(tmp_path / "kept", b"whole")
    assert kept_in(tmp_path / "kept") == b"whole"
    index = StatIndex(tmp_path / "seen.json")
    index.digest(tmp_path / "kept")
    index.save()
    assert (tmp_path / "seen.json").is_file()
    SharedUse(tmp_path / "in-use").end()


def test_a_file_in_place_of_a_kept_folder_gives_way(tmp_path: Path) -> None:
    (tmp_path / "finished").write_bytes(b"")
    assert Store(tmp_path / "finished").find("key") is None
    assert (tmp_path / "finished").is_dir()
