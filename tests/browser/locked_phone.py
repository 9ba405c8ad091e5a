"""A phone that opens a locked site, and a host that can be lost and found again."""

from __future__ import annotations

import re
from contextlib import ExitStack
from pathlib import Path

from playwright.sync_api import Browser, BrowserContext, Locator, Page, ViewportSize, expect

from tests.browser.shelf import PATIENCE
from tests.browser.watching import Watch
from tests.serving import served

OPENING = 15_000  # milliseconds: keys are made, and a new worker takes the old one's place
NARROW: ViewportSize = {"width": 360, "height": 640}
LEAVES = """addEventListener("pagehide", () => {
  const field = document.getElementById("passphrase");
  if (field) sessionStorage.setItem("left in the field", field.value);
});"""


class Phone:
    """Its browser, and where it finds the host."""

    def __init__(self, browser: Browser, builds: dict[str, Path]) -> None:
        self.builds = builds
        self.context: BrowserContext = browser.new_context(viewport=NARROW, has_touch=True)
        self.context.set_default_timeout(PATIENCE)
        self.context.add_init_script(LEAVES)
        self.watches: list[Watch] = []
        self.host = ExitStack()
        self.port = 0
        self.new_page()

    def new_page(self) -> None:
        self.page: Page = self.context.new_page()
        self.watches.append(Watch(self.page))

    def serve(self, name: str) -> None:
        root = self.host.enter_context(served(self.builds[name], self.port))
        self.port = int(root.rstrip("/").rpartition(":")[2])
        self.address = f"{root}staff/"
        for watch in self.watches:
            watch.address = root
        self.context.set_offline(False)

    def cut_off(self) -> None:
        self.context.set_offline(True)
        self.host.close()

    def close_and_open(self, path: str) -> None:
        """All pages are closed; later one is opened."""
        self.page.close()
        self.new_page()
        self.watches[-1].address = self.watches[0].address
        self.open(path)

    def open(self, path: str) -> None:
        self.page.goto(self.address + path)

    def type(self, passphrase: str) -> None:
        field = self.page.get_by_label("Passphrase")
        expect(field).to_be_focused()
        field.fill(passphrase)
        self.page.keyboard.press("Enter")

    def shows(self, heading: str) -> None:
        told = self.page.get_by_role("heading", level=1)
        expect(told).to_have_text(re.compile(heading), timeout=OPENING)

    @property
    def said(self) -> Locator:
        return self.page.get_by_role("status")
