"""A style link's page on the built site: found by its client alone, and gone when it is over."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from bs4 import BeautifulSoup
from click.testing import CliRunner

from corymb.cli import main
from corymb.site.build import build_sites
from corymb.site.settings import read_settings
from corymb.site.style_link_file import link_file
from corymb.studio.load import read_studio
from corymb.views.pieces import AUDIENCES
from tests.cli.conftest import ANSWERS, words

CODE = "h2fk7q3v8m2k7t5x9w4r6n1p0sz"
PRIVATE = "QUILLFEATHER"
HOSTILE = """<script>alert(1)</script> "'&{{ 7 * 7 }}"""
LINK = f"""\
title: 'For </title>{HOSTILE.replace("'", "''")}'
for: {PRIVATE}
code: {CODE}
date: 2027-07-24
expires: 2027-08-14
where: {{place: 'the <b>barn</b>', setting: indoors, light: candle}}
show:
  - kitchen-jug
  - kitchen-jug, small
  - market-bunch
note: |
  {HOSTILE}
"""
STANDS, OVER = date(2027, 8, 14), date(2027, 8, 15)


def build(studio: Path, day: date) -> Path:
    report = build_sites(read_settings(studio / "mkdocs.yml"), AUDIENCES, day)
    assert [str(problem) for problem in report.errors] == []
    return studio / "clients"


@pytest.fixture(scope="module")
def studio(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("links") / "studio"
    assert CliRunner().invoke(main, ["new", "studio", str(folder), *words(ANSWERS)]).exit_code == 0
    settings = folder / "mkdocs.yml"
    settings.write_text(f"site_url: https://hazel.example/f/\n{settings.read_text('utf-8')}")
    (folder / "content" / "links").mkdir()
    (folder / "content" / "links" / "quill.yml").write_text(LINK, "utf-8")
    return folder


@pytest.fixture(scope="module")
def clients(studio: Path) -> Path:
    return build(studio, STANDS)


@pytest.fixture(scope="module")
def page(clients: Path) -> BeautifulSoup:
    return BeautifulSoup((clients / "links" / f"{CODE}.html").read_text("utf-8"), "html5lib")


def told(page: BeautifulSoup, **which: str) -> str:
    (meta,) = page.find_all("meta", attrs=which)
    return str(meta["content"])


def test_no_other_file_of_the_site_names_its_address(clients: Path) -> None:
    own = {clients / "links" / f"{CODE}.html", *(clients / "links" / CODE).iterdir()}
    others = [file for file in clients.rglob("*") if file.is_file() and file not in own]
    assert len(others) > 50
    naming = [file.name for file in others if CODE.encode() in file.read_bytes()]
    assert naming == []


def test_searches_are_kept_out_and_its_address_is_told_to_nobody(page: BeautifulSoup) -> None:
    assert told(page, name="robots") == "noindex, nofollow"
    assert told(page, name="referrer") == "no-referrer"
    assert page.find("link", rel="canonical") is None
    assert page.find("script", type="application/ld+json") is None
    assert page.find("meta", property="og:url") is None


def test_a_message_shows_title_studio_and_picture(page: BeautifulSoup) -> None:
    assert told(page, property="og:title").startswith("For </title><script>")
    assert told(page, property="og:site_name") == "Hazel Row"
    assert told(page, property="og:description") == "3 arrangements for Saturday 24 July 2027."
    image = told(page, property="og:image")
    assert image.startswith("https://hazel.example/f/assets/cards/")


def test_the_image_that_a_message_shows_is_there(clients: Path, page: BeautifulSoup) -> None:
    image = told(page, property="og:image").removeprefix("https://hazel.example/f/")
    assert (clients / image).read_bytes().startswith(b"\xff\xd8")


def test_what_a_studio_writes_is_shown_as_it_is_and_never_run(page: BeautifulSoup) -> None:
    scripts = page.find_all("script")
    assert all(script.get("src") and not script.get_text() for script in scripts)
    assert page.h1 is not None
    assert page.h1.get_text().replace("’", "'") == f"For </title>{HOSTILE}"
    assert "The <b>barn</b>" in page.get_text()
    assert "{{ 7 * 7 }}" in page.get_text()


def test_the_client_s_name_is_for_staff_alone(studio: Path, clients: Path) -> None:
    assert not any(
        PRIVATE.encode() in file.read_bytes() for file in clients.rglob("*") if file.is_file()
    )
    assert PRIVATE in (studio / "staff" / "links.html").read_text("utf-8")


def test_it_shows_each_look_in_daylight_and_in_the_light_of_its_place(
    clients: Path, page: BeautifulSoup
) -> None:
    lit = sorted(file.name for file in (clients / "links" / CODE).iterdir())
    assert lit == [
        "look-1-by-candle.svg",
        "look-2-by-candle.svg",
        "look-2.svg",
        "look-3-by-candle.svg",
    ]
    drawn = (clients / "assets" / "pictures" / "kitchen-jug.svg").read_text("utf-8")
    by_candle = (clients / "links" / CODE / "look-1-by-candle.svg").read_text("utf-8")
    assert drawn != by_candle
    assert len(drawn) == len(by_candle)
    figures = page.select(".link-shown")
    assert [len(figure.find_all("img")) for figure in figures] == [2, 2, 2]


def test_as_one_file_it_says_the_same_and_holds_nothing_private(studio: Path) -> None:
    settings = read_settings(studio / "mkdocs.yml")
    read, _problems = read_studio(settings.studio_folder)
    assert read is not None
    data = link_file(read, settings, read.links["quill"], STANDS)
    alone = BeautifulSoup(data.decode(), "html5lib")
    assert alone.h1 is not None
    assert alone.h1.get_text().replace("’", "'") == f"For </title>{HOSTILE}"
    assert len(alone.find_all("script")) == 1
    assert "Take care" in alone.get_text()
    assert "is not known: keep" in alone.get_text()
    assert len(alone.find_all("img")) == 6
    assert PRIVATE.encode() not in data
    assert CODE.encode() not in data


def test_a_host_that_lists_folders_lists_no_links(clients: Path) -> None:
    front = (clients / "links" / "index.html").read_text("utf-8")
    assert "There is nothing here" in front
    assert 'content="noindex, nofollow"' in front
    assert 'href="../assets/theme/css/corymb.css"' in front


def test_the_first_build_after_its_last_day_takes_it_away(studio: Path, clients: Path) -> None:
    assert (clients / "links" / f"{CODE}.html").exists()
    build(studio, OVER)
    assert not (clients / "links").exists()
    listed = (studio / "staff" / "links.html").read_text("utf-8")
    assert CODE not in listed
    assert PRIVATE in listed
