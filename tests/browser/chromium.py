"""Where is Chromium, and how is it started for tests?"""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Playwright

NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable")
USUAL_PLACE = Path("/usr/bin/chromium")

FLAGS = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-background-networking",
    "--no-first-run",
)

MISSING = (
    "No Chromium was found, and without one nobody has looked at the pages. Install it with the "
    "machine's package manager (on Debian: apt-get install chromium) and run the tests again."
)


def find_chromium() -> str | None:
    """The path of the browser's program, or None where there is none."""
    for name in NAMES:
        if found := shutil.which(name):
            return found
    return str(USUAL_PLACE) if USUAL_PLACE.is_file() else None


@contextmanager
def start_chromium(playwright: Playwright, *flags: str) -> Iterator[Browser]:
    """A running Chromium; where there is none the tests that want it fail with a sentence."""
    program = find_chromium()
    if program is None:
        pytest.fail(MISSING, pytrace=False)
    browser = playwright.chromium.launch(executable_path=program, args=[*FLAGS, *flags])
    yield browser
    browser.close()
