"""Pictures are drawn on all of a machine's cores, and come out as if there were one."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

import corymb
from corymb.language import in_language
from corymb.picture import PictureStem
from corymb.site.drawn import hands
from corymb.site.drawn.hands import all_drawn
from corymb.site.drawn.kept import Kept
from corymb.site.drawn.pictures import draw_all
from corymb.site.drawn.to_draw import Drawn, StemToDraw
from corymb.studio.load import read_studio

STARTER = Path(corymb.__file__).parent / "starter" / "content"
PETALS = ("#e8c2b4", "#c98472", "#7a2e3b", "#f4efe6", "#5b6d3a", "#d9a441")
ASKED = [
    StemToDraw(PictureStem(f"stem-{n}", 1, form, "focal", "light", ((petal, 1.0),), "#5d7350", 9))
    for n, (petal, form) in enumerate(zip(PETALS, ("daisy", "globe", "cup") * 2, strict=True))
]
FALLING_OVER = hands.START.replace("work()", "import os; os._exit(1)")
FALLING_OVER_LATER = (
    "import pickle, sys; sys.path[:] = pickle.load(sys.stdin.buffer); "
    "pickle.load(sys.stdin.buffer), pickle.load(sys.stdin.buffer); "
    "sys.stdout.write('.'); sys.stdout.flush()"
)

# A script as people write them: what it does isn't guarded by the name it runs under.
SCRIPT = """
import sys
from pathlib import Path
from corymb.language import in_language
from corymb.site.drawn import hands, to_draw
from corymb.site.drawn.pictures import draw_all
from corymb.studio.load import read_studio

print("begun")
hands.cores, hands.STEMS_A_HAND = lambda: 2, 60
to_draw.draw = to_draw.draw_side_by_side = to_draw.draw_stem = lambda *_: sys.exit("drawn here")
studio, _ = read_studio(Path(sys.argv[1]))
with in_language("de-AT"):
    draw_all(studio, Path(sys.argv[2]), lambda what, done, total: print(done, total))
"""


@pytest.fixture(autouse=True)
def two_cores(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(hands, "cores", lambda: 2)
    monkeypatch.setattr(hands, "STEMS_A_HAND", 1)


@pytest.fixture
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> list[Drawn]:
    """What comes of it with no other hand."""
    with monkeypatch.context() as patched:
        patched.setattr(hands, "cores", lambda: 1)
        return all_drawn(Kept(tmp_path / "alone", "code"), ASKED)


def everything_in(folder: Path) -> dict[str, bytes]:
    return {file.name: file.read_bytes() for file in folder.iterdir()}


def test_an_unguarded_script_draws_on_all_cores_what_one_draws_alone_byte_for_byte(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    script = tmp_path / "mine.py"
    script.write_text(SCRIPT)
    done = subprocess.run(
        [sys.executable, script, STARTER, tmp_path / "hands"],
        capture_output=True,
        text=True,
        check=False,
    )
    monkeypatch.setattr(hands, "cores", lambda: 1)
    studio, _ = read_studio(STARTER)
    assert studio
    with in_language("de-AT"):
        draw_all(studio, tmp_path / "alone", lambda what, done, total: None)
    assert done.returncode == 0, done.stderr
    begun, *told = done.stdout.splitlines()
    assert begun == "begun"
    assert told == sorted(told, key=lambda line: int(line.split()[0]))
    assert told[-1].split() == ["13", "13"]
    assert everything_in(tmp_path / "hands") == everything_in(tmp_path / "alone")


@pytest.mark.parametrize(
    "start",
    [
        pytest.param(FALLING_OVER, id="before it drew anything"),
        pytest.param(FALLING_OVER_LATER, id="having said that it drew what it did not"),
    ],
)
def test_what_a_hand_that_falls_over_leaves_is_drawn_all_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, alone: list[Drawn], start: str
) -> None:
    monkeypatch.setattr(hands, "START", start)
    assert all_drawn(Kept(tmp_path / "hands", "code"), ASKED) == alone


@pytest.mark.parametrize(
    ("name", "value"),
    [
        pytest.param("executable", "", id="no Python that could be started again"),
        pytest.param("executable", "/nowhere/python", id="a Python that is gone"),
        pytest.param("frozen", True, id="a program in one file"),
    ],
)
def test_where_no_hand_can_be_started_one_draws_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, alone: list[Drawn], name: str, value: object
) -> None:
    monkeypatch.setattr(sys, name, value, raising=False)
    assert all_drawn(Kept(tmp_path / "hands", "code"), ASKED) == alone


def test_no_hand_is_started_for_what_is_kept_or_for_a_handful(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, alone: list[Drawn]
) -> None:
    monkeypatch.setattr(hands, "_started", None)
    assert all_drawn(Kept(tmp_path / "alone", "code"), ASKED) == alone
    monkeypatch.setattr(hands, "STEMS_A_HAND", 4)
    assert all_drawn(Kept(tmp_path / "few", "code"), ASKED) == alone


def test_an_interruption_sends_every_hand_home(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    started, start = list[subprocess.Popen[bytes]](), hands._started

    def noted() -> subprocess.Popen[bytes] | None:
        hand = start()
        started.extend([hand] if hand else [])
        return hand

    def interrupted(done: int, total: int) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(hands, "_started", noted)
    with pytest.raises(KeyboardInterrupt):
        all_drawn(Kept(tmp_path, "code"), ASKED, interrupted)
    assert len(started) == 2
    assert all(hand.poll() is not None for hand in started)


def test_a_mistake_is_told_as_it_is_by_one_alone(tmp_path: Path) -> None:
    unknown = StemToDraw(replace(ASKED[0].stem, form="no-form"))
    with pytest.raises(KeyError, match="no-form"):
        all_drawn(Kept(tmp_path, "code"), [*ASKED, unknown])
