"""Whatever became of the files that are kept between builds, the next build is the same."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from datetime import date
from itertools import cycle
from pathlib import Path

import pytest
from PIL import Image

import corymb
from corymb.site.build import build_sites
from corymb.site.settings import SiteSettings, read_settings
from tests.fuzz.served import Site, site_in

STARTER = Path(corymb.__file__).parent / "starter"
PHOTO = """
photos:
  - {file: photos/jug.jpg, alt: A jug, credit: Us, may be shown to: clients}
"""


def emptied(file: Path) -> None:
    file.write_bytes(b"")


def cut_short(file: Path) -> None:
    file.write_bytes(file.read_bytes()[:-1])


def halved(file: Path) -> None:
    file.write_bytes(file.read_bytes()[: file.stat().st_size // 2])


def turned(file: Path) -> None:
    data = bytearray(file.read_bytes())
    data[len(data) // 2] ^= 4
    file.write_bytes(data)


def made_a_folder(file: Path) -> None:
    file.unlink()
    (file / "inside").mkdir(parents=True)


HARMS: list[Callable[[Path], None]] = [emptied, cut_short, halved, turned, made_a_folder]


@pytest.fixture
def settings(tmp_path: Path) -> SiteSettings:
    """Those of the starter's studio, with one photo."""
    folder = shutil.copytree(STARTER, tmp_path / "studio")
    (folder / "content" / "photos").mkdir()
    Image.new("RGB", (800, 600), "#a3412a").save(folder / "content" / "photos" / "jug.jpg")
    recipe = folder / "content" / "recipes" / "posy" / "kitchen-jug.yml"
    recipe.write_text(recipe.read_text(encoding="utf-8") + PHOTO, encoding="utf-8")
    return read_settings(folder / "mkdocs.yml")


def built(settings: SiteSettings) -> Site:
    report = build_sites(settings, ["clients"], date(2026, 9, 16))
    assert report.errors == []
    return site_in(settings.output("clients"))


def test_a_harmed_cache_is_found_out_and_made_good(settings: SiteSettings) -> None:
    first = built(settings)
    room = settings.output("clients").parent / ".clients.corymb"
    files = sorted(
        file
        for folder in (settings.cache_folder, room)
        for file in folder.rglob("*")
        if file.is_file() and file.name not in (".gitignore", "in-use")
    )
    assert len(files) > 3 * len(HARMS)
    for file, harm in zip(files, cycle(HARMS), strict=False):
        if file.stat().st_size:
            harm(file)
    shutil.rmtree(settings.output("clients"))
    assert built(settings) == first
