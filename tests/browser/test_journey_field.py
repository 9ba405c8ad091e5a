"""Can someone work in a field with a phone that has no signal, and miss nothing and lose nothing?

A small studio is served in a folder of its host, opened once, and then host and network are cut.
Later the host is back with a build in which more stems of one kind are wanted.
"""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Iterator
from contextlib import ExitStack
from datetime import date
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Locator, Page, expect

import corymb
from corymb.site.build import build_sites
from corymb.site.offline import LIST, WORKER
from corymb.site.settings import read_settings
from tests.browser.shelf import PATIENCE
from tests.browser.sizes import DESK, PHONE
from tests.browser.test_axe import AXE, RUN
from tests.browser.test_seen import SEEN
from tests.browser.watching import Watch
from tests.once import made_once
from tests.serving import served

STARTER = Path(corymb.__file__).parent / "starter"
DAY = date(2026, 7, 7)
ORDER = """\
name: Market supper
client: {{name: the market}}
date: 2026-07-11
where: {{place: the market hall, setting: indoors, light: daylight}}
handover: collection
lines:
  - {jugs} kitchen-jug
  - 3 kitchen-jug, small
"""
CUT, BENCH = "cut/2026-07-09.html", "orders/market-supper-bench.html"
KEPT = re.compile(r"^Kept for no signal: \d?\d:\d\d")
LOST = "flowers/hornbeam.html"  # on the host, before anyone came
NEVER_KEPT = "flowers/next-year.html"
FINGER = 44  # WCAG 2.2, 2.5.5: a target is 44 CSS pixels wide and high
DAYS = 86_400_000  # of milliseconds

# The least contrast of any text within `main` with what lies under it, and what it is. Colours are
# opaque on these pages, and no picture lies under a word.
CONTRAST = """() => {
  const channel = (value) =>
    (value /= 255) <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  const numbers = (colour) => colour.match(/[\\d.]+/g).map(Number);
  const light = ([r, g, b]) => 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
  const ground = (part) => {
    for (; part; part = part.parentElement) {
      const [r, g, b, a = 1] = numbers(getComputedStyle(part).backgroundColor);
      if (a) return [r, g, b];
    }
  };
  const found = [];
  const words = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
  while (words.nextNode()) {
    const part = words.currentNode.parentElement;
    if (!words.currentNode.data.trim() || !part.checkVisibility()) continue;
    const sides = [light(numbers(getComputedStyle(part).color)), light(ground(part))].sort();
    found.push([(sides[1] + 0.05) / (sides[0] + 0.05), words.currentNode.data.trim().slice(0, 40)]);
  }
  return found.sort((a, b) => a[0] - b[0])[0];
}"""
SMALL = """(least) => [...document.querySelectorAll("main :is(a, button, label, summary)")]
  .filter((part) => part.checkVisibility())
  .filter((part) => part.getBoundingClientRect().height < least - 0.5)
  .map((part) => `${part.tagName} ${part.textContent.trim().slice(0, 40)}`)"""


def build(studio: Path, jugs: int) -> None:
    """The staff's site of the starter's studio with one order."""
    shutil.copytree(STARTER, studio)
    order = studio / "content" / "orders" / "2026" / "market-supper.yml"
    order.parent.mkdir(parents=True)
    order.write_text(ORDER.format(jugs=jugs), encoding="utf-8")
    report = build_sites(read_settings(studio / "mkdocs.yml"), ["staff"], DAY)
    assert not report.errors, report.errors


@pytest.fixture(scope="module")
def builds(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Path]:
    """Two builds; of the first the host has lost a file on the way."""

    def make(folder: Path) -> None:
        build(folder / "before", 8)
        build(folder / "after", 12)
        (folder / "before" / "staff" / LOST).unlink()

    folder = made_once(tmp_path_factory, "field", make)
    return {name: folder / name for name in ("before", "after")}


class Field:
    """A phone, and a host that can be lost and found again."""

    def __init__(self, browser: Browser, builds: dict[str, Path]) -> None:
        self.builds = builds
        self.context: BrowserContext = browser.new_context(viewport=PHONE, has_touch=True)
        self.context.set_default_timeout(PATIENCE)
        self.page: Page = self.context.new_page()
        self.watch = Watch(self.page)
        self.host = ExitStack()
        self.port = 0

    def serve(self, build: str) -> None:
        """The host is there, with one of the builds; it tells what is newer by a file's time."""
        (self.builds[build] / "staff" / WORKER).touch()
        root = self.host.enter_context(served(self.builds[build], self.port))
        self.port = int(root.rstrip("/").rpartition(":")[2])
        self.address = f"{root}staff/"
        self.watch.address = root
        self.context.set_offline(False)

    def cut_off(self) -> None:
        """No network, and no host behind it."""
        self.context.set_offline(True)
        self.host.close()

    def open(self, path: str) -> None:
        self.page.goto(self.address + path)

    def row(self, stem: str) -> Locator:
        return self.page.locator("[data-row]").filter(has_text=stem).first

    def box(self, stem: str) -> Locator:
        return self.row(stem).get_by_role("checkbox")

    def left(self, words: str) -> None:
        expect(self.page.locator("[data-ticks-bar]")).to_have_text(words)

    def seen(self, name: str) -> None:
        SEEN.mkdir(exist_ok=True)
        self.page.screenshot(path=SEEN / f"field-{name}.jpg", type="jpeg", quality=80)

    def faults(self) -> list[str]:
        """What axe finds, what can't be read in the sun, and what is too small to touch."""
        self.page.evaluate(AXE)
        found: list[str] = self.page.evaluate(RUN)
        least, words = self.page.evaluate(CONTRAST)
        return [*found, *([f"contrast {least:.1f}: {words}"] if least < 7 else [])]


@pytest.fixture
def field(browser: Browser, builds: dict[str, Path]) -> Iterator[Field]:
    one = Field(browser, builds)
    yield one
    one.context.close()
    one.host.close()


def test_in_a_field_without_signal_lists_open_ticks_stay_and_a_new_build_takes_none(
    field: Field,
) -> None:
    page = field.page
    field.serve("before")
    field.open("weeks/2026-W27.html")  # of another week, so that it is kept only when visited
    field.open(CUT)
    there = files_listed(field.builds["before"])
    expect(page.locator(".ticks-bar [data-kept]")).to_have_text(
        f"Kept for no signal so far: {there - 1} of {there} files"
    )
    page.wait_for_function("navigator.serviceWorker.controller")
    field.cut_off()
    works_in_the_field(field)
    gets_a_newer_build(field)
    opens_the_next_page_as_the_newest_build_has_it(field)
    left_behind = "net::ERR_ABORTED"  # what a page still asks for when it is left
    assert [fault for fault in field.watch.faults if left_behind not in fault] == []


def files_listed(build: Path) -> int:
    """How many files a phone is to keep."""
    listed = json.loads((build / "staff" / LIST).read_text("utf-8"))
    return len(listed["first"]) + len(listed["later"])


def works_in_the_field(field: Field) -> None:
    """Nothing but what the phone has kept."""
    page = field.page
    page.reload()
    field.left("4 of 4 rows left, 400 stems")
    field.row("Cornflower").locator("label").first.tap()
    field.left("3 of 4 rows left, 300 stems")
    field.box("Quaking").focus()
    page.keyboard.press("Space")
    field.left("2 of 4 rows left, 200 stems")
    assert page.evaluate(SMALL, FINGER) == []
    field.seen("390")

    field.open(BENCH)
    field.left("8 of 8 rows left, 226 stems")
    field.row("Scabious").locator(".tick-box").tap()
    field.left("7 of 8 rows left, 186 stems")

    field.open("arrangements/kitchen-jug.html")  # never visited
    expect(page.get_by_role("heading", level=1, name="Kitchen jug")).to_be_visible()
    assert page.locator("main img.drawn").first.evaluate("image => image.naturalWidth") > 100
    field.open("arrangements.html")  # its small pictures are in pixels, and only drawings are kept
    expect(page.locator("main img").first).to_have_js_property("complete", True)
    asked, wide = page.locator("main img").first.evaluate("i => [i.currentSrc, i.naturalWidth]")
    assert asked.endswith(".avif") and wide > 100
    field.open("weeks/2026-W27.html")
    expect(page.get_by_role("heading", level=1, name="Week 27")).to_be_visible()
    field.open(NEVER_KEPT)
    expect(page.get_by_role("heading", name="Not kept on this phone")).to_be_visible()
    again = page.get_by_role("link", name="Try again")
    expect(again).to_have_attribute("href", field.address + NEVER_KEPT)

    field.open(CUT)
    page.reload()
    expect(field.box("Cornflower")).to_be_checked()
    expect(field.box("Quaking")).to_be_checked()
    field.left("2 of 4 rows left, 200 stems")


def gets_a_newer_build(field: Field) -> None:
    """It is fetched beside the page, and shown when whoever reads wants it: by keyboard here."""
    page = field.page
    page.set_viewport_size(DESK)
    page.evaluate("window.untouched = true")
    field.serve("after")
    offer = page.locator("[data-newer]")
    expect(offer).to_be_visible()  # the phone has asked by itself, when the signal came back
    expect(offer.get_by_role("status")).to_have_text("A newer build is here.")
    field.left("2 of 4 rows left, 200 stems")
    assert page.evaluate("window.untouched")
    assert field.faults() == []
    page.emulate_media(color_scheme="dark")
    assert field.faults() == []
    page.emulate_media(color_scheme="light")
    page.get_by_role("button", name="Show it").focus()
    page.keyboard.press("Enter")

    expect(field.row("Cornflower").locator("[data-was]")).to_have_text("was 100 when ticked")
    assert field.box("Cornflower").evaluate("box => box.indeterminate")
    expect(field.box("Quaking")).to_be_checked()
    field.left("3 of 4 rows left, 250 stems")
    expect(page.locator(".ticks-bar [data-kept]")).to_have_text(KEPT)
    field.seen("1440")
    page.emulate_media(color_scheme="dark")
    page.set_viewport_size(PHONE)
    page.locator("#beds").evaluate("(beds) => beds.scrollIntoView({behavior: 'instant'})")
    field.seen("390-dark")
    clears_and_puts_back(field)
    assert page.evaluate("caches.keys().then((names) => names.length)") == 2  # this build, visits


def opens_the_next_page_as_the_newest_build_has_it(field: Field) -> None:
    """Whoever goes on to another page is not asked: here the first counts are there again."""
    field.host.close()
    field.serve("before")
    field.page.evaluate("navigator.serviceWorker.ready.then((worker) => worker.update())")
    expect(field.page.locator("[data-newer]")).to_be_visible()
    field.left("3 of 4 rows left, 250 stems")
    field.open(CUT)
    field.left("2 of 4 rows left, 200 stems")
    expect(field.page.locator("[data-newer]")).to_be_hidden()


def clears_and_puts_back(field: Field) -> None:
    """By keyboard; and what was ticked six weeks ago and longer is gone by itself."""
    page = field.page
    page.get_by_role("button", name="Clear the ticks").focus()
    page.keyboard.press("Enter")
    field.left("4 of 4 rows left, 450 stems")
    expect(page.get_by_role("button", name="Put the ticks back")).to_be_focused()
    page.keyboard.press("Enter")
    field.left("3 of 4 rows left, 250 stems")
    page.evaluate(
        """(day) => {
          const [ours] = Object.keys(localStorage).filter((name) => name.includes("ticks"));
          const at = (days) => JSON.stringify({a: {count: 1, at: Date.now() - days * day}});
          localStorage.setItem(ours.replace(/:[^:]*$/, ":cut 2026-05-01"), at(43));
          localStorage.setItem(ours.replace(/:[^:]*$/, ":cut 2026-06-01"), at(41));
        }""",
        DAYS,
    )
    page.reload()
    field.left("3 of 4 rows left, 250 stems")
    kept = page.evaluate("Object.keys(localStorage).filter((name) => name.includes('ticks'))")
    assert sorted(name.rpartition(":")[2] for name in kept) == [
        "bench market-supper 2026-07-11",
        "cut 2026-06-01",
        "cut 2026-07-09",
    ]
