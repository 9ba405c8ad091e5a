"""A build is a function of its files: twice the same, by Corymb or by MkDocs."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from corymb.site.build import build_sites
from corymb.site.keeping import MARK
from corymb.site.settings import AUDIENCES, read_settings
from corymb.views.pieces import Audience

ROOT = Path(__file__).parents[2]
DEMO = ROOT / "site_demo" / "mkdocs.yml"
CACHE = ROOT / ".cache" / "corymb"
SETTINGS = """\
site_name: Any
site_url: https://teaselandrook.example/
docs_dir: {root}/content/pages
use_directory_urls: false
theme: {{name: corymb}}
plugins:
  - corymb: {{studio: {root}/content, cache: {cache}, audience: {audience}}}
"""
Files = dict[str, bytes]


def everything_in(folder: Path) -> Files:
    return {
        str(file.relative_to(folder)): file.read_bytes()
        for file in folder.rglob("*")
        if file.is_file() and file.name != MARK
    }


def settings_in(folder: Path, cache: Path = CACHE, audience: Audience = "clients") -> Path:
    folder.mkdir(exist_ok=True)
    file = folder / "mkdocs.yml"
    file.write_text(SETTINGS.format(root=ROOT, cache=cache, audience=audience))
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


def built_apart(config: Path, hash_seed: int) -> dict[str, Files]:
    corymb = "from corymb.cli import main; main()"
    run(hash_seed, "-c", corymb, "build", "--on", "2026-09-16", "-f", str(config))
    return {audience: everything_in(config.parent / audience) for audience in AUDIENCES}


def built_by_corymb(config: Path, folder: Path, audience: Audience) -> Files:
    """One site by this configuration file, but put into `folder`."""
    settings = replace(read_settings(config), config_file=folder / "mkdocs.yml")
    assert build_sites(settings, [audience], date.today()).errors == []
    return everything_in(settings.output(audience))


def differing(one: Files, other: Files) -> list[str]:
    return sorted(path for path in {*one, *other} if one.get(path) != other.get(path))


def test_both_sites_are_the_same_byte_for_byte_when_built_twice(tmp_path: Path) -> None:
    drawing_anew = tmp_path / "cache"
    drawing_anew.mkdir()
    (CACHE / "photos").mkdir(parents=True, exist_ok=True)
    (drawing_anew / "photos").symlink_to(CACHE / "photos")  # photos take too long to make twice
    one, two = settings_in(tmp_path / "one"), settings_in(tmp_path / "two", drawing_anew)
    first, anew, over_itself = built_apart(one, 1), built_apart(two, 2), built_apart(one, 3)
    for audience in AUDIENCES:
        assert "index.html" in first[audience]
        assert differing(first[audience], anew[audience]) == []
        assert differing(first[audience], over_itself[audience]) == []


@pytest.mark.parametrize("audience", AUDIENCES)
def test_a_plain_mkdocs_build_makes_the_same_site(tmp_path: Path, audience: Audience) -> None:
    config = DEMO if audience == "clients" else settings_in(tmp_path, audience=audience)
    out = tmp_path / "by-mkdocs"
    run(0, "-m", "mkdocs", "build", "--strict", "-q", "-f", str(config), "-d", str(out))
    ours = built_by_corymb(config, tmp_path, audience)
    assert "index.html" in ours
    assert differing(ours, everything_in(out)) == []
