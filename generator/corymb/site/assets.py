"""The theme's own files as they are published: styles joined into one, scripts, fonts, tints."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from pathlib import Path

from corymb.site.render import THEME
from corymb.site.script_words import MESSAGES
from corymb.views.frame import Tint

ASSETS = THEME / "assets"
STYLES = ASSETS / "css"
ORDER = STYLES / "order.txt"
PUBLISHED = "assets/theme"
COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
LINE_END = re.compile(r"\s*\n\s*")
STAFF_ALONE = (
    *("offline.js", "offline-line.js", "ticks.js", "ticked.js", "store.js", "send.js"),
    *("learning.js", "practice.js", "practised.js", "plan-lit.js", "clock.js"),
    *("questions.js", "chosen.js", "record.js", "curve.js", "telling.js"),
    *("lock.js", "locked.js", "lock-again.js"),
)
"""Scripts that no page for clients can have a use for."""


def theme_files(staff: bool = False) -> Iterator[tuple[str, Path]]:
    """Each file of the theme that is published as it is, and where to."""
    for file in sorted(ASSETS.rglob("*")):
        as_it_is = not file.is_relative_to(STYLES) and file.suffix != ".md" and file != MESSAGES
        if file.is_file() and as_it_is and (staff or file.name not in STAFF_ALONE):
            yield f"{PUBLISHED}/{file.relative_to(ASSETS).as_posix()}", file


def stylesheet() -> bytes:
    """The theme's styles in the order that `order.txt` lists them."""
    names = [line.strip() for line in ORDER.read_text("utf-8").splitlines()]
    parts = [
        (STYLES / name).read_text("utf-8") for name in names if name and not name.startswith("#")
    ]
    return packed("\n".join(parts)).encode()


def packed(css: str) -> str:
    """Styles without what only their authors read: comments, indents and empty lines."""
    return LINE_END.sub("\n", COMMENT.sub("", css)).strip() + "\n"


def tint_rules(tints: Iterable[Tint]) -> bytes:
    """A rule for each tint in use: its light value, and its dark one after dark."""
    each = sorted(set(tints), key=lambda tint: (tint.light, tint.dark))
    light = [f'[data-tint="{tint.light[1:]}"]{{--tint:{tint.light}}}' for tint in each]
    dark = [f'[data-tint="{tint.light[1:]}"]{{--tint:{tint.dark}}}' for tint in each]
    rules = [*light, "@media (prefers-color-scheme:dark){", *dark, "}"] if each else []
    return "\n".join([*rules, ""]).encode()
