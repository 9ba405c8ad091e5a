"""A style link goes with its last day, by the studio's own clock, and leaves nothing behind."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from datetime import UTC, date, datetime, tzinfo
from pathlib import Path

import pytest
from mkdocs.commands.build import build
from mkdocs.config import load_config

from corymb.site.build import build_sites
from corymb.site.settings import read_settings
from tests.site.found_secrets import found_in
from tests.site.planted_studio import NAMED, Planted

CODE = "zq90051hush0h2fk7q3v8m2k7t5"
TITLE, NOTE = "zq90052hush", "zq90053hush"
WORDS = {word[:11]: "the link" for word in (CODE, TITLE, NOTE)}
LINK = f"""\
title: {TITLE}
code: {CODE}
date: 2027-07-17
expires: 2027-07-24
hours: 12:00-22:00
where: {{place: the long room, setting: indoors, light: candle}}
show:
  - kitchen-jug, late-summer
  - market-bunch, small
note: {NOTE}
"""

Builds = Callable[[Path, bool], None]


@pytest.fixture
def studio(planted: Planted, tmp_path: Path) -> Path:
    """The planted studio on the other side of the world, with one link alone."""
    folder = tmp_path / NAMED
    shutil.copytree(planted.folder, folder, ignore=shutil.ignore_patterns("clients", "staff"))
    for file in (folder / "content" / "links").iterdir():
        file.unlink()
    (folder / "content" / "links" / "one.yml").write_text(LINK, "utf-8")
    house = folder / "content" / "studio.yml"
    text = house.read_text("utf-8")
    assert "Europe/London" in text
    house.write_text(text.replace("Europe/London", "Pacific/Auckland"), "utf-8")
    settings = folder / "mkdocs.yml"
    text = settings.read_text("utf-8")
    settings.write_text(text.replace("site_dir: by-mkdocs", "site_dir: clients"), "utf-8")
    return folder


def by_corymb(studio: Path, dirty: bool) -> None:
    report = build_sites(read_settings(studio / "mkdocs.yml"), ["clients"])
    assert [str(problem) for problem in report.errors] == []


def by_mkdocs(studio: Path, dirty: bool) -> None:
    config = load_config(str(studio / "mkdocs.yml"))
    config.plugins.on_startup(command="build", dirty=dirty)
    build(config, dirty=dirty)


def stands_still(monkeypatch: pytest.MonkeyPatch, moment: str) -> None:
    """Every clock on the machine, at a moment of universal time."""

    class Then:
        @staticmethod
        def now(zone: tzinfo) -> datetime:
            return datetime.fromisoformat(moment).replace(tzinfo=UTC).astimezone(zone)

    monkeypatch.setattr("corymb.studio.today.datetime", Then)


# New Zealand is twelve hours ahead in July: 24 July ends there at noon, universal time.
LAST_MOMENT, AFTER = "2027-07-24T11:59:59", "2027-07-24T12:00:00"


@pytest.mark.parametrize(
    ("first", "then", "dirty"),
    [
        pytest.param(by_corymb, by_corymb, False, id="corymb"),
        pytest.param(by_mkdocs, by_mkdocs, False, id="mkdocs"),
        pytest.param(by_mkdocs, by_mkdocs, True, id="mkdocs, dirty"),
        pytest.param(by_mkdocs, by_corymb, False, id="one after the other"),
    ],
)
def test_the_build_after_midnight_in_the_studio_leaves_nothing_of_a_link(
    studio: Path, monkeypatch: pytest.MonkeyPatch, first: Builds, then: Builds, dirty: bool
) -> None:
    clients = studio / "clients"
    stands_still(monkeypatch, LAST_MOMENT)
    first(studio, dirty)
    assert (clients / "links" / f"{CODE}.html").exists()
    pictures = set((clients / "links" / CODE).iterdir())
    drawn = {file.read_bytes() for file in pictures}
    assert len(drawn) == 3  # two by candlelight, and the small one by day
    assert found_in(clients, WORDS) == {*WORDS}
    stands_still(monkeypatch, AFTER)
    then(studio, dirty)
    assert (clients / "arrangements" / "market-bunch.html").exists()
    assert not (clients / "links").exists()
    assert found_in(clients, WORDS) == set()
    files = [file for file in clients.rglob("*") if file.is_file()]
    assert not [file for file in files if file.suffix == ".svg" and file.read_bytes() in drawn]


def test_a_look_that_becomes_a_draft_leaves_its_link_with_the_next_build(studio: Path) -> None:
    settings, day = read_settings(studio / "mkdocs.yml"), date(2027, 7, 10)
    page = studio / "clients" / "links" / f"{CODE}.html"
    assert not build_sites(settings, ["clients"], day).errors
    assert "Market bunch" in page.read_text("utf-8")
    recipe = studio / "content" / "recipes" / "hand-tie" / "market-bunch.yml"
    recipe.write_text(f"{recipe.read_text('utf-8')}\ndraft: yes\n", "utf-8")
    assert not build_sites(settings, ["clients"], day).errors
    assert "Market bunch" not in page.read_text("utf-8")
    names = {file.name for file in page.with_suffix("").iterdir()}
    assert names == {"look-1-by-candle.svg"}
    assert not [file for file in (studio / "clients").rglob("*") if "market-bunch" in file.name]


def test_a_link_of_drafts_alone_stops_the_build(studio: Path) -> None:
    settings, day = read_settings(studio / "mkdocs.yml"), date(2027, 7, 10)
    assert not build_sites(settings, ["clients"], day).errors
    for name in ("hand-tie/market-bunch", "posy/kitchen-jug"):
        recipe = studio / "content" / "recipes" / f"{name}.yml"
        recipe.write_text(f"{recipe.read_text('utf-8')}\ndraft: yes\n", "utf-8")
    (error,) = build_sites(settings, ["clients"], day).errors
    assert "All that this link shows is a draft" in str(error)
    assert (studio / "clients" / "links" / f"{CODE}.html").exists()
