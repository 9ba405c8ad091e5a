"""Does every command say in sentences what it can't do with a studio?"""

from __future__ import annotations

import traceback
from pathlib import Path

from click.testing import CliRunner

from corymb.cli import main

ASKED = {
    "check": ["check"],
    "build": ["build", "--on", "2026-09-16"],
    "show": ["show", "{recipe}", "--on", "2026-09-16"],
    "season": ["season", "--on", "2026-09-16"],
    "cut": ["cut", "--from", "2026-09-19"],
    "learn": ["learn"],
    "repeat": ["repeat", "{order}", "--on", "2027-09-18", "--dry"],
    "link": ["link", "{recipe}", "--for", "2027-09-18"],
    "share": ["share", "{recipe}", "--for", "2026-09-19", "-o", "{out}"],
    "colours": ["colours", "{photo}"],
}
"""What each command is asked for, as one would type it."""

NEEDS_ALL = ("check", "build", "season", "cut", "repeat", "link")
"""Commands that stop at any error in the studio's files."""


def answer(command: str, settings: Path, **names: str) -> tuple[int, str, str]:
    """How a command ends, what it says, and its traceback where it has one."""
    filled = [word.format(**names) for word in ASKED[command]]
    came = CliRunner().invoke(main, [*filled, "-f", str(settings)])
    stumbled = came.exception is not None and not isinstance(came.exception, SystemExit)
    told = "".join(traceback.format_exception(came.exception, limit=-8)) if stumbled else ""
    return came.exit_code, came.output, told
