"""Drawn pictures are kept between builds, in a folder where other things may lie."""

from __future__ import annotations

import json
import re
import shutil
from errno import ENOSPC
from pathlib import Path

import pytest

from corymb.files.sharing import SharedUse
from corymb.files.unharmed import keep
from corymb.language import in_language
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.lit import colours_in_light
from corymb.site.drawn.pictures import draw_all
from corymb.studio.studio import Studio
from corymb.trade.light.lights import CANDLE
from corymb.trade.light.seen import seen

OLD = f"{'0a' * 16}.svg"
USED = re.compile(r'href="(#[^"]+)"')
UNFINISHED = f"{OLD}.{'0b' * 16}.unfinished"


@pytest.fixture(scope="module")
def drawn_once(studio: Studio, tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("drawn")
    drawn(studio, folder)
    return folder


@pytest.fixture
def kept_before(drawn_once: Path, tmp_path: Path) -> Path:
    """A folder of its own for a test, with everything in it that a build drew."""
    return shutil.copytree(drawn_once, tmp_path / "kept")


def drawn(studio: Studio, folder: Path) -> set[str]:
    """Draw; the names of what is in the folder then."""
    draw_all(studio, folder, lambda what, done, total: None)
    return {entry.name for entry in folder.iterdir()}


def test_what_this_build_did_not_use_is_removed(studio: Studio, kept_before: Path) -> None:
    kept = drawn(studio, kept_before)
    for name in (OLD, UNFINISHED):
        (kept_before / name).write_text("<svg/>")
    assert drawn(studio, kept_before) == kept


def test_what_another_program_put_there_stays(studio: Studio, kept_before: Path) -> None:
    kept = drawn(studio, kept_before)
    others = {"logo.svg", "notes.txt", f"{'0a' * 16}.png"}
    for name in others:
        (kept_before / name).write_text("mine")
    (kept_before / f"{'0c' * 16}.svg").mkdir()
    assert drawn(studio, kept_before) == {*kept, *others, f"{'0c' * 16}.svg"}


def test_nothing_is_removed_while_another_build_is_at_it(studio: Studio, kept_before: Path) -> None:
    drawn(studio, kept_before)
    (kept_before / UNFINISHED).write_text("<svg/>")
    other = SharedUse(kept_before / "in-use")
    assert UNFINISHED in drawn(studio, kept_before)
    other.end()
    assert UNFINISHED not in drawn(studio, kept_before)


def test_a_picture_that_was_kept_is_not_drawn_again(studio: Studio, kept_before: Path) -> None:
    first = draw_all(studio, kept_before, lambda what, done, total: None)
    for kept in kept_before.glob("*.svg"):
        keep(kept, b'<svg viewBox="0 0 1 1"></svg>')
    again = draw_all(studio, kept_before, lambda what, done, total: None)
    assert set(again.drawn.values()) == {'<svg viewBox="0 0 1 1"></svg>'}
    assert set(again.drawn) == set(first.drawn)


def test_a_picture_is_drawn_again_for_another_language(tmp_path: Path) -> None:
    kept = Kept(tmp_path, "code")
    with in_language("de-AT"):
        other = Kept(tmp_path, "code")
    assert kept.or_drawn("a jar", lambda: "<svg>in a jar</svg>") == "<svg>in a jar</svg>"
    assert other.or_drawn("a jar", lambda: "<svg>im Glas</svg>") == "<svg>im Glas</svg>"
    assert kept.or_drawn("a jar", lambda: "<svg/>") == "<svg>in a jar</svg>"


def test_what_becomes_of_the_colours_is_kept_too(studio: Studio, kept_before: Path) -> None:
    draw_all(studio, kept_before, lambda what, done, total: None)
    for kept in kept_before.glob("*.json"):
        keep(kept, b"{}")
    assert set(draw_all(studio, kept_before, lambda what, done, total: None).lit.values()) == {"{}"}


@pytest.mark.parametrize("kind", ["svg", "json", "jpg", "avif"])
def test_a_picture_that_is_not_what_was_kept_is_made_again(tmp_path: Path, kind: str) -> None:
    kept = Kept(tmp_path, "code")
    kept.or_made("a jar", lambda: b"<svg>made</svg>", kind)
    [file] = tmp_path.glob(f"*.{kind}")
    whole = file.read_bytes()
    for harmed in (b"", whole[:-1], whole[:20], b"X" + whole[1:], whole.replace(b"ma", b"fa")):
        file.write_bytes(harmed)
        assert kept.or_made("a jar", lambda: b"<svg>again</svg>", kind) == b"<svg>again</svg>"
        file.write_bytes(whole)
        assert kept.or_made("a jar", lambda: b"", kind) == b"<svg>made</svg>"


def test_a_picture_is_made_even_where_it_cannot_be_kept(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(ENOSPC, "No space left on device")

    kept = Kept(tmp_path, "code")
    monkeypatch.setattr(Path, "write_bytes", full)
    assert kept.or_drawn("a jar", lambda: "<svg>made</svg>") == "<svg>made</svg>"
    assert [file.name for file in tmp_path.iterdir()] == ["in-use"]


def test_the_table_has_every_colour_of_its_picture_in_every_light(
    studio: Studio, kept_before: Path
) -> None:
    pictures = draw_all(studio, kept_before, lambda what, done, total: None)
    assert pictures.lit
    for href, text in pictures.lit.items():
        table = json.loads(text)
        drawing = pictures.drawn[href.replace(".json", ".svg")]
        painted = set(re.findall(r"=\"(#[0-9a-fA-F]+)\"", drawing)) - set(USED.findall(drawing))
        assert set(table) == {"low-sun", "candle"}
        assert all(set(colours) == painted for colours in table.values()), href


def test_a_table_says_what_is_seen_and_leaves_alone_what_is_no_colour() -> None:
    svg = '<svg><use href="#decade"/><path fill="#ffffff" stroke="#401020"/>#123456</svg>'
    table = json.loads(colours_in_light(svg, {"candle": CANDLE}))
    assert table == {"candle": {hex_: seen(hex_, CANDLE) for hex_ in ("#401020", "#ffffff")}}
