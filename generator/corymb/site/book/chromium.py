"""Which browser is there to print with, and how is a page given to it without a window?

Any Chromium will do. It gets a folder of its own for the time, asks no host for anything, and is
stopped when it takes too long.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory

from corymb.site.locked.keys import VARIABLE

NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
    "msedge",
    "brave-browser",
)
PLACES = (
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    "C:/Program Files/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe",
)
FLAGS = (
    "--headless",
    "--disable-gpu",
    "--disable-quic",
    "--disable-background-networking",
    "--no-first-run",
    "--no-pdf-header-footer",
)
PATIENCE = 180.0  # seconds for one printing


class BrowserError(RuntimeError):
    """There is no browser, or it printed nothing; the text says what to do."""


def find_browser() -> str | None:
    """A Chromium on this machine, or None."""
    named = (shutil.which(name) for name in NAMES)
    there = (place for place in PLACES if Path(place).is_file())
    return next(filter(None, (*named, *there)), None)


def printed(program: str, page: Path) -> bytes:
    """A page as PDF. Raises BrowserError."""
    with TemporaryDirectory(prefix="corymb-print-", ignore_cleanup_errors=True) as folder:
        pdf = Path(folder) / "printed.pdf"
        said = _run(_command(program, Path(folder) / "profile", pdf, page), program)
        if not pdf.is_file() or not pdf.read_bytes().startswith(b"%PDF"):
            last = said.strip().splitlines()[-1:] or ["It said nothing."]
            raise BrowserError(f"{program} printed nothing. The last that it said: {last[0]}")
        return pdf.read_bytes()


def _command(program: str, profile: Path, pdf: Path, page: Path) -> list[str]:
    return [
        program,
        *FLAGS,
        *(["--no-sandbox"] if _as_root() else []),
        f"--user-data-dir={profile}",
        f"--print-to-pdf={pdf}",
        page.resolve().as_uri(),
    ]


def _as_root() -> bool:
    """Whether everything is allowed, when Chromium refuses to run in its sandbox."""
    return sys.platform != "win32" and os.geteuid() == 0


def _run(command: list[str], program: str) -> str:
    known = {name: value for name, value in os.environ.items() if name != VARIABLE}
    try:
        ran = subprocess.run(
            command,
            capture_output=True,
            timeout=PATIENCE,
            check=False,
            stdin=subprocess.DEVNULL,
            env=known,
        )
    except subprocess.TimeoutExpired as error:
        raise BrowserError(
            f"{program} took longer than {PATIENCE:.0f} seconds and was stopped. Try again when "
            "the machine has less to do, or print fewer styles."
        ) from error
    except OSError as error:
        raise BrowserError(f"{program} can't be started: {error.strerror or error}.") from error
    return ran.stderr.decode("utf-8", "replace")
