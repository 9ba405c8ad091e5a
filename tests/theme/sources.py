"""The theme's files, and how its templates are rendered in these tests."""

from __future__ import annotations

from pathlib import Path

from corymb.site.render import THEME

TEMPLATES = THEME / "templates"
ASSETS = THEME / "assets"
STYLES = ASSETS / "css"
FONTS = ASSETS / "fonts"
SCRIPTS = ASSETS / "js"

ALL_TEMPLATES = sorted(TEMPLATES.rglob("*.html"))
PARTIALS = sorted((TEMPLATES / "partials").rglob("*.html"))
ALL_SCRIPTS = sorted(SCRIPTS.glob("*.js"))


def style_parts() -> list[Path]:
    """The style sheets in the order they are joined."""
    return [STYLES / name for name in (STYLES / "order.txt").read_text("utf-8").split()]


def book_parts() -> list[Path]:
    """Those that the book of recipes has for itself."""
    names = (STYLES / "book" / "order.txt").read_text("utf-8").split()
    return [STYLES / name for name in names if name.startswith("book/")]


def styles() -> str:
    """All style sheets, joined."""
    return "\n".join(part.read_text("utf-8") for part in (*style_parts(), *book_parts()))


def name_of(file: Path) -> str:
    """A file's name within the theme, for the ids of test rows."""
    return file.relative_to(THEME).as_posix()
