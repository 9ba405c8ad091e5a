"""Visits to the demo's pages, each in a fresh browser context that is gone after the test."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Playwright

from corymb.views.pieces import Audience
from tests.browser.chromium import start_chromium
from tests.browser.kinds import Kind

PHONE = {"width": 390, "height": 844}
DESK = {"width": 1440, "height": 900}

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


@pytest.fixture
def visit(browser: Browser, demo_addresses: dict[Audience, str]) -> Iterator[Visit]:
    """Opens a page: `visit(kind)`, with anything else as Playwright's options of a context.

    Without a kind the page is empty, for a test that has to listen from the first word.
    """
    contexts = []

    def opened(kind: Kind | None = None, **options: Any) -> Page:
        context = browser.new_context(**{"viewport": PHONE, **options})
        contexts.append(context)
        context.set_default_timeout(8000)
        page = context.new_page()
        if kind is not None:
            page.goto(demo_addresses[kind.audience] + kind.path)
        return page

    yield opened
    for context in contexts:
        context.close()
