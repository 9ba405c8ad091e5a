"""A build is a function of its files: twice the same, by Corymb or by MkDocs."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from corymb.site.publishing.keeping import MARK
from corymb.site.settings import AUDIENCES
from corymb.views.pieces import Audience
from tests.conftest import CACHE, DAY, ROOT, SETTINGS, STUDIO

OWN_SETTINGS = ROOT / "site_demo" / "mkdocs.yml"
CORYMB = "from corymb.cli import main; main()"

# The command `mkdocs` on the day of the demo's sites: it has no option for that.
MKDOCS = f"""
from datetime import date
from mkdocs.__main__ import cli
from corymb.site import plugin

class Then(date):
    today = staticmethod(lambda: date.fromisoformat("{DAY}"))

plugin.date = Then
cli()
"""
Files = dict[str, bytes]


def everything_in(folder: Path) -> Files:
    return {
        str(file.relative_to(folder)): file.read_bytes()
        for file in folder.rglob("*")
        if file.is_file() and file.name != MARK
    }


def settings_in(folder: Path, cache: Path = CACHE, more: str = "") -> Path:
    """The settings of the demo's sites as they are built for all tests, with `more` for Corymb."""
    folder.mkdir(exist_ok=True)
    file = folder / "mkdocs.yml"
    file.write_text(f"{SETTINGS.format(studio=STUDIO, cache=cache)}      {more}\n")
    return file


def run(hash_seed: int, *words: str) -> None:
    """A program of its own, whose sets come in an order of their own."""
    done = subprocess.run(
        [sys.executable, *words],
        env={**os.environ, "PYTHONHASHSEED": str(hash_seed)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr


def built_apart(config: Path, hash_seed: int) -> dict[Audience, Files]:
    run(hash_seed, "-c", CORYMB, "build", "--on", str(DAY), "-f", str(config))
    return {audience: everything_in(config.parent / audience) for audience in AUDIENCES}


def differing(one: Files, other: Files) -> list[str]:
    return sorted(path for path in {*one, *other} if one.get(path) != other.get(path))


def test_both_sites_are_the_same_byte_for_byte_when_built_twice(
    tmp_path: Path, demo_sites: dict[Audience, Path]
) -> None:
    drawing_anew = tmp_path / "cache"
    drawing_anew.mkdir()
    (CACHE / "photos").mkdir(parents=True, exist_ok=True)
    (drawing_anew / "photos").symlink_to(CACHE / "photos")  # photos take too long to make twice
    config = settings_in(tmp_path / "again", drawing_anew)
    anew, over_itself = built_apart(config, 1), built_apart(config, 2)
    for audience in AUDIENCES:
        first = everything_in(demo_sites[audience])
        assert "index.html" in first
        assert differing(first, anew[audience]) == []
        assert differing(first, over_itself[audience]) == []


@pytest.mark.parametrize("audience", AUDIENCES)
def test_a_plain_mkdocs_build_makes_the_same_site(
    tmp_path: Path, demo_sites: dict[Audience, Path], audience: Audience
) -> None:
    of_audience = f"audience: {audience}"
    config = OWN_SETTINGS if audience == "clients" else settings_in(tmp_path, more=of_audience)
    out = tmp_path / "by-mkdocs"
    run(0, "-c", MKDOCS, "build", "--strict", "-q", "-f", str(config), "-d", str(out))
    ours = everything_in(demo_sites[audience])
    assert "index.html" in ours
    assert differing(ours, everything_in(out)) == []
