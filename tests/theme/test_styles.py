"""Do the style sheets hang together: nothing undefined, nothing forgotten, everything legible?"""

from __future__ import annotations

import re

import pytest
from coloraide import Color

from tests.theme.sources import (
    ALL_SCRIPTS,
    ALL_TEMPLATES,
    FONTS,
    STYLES,
    book_parts,
    style_parts,
    styles,
)

READABLE = 4.5  # WCAG 2.2, success criterion 1.4.3: the least contrast of text, level AA
SEEN = 3.0  # WCAG 2.2, success criterion 1.4.11: the least contrast of what isn't text


def without_comments(css: str) -> str:
    return re.sub(r"/\*.*?\*/", "", css, flags=re.DOTALL)


def tokens(mode: str) -> dict[str, str]:
    """The custom properties of one mode; what dark doesn't say is as in light."""
    light, dark = (STYLES / "parts/tokens.css").read_text("utf-8").split("@media", 1)
    found = dict(re.findall(r"--(\w+): (#\w+);", light))
    return found if mode == "light" else found | dict(re.findall(r"--(\w+): (#\w+);", dark))


def test_every_part_is_joined_once() -> None:
    parts = style_parts()
    assert sorted(parts) == sorted((STYLES / "parts").glob("*.css"))
    assert sorted(book_parts()) == sorted((STYLES / "book").glob("*.css"))


def test_every_custom_property_that_is_used_is_defined() -> None:
    css = without_comments(styles())
    used, defined = set(re.findall(r"var\((--[\w-]+)", css)), set(re.findall(r"(--[\w-]+):", css))
    assert used and used == defined


def test_braces_are_closed_in_every_part() -> None:
    for part in (*style_parts(), *book_parts()):
        css = without_comments(part.read_text("utf-8"))
        assert css.count("{") == css.count("}"), part.name


def styled_classes() -> set[str]:
    css = re.sub(r"\{[^{}]*\}", "{}", without_comments(styles()))
    return set(re.findall(r"\.([a-z][\w-]*)", css))


def given_classes() -> set[str]:
    """Every word of a class="..." in a template, and those that a script gives."""
    markup = "".join(file.read_text("utf-8") for file in ALL_TEMPLATES)
    scripts = "".join(file.read_text("utf-8") for file in ALL_SCRIPTS)
    said = re.findall(r'class="([^"]*)"', markup) + re.findall(r'className = "([^"]*)"', scripts)
    # Of a word that Jinja chooses only the choices stand in quotes.
    plain = [re.sub(r"\{[{%].*?[%}]\}", _choices, words) for words in said]
    whole = {word for words in plain for word in words.split() if not word.endswith("-")}
    return whole | HANDED_ON


def _choices(chosen: re.Match[str]) -> str:
    return " ".join(re.findall(r"'([^']*)'", chosen[0]))


# Those of the strip's states are put together in the template; one is a macro's argument; the last
# two are given to the cells of a table in Markdown.
HANDED_ON = {
    "is-pictured",
    "is-variant",
    "is-swaps",
    "is-none",
    "is-roomy",
    "to-middle",
    "to-right",
}


def test_every_class_that_is_styled_is_given() -> None:
    assert styled_classes() - given_classes() == set()


def test_every_class_that_is_given_is_styled() -> None:
    assert given_classes() - styled_classes() == set()


@pytest.mark.parametrize("mode", ["light", "dark"])
@pytest.mark.parametrize(
    ("over", "under", "least"),
    [
        ("ink", "paper", READABLE),
        ("soft", "paper", READABLE),
        ("tint", "paper", READABLE),
        ("paper", "ink", READABLE),
        ("ink", "plate", READABLE),
        ("tint", "cell", SEEN),
    ],
    ids=lambda value: str(value),
)
def test_what_is_written_can_be_read(mode: str, over: str, under: str, least: float) -> None:
    colours = tokens(mode)
    assert Color(colours[over]).contrast(colours[under], method="wcag21") >= least


def test_every_font_that_is_named_is_there() -> None:
    named = set(re.findall(r'url\("\.\./fonts/([^"]+)"\)', styles()))
    assert named == {file.name for file in FONTS.glob("*.woff2")}


def test_nothing_is_fetched_from_elsewhere_and_nothing_floats_on_a_shadow() -> None:
    css = without_comments(styles())
    assert "//" not in css and "@import" not in css
    assert "box-shadow" not in css and "gradient(" not in css
