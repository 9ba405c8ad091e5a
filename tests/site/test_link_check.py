"""What is published leads somewhere, whoever got it wrong."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from corymb import checks
from corymb.site.build import build_sites
from corymb.site.link_check import dead_links
from corymb.site.render import TEMPLATES
from corymb.site.settings import AUDIENCES, SiteSettings
from corymb.views.compose import addresses
from tests.broken.bench import PAGE, break_it, case, good_studio, new_file

FILES = {"assets/a.css", "search.json", "styles/posy.html"}

LINKS = {
    "a page": ("../care.html", True),
    "an anchor on it": ("../care.html#pets", True),
    "an anchor that it hasn't got": ("../care.html#petz", False),
    "an anchor here": ("#here", True),
    "no page": ("../nothing.html", False),
    "a page from the wrong folder": ("care.html", False),
    "a page from where the site begins": ("/flowers/care.html", True),
    "the front page": ("/flowers/", True),
    "no page from where the site begins": ("/flowers/nothing.html", False),
    "a page beside the site": ("/care.html", False),
    "a file": ("../assets/a.css", True),
    "another host": ("https://example.org/y", True),
    "another host, as this page is reached": ("//example.org/y", True),
    "another host of the folder's name": ("//flowers/nothing", True),
    "a mail": ("mailto:a@b.example", True),
}


def found(address: str, base_path: str) -> int:
    pages = {
        "index.html": b"",
        "care.html": b'<h2 id="pets">',
        "lessons/tying.html": f'<p id="here"><a href="{address}">'.encode(),
    }
    return len(dead_links(pages, FILES, base_path))


@pytest.mark.parametrize(("address", "leads_on"), LINKS.values(), ids=LINKS)
def test_a_finished_page_leads_to(address: str, leads_on: bool) -> None:
    assert found(address, "/flowers/") == (0 if leads_on else 1)


@pytest.mark.parametrize(
    ("address", "dead"), [("/care.html", 0), ("/nothing.html", 1), ("//example.org/nothing", 0)]
)
def test_a_site_with_a_host_of_its_own_begins_at_a_slash(address: str, dead: int) -> None:
    assert found(address, "/") == dead


def settings(folder: Path) -> SiteSettings:
    return SiteSettings(folder / "mkdocs.yml", folder / "studio", folder / "cache")


def test_a_dead_link_that_no_check_found_is_told_once_and_not_published(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(checks, "CHECKS", ())
    slip = case("", PAGE, "Fresh water every day.", "[see](nothing.html)")
    break_it(good_studio(tmp_path), slip)
    (problem,) = build_sites(settings(tmp_path), AUDIENCES, date(2026, 9, 16)).errors
    assert str(problem) == (
        f"{TEMPLATES}:1:1: ‘nothing.html’ on the finished page care.html leads nowhere. "
        "The studio's files have been checked, so look for it in the templates."
    )
    assert not (tmp_path / "clients").exists()


def test_two_pages_never_stand_at_one_address(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(addresses, "FIXED", ())
    text = "---\ntitle: Our flowers\nsummary: All.\n---\n"
    break_it(good_studio(tmp_path), new_file("", "pages/flowers.md", text))
    (problem,) = build_sites(settings(tmp_path), AUDIENCES, date(2026, 9, 16)).errors
    assert problem.message == (
        "two pages would stand at flowers.html: ‘Flowers’ and ‘Our flowers’. "
        "Rename the file of one of them."
    )
