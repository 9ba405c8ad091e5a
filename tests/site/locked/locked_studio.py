"""A small studio with one order; its staff's site is locked twice, with another passphrase each.

In the second build two pages are in each other's place, as a host could put them.
"""

from __future__ import annotations

import os
import shutil
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

import corymb
from corymb.site.build import build_sites
from corymb.site.locked.keys import Passphrase
from corymb.site.locked.lock import standing_lock
from corymb.site.locked.made import Sealer
from corymb.site.settings import read_settings
from tests.once import made_once

STARTER = Path(corymb.__file__).parent / "starter"
DAY = date(2026, 7, 7)
ROUNDS = 1000  # so that a test need not wait
FIRST, SECOND = "plum lamp oar velvet kite", "mauve ladder, 7 otters"
SECRET = "Ottoline Marsh"
ORDER = f"""\
name: Supper of {SECRET}
client: {{name: {SECRET}}}
date: 2026-07-11
where: {{place: the market hall, setting: indoors, light: daylight}}
handover: collection
lines:
  - 8 kitchen-jug
"""
ORDER_PAGE, CUT = "orders/ottoline-marsh.html", "cut/2026-07-09.html"
SWAPPED = ("cards/posy.html", "weeks/2026-W27.html")  # kept by no phone


def locked_builds(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """Both builds, made once for a whole run."""

    def make(folder: Path) -> None:
        build(folder / "first", FIRST)
        build(folder / "second", SECOND)
        swap(folder / "second" / "staff")
        make_older(folder / "first" / "staff")

    folder = made_once(tmp_path_factory, "locked", make)
    return {name: folder / name for name in ("first", "second")}


def build(folder: Path, passphrase: str) -> None:
    """The staff's site of the starter's studio with one order, locked."""
    shutil.copytree(STARTER, folder)
    order = folder / "content" / "orders" / "2026" / "ottoline-marsh.yml"
    order.parent.mkdir(parents=True)
    order.write_text(ORDER, encoding="utf-8")
    settings = replace(
        read_settings(folder / "mkdocs.yml"),
        cache_folder=folder.parent / "cache",
        staff_url="https://bench.example/staff/",
        lock_staff=True,
    )
    locked_with = Passphrase(passphrase, ROUNDS)
    report = build_sites(settings, ["staff"], DAY, passphrase=locked_with)
    assert not report.errors, report.errors
    shutil.copy(folder / "staff" / "404.html", folder / "404.html")


def swap(staff: Path) -> None:
    """What a host could do: one page in place of another."""
    sealer = sealer_of(staff, SECOND)
    one, other = (staff / sealer.address(path) for path in SWAPPED)
    before = one.read_bytes()
    one.write_bytes(other.read_bytes())
    other.write_bytes(before)


def make_older(site: Path) -> None:
    """By a minute: a browser that asks for what is newer is told so in whole seconds."""
    for file in site.rglob("*"):
        before = file.stat().st_mtime - 60
        os.utime(file, (before, before))


def sealer_of(staff: Path, passphrase: str) -> Sealer:
    lock = standing_lock(Passphrase(passphrase, ROUNDS), staff)
    assert lock is not None
    return Sealer(lock, staff)
