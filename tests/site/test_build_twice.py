"""A build is a function of its files: twice the same, by Corymb or by MkDocs."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from corymb.files.sharing import SharedUse
from corymb.site.drawn.kept import KINDS
from corymb.site.publishing.keeping import MARK
from corymb.views.pieces import AUDIENCES, Audience
from tests.conftest import CACHE, DAY, ROOT, SETTINGS, STUDIO

OWN_SETTINGS = ROOT / "site_demo" / "mkdocs.yml"
CORYMB = "from corymb.cli import main; main()"

# The command `mkdocs` on the day of the demo's sites: it has no option for that.
MKDOCS = f"""
from datetime import date
from mkdocs.__main__ import cli
from corymb.site import plugin

plugin.today_of = lambda studio: date.fromisoformat("{DAY}")
cli()
"""
Files = dict[str, bytes]

LEFT_OUT = {"svg": 5, "json": 5, "jpg": 20, "avif": 20}
"""One in so many kept pictures is made anew; pixels take longest, and are all made alike."""


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


def pictures_but_for_a_spread(folder: Path) -> list[Path]:
    """Fills a folder with the demo's kept pictures; gives those of each kind that are left out.

    They are named by digests, so that every so manieth is of anything: of a look or a stem, from
    the front or above.
    """
    kept = CACHE / "pictures"
    folder.mkdir()
    in_use = SharedUse(kept / "in-use")  # nobody tidies up meanwhile
    left_out = [
        file for kind in KINDS for file in sorted(kept.glob(f"*.{kind}"))[:: LEFT_OUT[kind]]
    ]
    for file in kept.iterdir():
        if file not in left_out:
            shutil.copy(file, folder)
    in_use.end()
    return left_out


def older_sites(folder: Path, sites: dict[Audience, Path]) -> None:
    """Both sites as they may have stood: a page was another, and one wasn't there yet."""
    for audience, site in sites.items():
        shutil.copytree(site, folder / audience)
        (folder / audience / "index.html").write_text("As it was.")
        (folder / audience / "flowers.html").unlink()


def test_both_sites_are_the_same_byte_for_byte_when_drawn_anew_and_built_over_older_ones(
    tmp_path: Path, demo_sites: dict[Audience, Path]
) -> None:
    cache = tmp_path / "cache"
    cache.mkdir()
    (CACHE / "photos").mkdir(parents=True, exist_ok=True)
    (cache / "photos").symlink_to(CACHE / "photos")  # photos take too long to make twice
    left_out = pictures_but_for_a_spread(cache / "pictures")
    config = settings_in(tmp_path / "again", cache)
    older_sites(config.parent, demo_sites)
    anew = built_apart(config, 1)
    for audience in AUDIENCES:
        first = everything_in(demo_sites[audience])
        assert "index.html" in first
        assert differing(first, anew[audience]) == []
    drawn = [file for file in left_out if (cache / "pictures" / file.name).exists()]
    assert {file.suffix for file in drawn} == {f".{kind}" for kind in KINDS}
    for file in drawn:
        assert (cache / "pictures" / file.name).read_bytes() == file.read_bytes(), file.name


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
