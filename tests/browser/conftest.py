"""Visits to the demo's pages.

A test that visits a kind of page gets one that others have looked through before it; a test that
asks for an empty page gets a new one, which nobody has used and nobody will.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Playwright

from corymb.views.pieces import Audience
from tests.browser.chromium import start_chromium
from tests.browser.kinds import Kind
from tests.browser.shelf import Shelf, new_page
from tests.browser.sizes import DESK, PHONE

__all__ = ["DESK", "PHONE", "Visit", "scroll_through"]

NO_IMAGES = "--blink-settings=imagesEnabled=false"

Visit = Callable[..., Page]

# Down the page by screenfuls, so that late images are asked for; wait for them; back to the top.
SCROLL = """async () => {
  for (let y = 0; y < document.body.scrollHeight; y += innerHeight) {
    scrollTo({top: y, behavior: "instant"});
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
  }
  const seen = [...document.images].filter((image) => image.checkVisibility());
  await Promise.race([
    Promise.allSettled(seen.map((image) => image.decode())),
    new Promise((done) => setTimeout(done, 3000)),
  ]);
  scrollTo({top: 0, behavior: "instant"});
}"""


def scroll_through(page: Page) -> None:
    """Look at all of a page, and wait until its late images are there."""
    page.evaluate(SCROLL)


@pytest.fixture(scope="session")
def plain_browser(playwright: Playwright) -> Iterator[Browser]:
    """A Chromium that leaves images out, for tests that go through every page of a site."""
    with start_chromium(playwright, NO_IMAGES) as chromium:
        yield chromium


@pytest.fixture(scope="session")
def shelf(browser: Browser) -> Iterator[Shelf]:
    """The pages that are kept between tests."""
    kept = Shelf(browser)
    yield kept
    kept.clear()


@pytest.fixture
def visit(shelf: Shelf, demo_addresses: dict[Audience, str]) -> Iterator[Visit]:
    """Opens a page: `visit(kind)`, with anything else as Playwright's options of a context.

    Without a kind the page is empty and new, with nothing kept from other pages: for a test that
    has to listen from the first word, or to change what a page can do.
    """
    kept: list[tuple[Page, dict[str, Any]]] = []
    new: list[Page] = []

    def opened(kind: Kind | None = None, **options: Any) -> Page:
        if kind is None:
            new.append(new_page(shelf.browser, options))
            return new[-1]
        page = shelf.take(options)
        kept.append((page, options))
        page.goto(demo_addresses[kind.audience] + kind.path)
        return page

    yield opened
    for page in new:
        page.context.close()
    for page, options in kept:
        shelf.give_back(page, options)
