"""A publishing that is killed leaves whole sites, and the one after it is right.

Whole builds of the demo are killed by `python -m tests.fuzz.kills`.
"""

from __future__ import annotations

import os
import random
import time
from pathlib import Path

import pytest

from corymb.site.publishing import Wanted
from tests.fuzz.kills import State, run
from tests.fuzz.served import site_in

KILLS = 24


def published(folder: Path, says: str) -> State:
    """A small studio's two sites, which stand there once; on each page of them stands the same."""
    photo = folder / f"{says}.jpg"
    photo.write_bytes(says.encode())
    paths = [f"arrangements/{number}.html" for number in range(40)]
    pages = {path: f"{says} {path}".encode() for path in ("index.html", f"{says}.html", *paths)}
    sites = {folder / who: Wanted(pages, {"jar.jpg": photo}) for who in ("clients", "staff")}
    state = State(lambda: None, sites)
    state.build = state.publish
    began = time.perf_counter()
    state.publish()
    state.seconds = state.last_seconds = time.perf_counter() - began
    state.sites = {each: site_in(each) for each in sites}
    return state


@pytest.mark.skipif(not hasattr(os, "fork"), reason="programs are begun by copying this one")
def test_no_kill_at_any_moment_breaks_what_is_served(tmp_path: Path) -> None:
    states = [published(tmp_path, says) for says in ("one", "other")]
    assert states[0].sites != states[1].sites
    course = run(states, KILLS, random.Random(7))
    assert course.troubles == []
    assert course.looks > 0
    assert course.in_time > 0


@pytest.mark.parametrize("broken", ["half of it", "none of it", "of two builds"])
def test_a_broken_site_would_be_seen(tmp_path: Path, broken: str) -> None:
    states = [published(tmp_path, says) for says in ("one", "other")]

    def breaks() -> None:
        for path in (tmp_path / "staff" / "arrangements").iterdir():
            if broken == "none of it":
                path.unlink()
            elif broken == "half of it":
                path.write_bytes(path.read_bytes()[:3])
            else:
                path.write_bytes(path.read_bytes().replace(b"other", b"one"))
            if broken == "of two builds":
                break

    for state in states:
        state.build = breaks
    assert run(states, 1, random.Random(7)).troubles
