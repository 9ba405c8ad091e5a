"""A build is a function of its files: twice the same, by Corymb or by MkDocs."""

from __future__ import annotations

import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from corymb.site.build import build_sites
from corymb.site.settings import AUDIENCES, SiteSettings
from corymb.views.pieces import Audience

ROOT = Path(__file__).parents[2]
SETTINGS = """\
site_name: Any
site_url: https://teaselandrook.example/
docs_dir: {root}/content/pages
site_dir: {out}
use_directory_urls: false
theme: {{name: corymb}}
plugins:
  - corymb: {{studio: {root}/content, cache: {root}/.cache/corymb, audience: {audience}}}
"""


def everything_in(folder: Path) -> dict[str, bytes]:
    return {
        str(file.relative_to(folder)): file.read_bytes()
        for file in folder.rglob("*")
        if file.is_file() and not file.name.startswith(".")
    }


def built(folder: Path, day: date) -> dict[Audience, dict[str, bytes]]:
    settings = SiteSettings(
        config_file=folder / "mkdocs.yml",
        studio_folder=ROOT / "content",
        cache_folder=ROOT / ".cache" / "corymb",
        site_url="https://teaselandrook.example/",
    )
    report = build_sites(settings, AUDIENCES, day)
    assert report.errors == []
    return {audience: everything_in(settings.output(audience)) for audience in AUDIENCES}


def test_both_sites_are_the_same_byte_for_byte_when_built_twice(tmp_path: Path) -> None:
    first = built(tmp_path / "one", date(2026, 9, 16))
    second = built(tmp_path / "two", date(2026, 9, 16))
    assert first == second
    assert built(tmp_path / "one", date(2026, 9, 16)) == first  # over itself as well


@pytest.mark.parametrize("audience", AUDIENCES)
def test_a_plain_mkdocs_build_makes_the_same_site(tmp_path: Path, audience: Audience) -> None:
    out = tmp_path / "site"
    config = tmp_path / "mkdocs.yml"
    config.write_text(SETTINGS.format(root=ROOT, out=out, audience=audience))
    run = subprocess.run(
        [sys.executable, "-m", "mkdocs", "build", "--strict", "-q", "-f", str(config)],
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    ours = built(tmp_path / "ours", date.today())[audience]
    theirs = everything_in(out)
    # MkDocs adds a sitemap of its own beside ours; every file of ours is there, byte for byte.
    assert {path for path in ours if theirs.get(path) != ours[path]} <= {"sitemap.xml"}
    assert set(theirs) - set(ours) <= {"sitemap.xml", "sitemap.xml.gz"}
