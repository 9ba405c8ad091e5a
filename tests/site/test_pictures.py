"""Drawn pictures are kept between builds, in a folder where other things may lie."""

from __future__ import annotations

from pathlib import Path

import pytest

import corymb
from corymb.photos.sharing import SharedUse
from corymb.site.pictures import draw_all
from corymb.studio.load import read_studio
from corymb.studio.studio import Studio

STARTER = Path(corymb.__file__).parent / "starter" / "content"
OLD = f"{'0a' * 16}.svg"
UNFINISHED = f"{OLD}.{'0b' * 16}.unfinished"


@pytest.fixture(scope="module")
def studio() -> Studio:
    studio, _ = read_studio(STARTER)
    assert studio is not None
    return studio


def drawn(studio: Studio, folder: Path) -> set[str]:
    """Draw; the names of what is in the folder then."""
    draw_all(studio, folder, lambda what, done, total: None)
    return {entry.name for entry in folder.iterdir()}


def test_what_this_build_did_not_use_is_removed(studio: Studio, tmp_path: Path) -> None:
    kept = drawn(studio, tmp_path)
    for name in (OLD, UNFINISHED):
        (tmp_path / name).write_text("<svg/>")
    assert drawn(studio, tmp_path) == kept


def test_what_another_program_put_there_stays(studio: Studio, tmp_path: Path) -> None:
    kept = drawn(studio, tmp_path)
    others = {"logo.svg", "notes.txt", f"{'0a' * 16}.png"}
    for name in others:
        (tmp_path / name).write_text("mine")
    (tmp_path / f"{'0c' * 16}.svg").mkdir()
    assert drawn(studio, tmp_path) == {*kept, *others, f"{'0c' * 16}.svg"}


def test_nothing_is_removed_while_another_build_is_at_it(studio: Studio, tmp_path: Path) -> None:
    drawn(studio, tmp_path)
    (tmp_path / UNFINISHED).write_text("<svg/>")
    other = SharedUse(tmp_path / "in-use")
    assert UNFINISHED in drawn(studio, tmp_path)
    other.end()
    assert UNFINISHED not in drawn(studio, tmp_path)


def test_a_picture_that_was_kept_is_not_drawn_again(studio: Studio, tmp_path: Path) -> None:
    first = draw_all(studio, tmp_path, lambda what, done, total: None)
    for kept in tmp_path.glob("*.svg"):
        kept.write_text('<svg viewBox="0 0 1 1"></svg>')
    again = draw_all(studio, tmp_path, lambda what, done, total: None)
    assert set(again.drawn.values()) == {'<svg viewBox="0 0 1 1"></svg>'}
    assert set(again.drawn) == set(first.drawn)
