"""Which page is there for a test to look through, without starting a browser's page each time?

A new page costs Chromium a process and most of a second; going on to the next address costs a
tenth. So pages are kept, one for each set of options, and put back as they were after each test.
"""

from __future__ import annotations

import json
from typing import Any

from playwright.sync_api import Browser, Page

from tests.browser.sizes import PHONE

PATIENCE = 8000  # milliseconds

# Each context would keep the whole of the staff's site for a field without signal.
KEEP_NOTHING = """Object.defineProperty(Navigator.prototype, "serviceWorker", {get() {}});"""


def new_page(browser: Browser, options: dict[str, Any]) -> Page:
    """A page in a context of its own, of a phone's size unless the options say another."""
    context = browser.new_context(**{"viewport": PHONE, **options})
    context.set_default_timeout(PATIENCE)
    context.add_init_script(KEEP_NOTHING)
    return context.new_page()


def put_back(page: Page, options: dict[str, Any]) -> None:
    """Undo what a test may have done to a page, but for the address it went to."""
    for other in page.context.pages:
        if other is not page:
            other.close()
    page.unroute_all()
    page.context.clear_cookies()
    page.set_viewport_size(options.get("viewport", PHONE))
    page.emulate_media(
        media="null",
        color_scheme=options.get("color_scheme", "light"),
        reduced_motion=options.get("reduced_motion", "no-preference"),
    )
    page.mouse.move(-1, -1)  # where it hovers over nothing


class Shelf:
    """Pages that nobody is looking through, by their options."""

    def __init__(self, browser: Browser) -> None:
        self.browser = browser
        self.free: dict[str, list[Page]] = {}

    def take(self, options: dict[str, Any]) -> Page:
        """A page of these options that nobody else has."""
        free = self.free.get(_key(options))
        return free.pop() if free else new_page(self.browser, options)

    def give_back(self, page: Page, options: dict[str, Any]) -> None:
        """Keep a page for the next test; one that was closed is forgotten."""
        if page.is_closed():
            page.context.close()
            return
        put_back(page, options)
        self.free.setdefault(_key(options), []).append(page)

    def clear(self) -> None:
        """Close all that is kept."""
        for pages in self.free.values():
            for page in pages:
                page.context.close()


def _key(options: dict[str, Any]) -> str:
    return json.dumps(options, sort_keys=True)
