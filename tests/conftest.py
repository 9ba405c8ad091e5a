"""The demo studio's two sites, built once for a whole run, served here, and a browser to look.

Tests that try many texts take as long as they need, on a busy machine too.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from hypothesis import settings as hypothesis_settings
from playwright.sync_api import Browser, Playwright, sync_playwright

from corymb.site.build import build_sites
from corymb.site.settings import read_settings
from corymb.views.pieces import AUDIENCES, Audience
from tests.browser.chromium import start_chromium
from tests.once import made_once
from tests.serving import served

hypothesis_settings.register_profile("patient", deadline=None)
hypothesis_settings.load_profile("patient")

ROOT = Path(__file__).parent.parent
STUDIO = ROOT / "content"
CACHE = ROOT / ".cache" / "corymb"
DAY = date(2026, 9, 16)  # a Wednesday in the week of the demo's barn supper: the beds are full

SETTINGS = """\
site_name: The demo studio
docs_dir: {studio}/pages
site_url: https://teaselandrook.example/
use_directory_urls: false
theme:
  name: corymb
plugins:
  - corymb:
      studio: {studio}
      cache: {cache}
      staff_url: https://bench.teaselandrook.example/
"""


FIRST_OF_THE_LONG = (
    *("test_axe", "test_narrow", "test_your_date", "test_seen", "test_papers"),
    *("test_without_script", "test_lights", "test_quiet"),
)
"""Files that take longest: they begin before other visits, so that no worker waits for them."""

BUILDS_THE_DEMO = "test_build_twice"
"""Where several workers share the tests, one builds the demo while the others do all quick ones."""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """What is known in a moment is tested first, what builds the demo next, visits to it last."""
    latest: dict[Path, tuple[int, int]] = {}
    for item in items:
        latest[item.path] = max(latest.get(item.path, (0, 0)), lateness(item))
    items.sort(key=lambda item: latest[item.path])
    if "PYTEST_XDIST_WORKER" in os.environ:
        items.sort(key=lambda item: item.path.stem != BUILDS_THE_DEMO)


def lateness(item: pytest.Item) -> tuple[int, int]:
    """Lower is sooner; among equals files keep their order."""
    needs = set(getattr(item, "fixturenames", ()))
    if "playwright" not in needs:
        return (1 if needs & {"demo_sites", "planted", "hostile"} else 0), 0
    first = item.path.stem in FIRST_OF_THE_LONG
    return 2, FIRST_OF_THE_LONG.index(item.path.stem) if first else len(FIRST_OF_THE_LONG)


def build_demo(folder: Path) -> None:
    """Both of the demo's sites, as they are on `DAY`."""
    settings_file = folder / "mkdocs.yml"
    settings_file.write_text(SETTINGS.format(studio=STUDIO, cache=CACHE))
    report = build_sites(read_settings(settings_file), AUDIENCES, DAY)
    assert not report.errors, "\n".join(["The demo does not build:", *map(str, report.errors)])


@pytest.fixture(scope="session")
def demo_sites(tmp_path_factory: pytest.TempPathFactory) -> dict[Audience, Path]:
    """The folders of the demo's two sites as they are on `DAY`, by audience."""
    folder = made_once(tmp_path_factory, "demo", build_demo)
    settings = read_settings(folder / "mkdocs.yml")
    return {audience: settings.output(audience) for audience in AUDIENCES}


@pytest.fixture(scope="session")
def demo_addresses(demo_sites: dict[Audience, Path]) -> Iterator[dict[Audience, str]]:
    """Where each of the demo's sites can be visited, by audience; they end with a slash."""
    with served(demo_sites["clients"]) as clients, served(demo_sites["staff"]) as staff:
        yield {"clients": clients, "staff": staff}


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """What drives browsers in this run."""
    with sync_playwright() as driver:
        yield driver


@pytest.fixture(scope="session")
def browser(playwright: Playwright) -> Iterator[Browser]:
    """A Chromium without a window; the machine's own, for none is ever downloaded."""
    with start_chromium(playwright) as chromium:
        yield chromium
