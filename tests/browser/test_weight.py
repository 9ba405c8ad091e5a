"""How much does a phone fetch, and does anything jump while it arrives over a slow network?

As a phone of 390 x 844 points with three pixels each would, type included, text as hosts send it
(gzip). Nothing is kept from the page before.
"""

from __future__ import annotations

import gzip
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple
from urllib.parse import unquote, urlsplit

import pytest
from playwright.sync_api import Browser, Page

from corymb.views.pieces import Audience
from tests.browser.conftest import Visit, scroll_through
from tests.browser.kinds import kinds
from tests.browser.shelf import new_page

TEXT = {".html", ".css", ".js", ".json", ".svg"}
SLOW = {"latency": 60, "downloadThroughput": 300_000, "uploadThroughput": 90_000}  # ms, bytes/s
MOST_SHIFT = 0.02  # a fifth of what web.dev's Core Web Vitals call good

TELL_SHIFTS = """window.shifts = [];
new PerformanceObserver((list) => {
  for (const shift of list.getEntries()) window.shifts.push([shift.value, shift.sources.map(
    ({node}) => node ? `${node.nodeName} ${node.className ?? ""}` : "?").join(", ")]);
}).observe({type: "layout-shift", buffered: true});"""


class Row(NamedTuple):
    """A page, and what it may weigh when it is opened and at its end, in bytes."""

    path: str
    opened: int
    at_end: int


ROWS = {
    "home": Row("index.html", 200_000, 480_000),  # six photos of made work stand at its end
    "list": Row("arrangements.html", 300_000, 500_000),
    "flowers": Row("flowers.html", 250_000, 450_000),
    "style": Row("styles/posy.html", 300_000, 300_000),
    "arrangement": Row("arrangements/hedgerow-jar.html", 300_000, 300_000),
    "heaviest arrangement": Row("arrangements/rooks-wing-hand-tie.html", 300_000, 300_000),
    "flower": Row("flowers/dahlia-shell.html", 200_000, 200_000),
    "made": Row("made/barn-long-table.html", 300_000, 300_000),
    "kept": Row("kept.html#hedgerow-jar,plum-button,may-cup", 200_000, 200_000),
    "style link": Row("links/*.html", 400_000, 800_000),
}


@pytest.fixture(scope="module")
def phone(browser: Browser) -> Iterator[tuple[Page, list[str]]]:
    """A phone on a slow network that keeps nothing, and the addresses it asks for."""
    page = new_page(browser, {"device_scale_factor": 3})
    asked: list[str] = []
    page.on("response", lambda response: asked.append(response.url))
    page.add_init_script(TELL_SHIFTS)
    devtools = page.context.new_cdp_session(page)
    devtools.send("Network.enable")
    devtools.send("Network.setCacheDisabled", {"cacheDisabled": True})
    devtools.send("Network.emulateNetworkConditions", {"offline": False, **SLOW})
    yield page, asked
    page.context.close()


def weight(site: Path, asked: list[str]) -> int:
    """What these addresses come to on the wire, headers aside; each once."""
    files = {site / unquote(urlsplit(url).path).lstrip("/") for url in asked}
    return sum(_sent(file) for file in files if file.is_file())


def _sent(file: Path) -> int:
    data = file.read_bytes()
    return len(gzip.compress(data, 6)) if file.suffix in TEXT else len(data)


@pytest.mark.parametrize("row", ROWS.values(), ids=ROWS)
def test_a_page_is_light_on_a_phone_and_stands_still(
    row: Row,
    phone: tuple[Page, list[str]],
    demo_sites: dict[Audience, Path],
    demo_addresses: dict[Audience, str],
) -> None:
    page, asked = phone
    site = demo_sites["clients"]
    page.goto("about:blank")
    asked.clear()
    page.goto(demo_addresses["clients"] + _path(site, row), wait_until="load")
    page.wait_for_load_state("networkidle")
    opened = weight(site, asked)
    scroll_through(page)
    page.wait_for_load_state("networkidle")
    at_end = weight(site, asked)
    told = f"{row.path}: {opened:,} bytes when opened, {at_end:,} at its end"
    assert opened <= row.opened and at_end <= row.at_end, told
    shifts = page.evaluate("window.shifts")
    assert sum(value for value, _ in shifts) < MOST_SHIFT, shifts


FACES = """document.fonts.ready.then(() => [...document.fonts]
  .filter((face) => face.status === "loaded" && !face.family.includes("stand-in"))
  .map((face) => `${face.family.replaceAll('"', "")} ${face.weight} ${face.style}`))"""


def test_a_page_is_set_in_the_type_that_it_fetches(visit: Visit) -> None:
    faces = visit(kinds("recipe", audience="clients")[0]).evaluate(FACES)
    assert {"Caslon Display normal normal", "Newsreader 400 normal"} <= set(faces)
    assert "Instrument Sans 400 600 normal" in faces


def _path(site: Path, row: Row) -> str:
    """A link's address is known to its client alone: whichever there is will do."""
    if "*" not in row.path:
        return row.path
    pages = sorted(file for file in site.glob(row.path) if file.name != "index.html")
    return pages[0].relative_to(site).as_posix()
