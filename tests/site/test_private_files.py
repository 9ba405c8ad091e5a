"""Nothing private is in what goes out beside the clients' site: files, books, links, live pages.

What a command writes for the studio itself (an order that is repeated, a link's file) isn't meant
for clients, and is as private as what it was made from.
"""

from __future__ import annotations

import io
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from click.testing import CliRunner
from mkdocs.commands.build import build
from mkdocs.config import load_config
from pypdf import PdfReader

from corymb.checks import read_and_check
from corymb.cli import main
from corymb.site.book import Asked, printed_book
from corymb.site.build import build_sites
from corymb.site.live.answers import answer
from corymb.site.live.live_site import LiveSite
from corymb.site.locked.keys import Passphrase
from corymb.site.locked.places import SEALED
from corymb.site.style_link_file import link_file
from corymb.studio.problems import Problem
from corymb.studio.studio import Studio
from corymb.views.pieces import AUDIENCES
from tests.browser.chromium import MISSING, find_chromium
from tests.site.books import made
from tests.site.found_secrets import found_in, found_in_bytes
from tests.site.planted_studio import LAST_DAY, Planted

WORD = "zq99999hush"
LINK = "zq90009hush"


@pytest.fixture(scope="module")
def studio(planted: Planted) -> Studio:
    read, _problems = read_and_check(planted.folder / "content")
    assert read is not None
    return read


def test_no_secret_is_in_a_site_that_mkdocs_builds(
    planted: Planted, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("corymb.site.plugin.today_of", lambda studio: LAST_DAY)
    site = tmp_path / "site"
    build(load_config(str(planted.folder / "mkdocs.yml"), site_dir=str(site)))
    assert found_in(site, planted.secrets) == set()
    names, by_corymb = ({file.name for file in each.rglob("*")} for each in (site, planted.clients))
    assert names == by_corymb


def test_no_secret_is_in_the_staffs_site_where_it_is_locked(
    planted: Planted, tmp_path: Path
) -> None:
    """Nor in what its files are called, and it has a file for each of those behind the lock."""
    passphrase = Passphrase("bako-rimu-tesa", 10)
    settings = replace(planted.settings, config_file=tmp_path / "mkdocs.yml", lock_staff=True)
    report = build_sites(settings, ["staff"], LAST_DAY, passphrase=passphrase)
    assert [str(problem) for problem in report.errors] == []
    assert found_in(tmp_path / "staff", planted.secrets) == set()
    pages = [file for file in planted.staff.rglob("*.html") if file.is_file()]
    assert len(list((tmp_path / "staff" / SEALED).rglob("*"))) > len(pages)


def test_no_secret_is_in_a_style_link_as_one_file(planted: Planted, studio: Studio) -> None:
    link = studio.links[LINK]
    data = link_file(studio, planted.settings, link, LAST_DAY)
    assert b"Words for the client" in data
    assert found_in_bytes(data, planted.secrets) == set()
    leaking = link.model_copy(update={"note": WORD})
    data = link_file(studio, planted.settings, leaking, LAST_DAY)
    assert found_in_bytes(data, {WORD: "its note"}) == {WORD}


@pytest.mark.parametrize(
    ("what", "file"), [(LINK, "for-your-lunch.html"), ("open-jug", "open-jug.html")]
)
def test_a_file_to_attach_tells_nothing_by_its_name(
    planted: Planted, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, what: str, file: str
) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(sys.modules["corymb.cli.share"], "today_of", lambda studio: LAST_DAY)
    said = CliRunner().invoke(main, ["share", what, "-f", str(planted.folder / "mkdocs.yml")])
    assert said.exit_code == 0, said.output
    assert [each.name for each in tmp_path.iterdir()] == [file]
    assert found_in(tmp_path, planted.secrets) == set()


def test_what_corymb_link_tells_to_send_holds_no_secret(
    planted: Planted, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys.modules["corymb.cli.link"], "today_of", lambda studio: LAST_DAY)
    monkeypatch.setattr(sys.modules["corymb.cli.link"], "write_new", lambda file, text: None)
    settings = str(planted.folder / "mkdocs.yml")
    asked = ["link", "open-jug", "--for", "2027-07-17", "--client", WORD, "-f", settings]
    said = CliRunner().invoke(main, asked)
    assert said.exit_code == 0, said.output
    sent = said.output.partition("To send")[2]
    assert "https://garden.example/links/" in sent
    assert found_in_bytes(sent.encode(), {**planted.secrets, WORD: "the client"}) == set()


NAME, SUMMARY = "zq99998hush", "zq99997hush"
"""Of a recipe that clients may see: found in the outline of the book, and on its page."""


@pytest.fixture(scope="module")
def book(studio: Studio, tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The clients' book as it is printed."""
    shown = studio.recipes["open-jug"].model_copy(update={"name": NAME, "summary": SUMMARY})
    leaking = replace(studio, recipes={**studio.recipes, "open-jug": shown})
    printer = find_chromium() or pytest.fail(MISSING, pytrace=False)
    return printed_book(printer, made(leaking, Asked("clients"), tmp_path_factory.mktemp("book")))


def test_the_printed_book_holds_what_clients_may_see_and_no_secret(
    planted: Planted, book: bytes
) -> None:
    known = {**planted.secrets, NAME: "a name", SUMMARY: "a summary"}
    assert found_in_bytes(book, known) == {NAME, SUMMARY}


def test_the_staffs_book_holds_secrets_and_none_that_nobody_may_see(
    planted: Planted, studio: Studio
) -> None:
    page = made(studio, Asked("staff")).page.encode()
    there = {planted.secrets[each] for each in found_in_bytes(page, planted.secrets)}
    for wanted in ("recipe: method", "recipe: notes", "technique: title"):
        assert any(wanted in where for where in there), wanted
    assert not [where for where in there if "nobody" in where or ".jpg" in where]


def test_the_printed_book_says_nothing_of_the_machine_that_printed_it(book: bytes) -> None:
    told = dict(PdfReader(io.BytesIO(book)).metadata or {})
    assert {key: str(told[key]) for key in told if not key.endswith("Date")} == {
        "/Title": "Our arrangements · Your studio",
        "/Creator": "Corymb",
        "/Producer": "Corymb",
    }
    assert b"file:" not in book
    assert b"Linux" not in book and b"HeadlessChrome" not in book


def test_live_pages_show_a_mistake_through_this_computers_own_stream_alone(
    planted: Planted,
) -> None:
    """The overlay quotes lines of private files, on the clients' pages too."""
    live = LiveSite({name: planted.settings.output(name) for name in AUDIENCES})
    line = f"client: {WORD}"
    live.refused([Problem(planted.folder / "content" / "x.yml", 1, 1, "wrong", line)])
    assert WORD in live.news.trouble
    known = {**planted.secrets, WORD: "a line of a file"}
    for file in planted.clients.rglob("*.html"):
        address = f"/clients/{file.relative_to(planted.clients).as_posix()}"
        given = answer(live, address)
        assert given.status == 200
        assert found_in_bytes(given.body, known) == set(), address
    for address in ("/clients/no-such.html", "/live.js", "/clients/search.json"):
        assert found_in_bytes(answer(live, address).body, known) == set(), address
