"""The first journey: make a style link in one line, send it, and get an answer.

On a small studio of its own, so that the link is made by the command as anyone would make it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import NamedTuple
from urllib.parse import parse_qs, unquote, urlsplit

import pytest
from click.testing import CliRunner
from playwright.sync_api import Browser, Page, expect

from corymb.cli import main
from tests.browser.conftest import DESK, PHONE, scroll_through
from tests.browser.shelf import new_page
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_seen import SEEN
from tests.browser.watching import Watch
from tests.cli.conftest import ANSWERS, words
from tests.once import made_once
from tests.serving import served

DAY = date(date.today().year + 1, 7, 24)  # high summer, still to come
LAST = DAY + timedelta(weeks=3)
SITE = "https://hazelrow.example/"
LOOKS = ("kitchen-jug", "kitchen-jug, late-summer, large", "market-bunch")
SHEET = "navigator.share = async (what) => { window.sent = what; };"


class Sent(NamedTuple):
    """What the studio has in hand after one line."""

    folder: Path
    path: str  # of the page, from the site's root

    @property
    def file(self) -> Path:
        return self.folder / "orla.html"


def corymb(*arguments: str) -> str:
    result = CliRunner().invoke(main, arguments)
    assert result.exit_code == 0, result.output
    return result.output


def make(folder: Path) -> None:
    corymb("new", "studio", str(folder / "studio"), *words(ANSWERS))
    settings = folder / "studio" / "mkdocs.yml"
    settings.write_text(f"site_url: {SITE}\n" + settings.read_text("utf-8"), "utf-8")
    here = ("-f", str(settings))
    told = corymb(
        *("link", *LOOKS, "--for", DAY.isoformat(), "--id", "orla", *here),
        *("--client", "Orla Quill", "--title", "For Orla & Finn", "--note", "Which of these?"),
    )
    (folder / "told.txt").write_text(told, "utf-8")
    corymb("share", "orla", "-o", str(folder / "orla.html"), *here)
    corymb("build", *here)


@pytest.fixture(scope="module")
def sent(tmp_path_factory: pytest.TempPathFactory) -> Sent:
    folder = made_once(tmp_path_factory, "send", make)
    address = re.search(
        rf"^{SITE}(links/\w+\.html)$", (folder / "told.txt").read_text("utf-8"), re.MULTILINE
    )
    assert address, "the command prints the address to send"
    return Sent(folder, address[1])


@pytest.fixture(scope="module")
def host(sent: Sent) -> Iterator[str]:
    with served(sent.folder / "studio" / "clients") as address:
        yield address


@pytest.fixture
def opened(browser: Browser, host: str, sent: Sent) -> Iterator[tuple[Page, Watch]]:
    page = new_page(browser, {"reduced_motion": "reduce", "bypass_csp": True})
    watch = Watch(page, host)
    page.add_init_script(SHEET)
    page.goto(host + sent.path)
    yield page, watch
    page.context.close()


def mail_of(page: Page) -> tuple[str, list[str]]:
    """Subject and lines of the mail that answers."""
    href = page.get_by_role("link", name="Answer by mail").get_attribute("href") or ""
    asked = parse_qs(urlsplit(href).query)
    assert unquote(urlsplit(href).path) == ANSWERS["--email"]
    return asked["subject"][0], asked["body"][0].split("\r\n")


def choose_with_keys(page: Page) -> None:
    """The first look and the last, from the top of the page with the keyboard alone."""
    wanted = {"Kitchen jug", "Market bunch"}
    for _ in range(60):
        page.keyboard.press("Tab")
        value = page.evaluate("document.activeElement.matches('[data-choice]') && "
                              "document.activeElement.value")  # fmt: skip
        if value in wanted:
            page.keyboard.press("Space")
            wanted.remove(value)
        if not wanted:
            return
    raise AssertionError(f"the keyboard doesn't reach {wanted}")


@pytest.mark.parametrize("size", [PHONE, DESK], ids=["phone", "desk"])
def test_a_client_opens_the_page_chooses_two_looks_and_answers(
    opened: tuple[Page, Watch], size: dict[str, int]
) -> None:
    page, watch = opened
    page.set_viewport_size(size)  # type: ignore[arg-type]
    expect(page.get_by_role("heading", level=1)).to_have_text("For Orla & Finn")
    expect(page.get_by_role("checkbox")).to_have_count(3)
    subject, lines = mail_of(page)
    assert sum(line.startswith("- ") for line in lines) == 3, "with none ticked, all are named"

    choose_with_keys(page)
    subject, lines = mail_of(page)
    assert subject.startswith("For Orla & Finn, ")
    assert str(DAY.year) in subject
    assert lines[:3] == ["We would like:", "- Kitchen jug", "- Market bunch"]
    assert "How many of each:" in lines
    page.get_by_role("button", name="Answer another way").click()
    assert "- Market bunch" in page.evaluate("window.sent.text")

    page.get_by_role("checkbox").first.uncheck()
    assert "- Kitchen jug" not in mail_of(page)[1]
    scroll_through(page)
    SEEN.mkdir(exist_ok=True)
    file = SEEN / f"journey-send-{size['width']}.jpg"
    page.screenshot(path=file, full_page=True, type="jpeg", quality=80)
    page.evaluate(AXE)
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)
        assert page.evaluate(RUN) == []
    assert watch.faults == []
    assert page.evaluate("document.documentElement.scrollWidth") == size["width"]


def test_the_page_hides_itself_once_its_last_day_has_gone_by(
    browser: Browser, host: str, sent: Sent
) -> None:
    page = new_page(browser, {})
    watch = Watch(page, host)
    for day, stands in ((LAST, True), (LAST + timedelta(days=1), False)):
        page.clock.set_fixed_time(f"{day}T12:00:00")
        page.goto(host + sent.path)
        page.wait_for_load_state("networkidle")
        expect(page.get_by_role("heading", name="For Orla & Finn")).to_be_visible()
        expect(page.get_by_role("checkbox")).to_have_count(3 if stands else 0)
        expect(page.get_by_role("heading", name="This page is over")).to_have_count(int(not stands))
    assert watch.faults == []
    page.context.close()


def test_without_script_the_mail_names_all_looks_and_nothing_waits_for_script(
    browser: Browser, host: str, sent: Sent
) -> None:
    page = new_page(browser, {"java_script_enabled": False})
    page.goto(host + sent.path)
    assert sum(line.startswith("- ") for line in mail_of(page)[1]) == 3
    expect(page.get_by_text("strike out what you don’t want")).to_be_visible()
    expect(page.get_by_role("button")).to_have_count(0)
    page.context.close()


def test_the_same_page_opens_from_the_disk_as_one_file_without_a_signal(
    browser: Browser, sent: Sent
) -> None:
    assert sent.file.stat().st_size < 1_000_000
    page = new_page(browser, {"offline": True, "reduced_motion": "reduce"})
    watch = Watch(page, sent.file.as_uri())
    page.goto(sent.file.as_uri())
    assert page.evaluate("[...document.images].every((image) => image.naturalWidth >= 280)")
    choose_with_keys(page)
    assert mail_of(page)[1][:3] == ["We would like:", "- Kitchen jug", "- Market bunch"]
    assert page.evaluate("[...document.fonts].some((font) => font.status === 'loaded')")
    page.screenshot(path=SEEN / "journey-send-file.jpg", full_page=True, type="jpeg", quality=80)
    assert watch.faults == []
    page.context.close()


def test_staff_find_its_address_and_copy_it(browser: Browser, sent: Sent) -> None:
    with served(sent.folder / "studio" / "staff") as host:
        page = new_page(browser, {"permissions": ["clipboard-read", "clipboard-write"]})
        page.goto(f"{host}links.html")
        expect(page.get_by_text("For Orla Quill, until")).to_be_visible()
        page.get_by_role("button", name="Copy the address").click()
        expect(page.get_by_text("Address copied.")).to_be_visible()
        assert page.evaluate("navigator.clipboard.readText()") == SITE + sent.path
        page.context.close()
