"""Do the templates keep to what their own content policy allows, and to one thing a file?"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from corymb.site.assets import STAFF_ALONE
from tests.theme.sources import ALL_SCRIPTS, ALL_TEMPLATES, PARTIALS, SCRIPTS, TEMPLATES, name_of

NOT_ALLOWED = {
    "a style attribute": r"\sstyle\s*=",
    "a style element": r"<style\b",
    "an event handler": r"\son[a-z]+\s*=\s*[\"']",
    "an inline script": r"<script(?![^>]*\b(?:src=|type=\"application/ld\+json\"))",
    "a javascript: address": r"javascript:",
    "a file from elsewhere": r"(?:src|href)=\"(?:https?:)?//",
}
TRUSTED = {
    "partials/share-tags.html": {"page.structured_data"},
    "lesson.html": {"view.html"},
    "prose.html": {"view.html"},
    "partials/book/lesson.html": {"lesson.html"},
}


@pytest.mark.parametrize("what", NOT_ALLOWED)
def test_no_template_holds(what: str) -> None:
    pattern = re.compile(NOT_ALLOWED[what])
    found = [name_of(file) for file in ALL_TEMPLATES if pattern.search(file.read_text("utf-8"))]
    assert not found


def test_only_what_the_core_made_safe_is_printed_unescaped() -> None:
    for file in ALL_TEMPLATES:
        unescaped = set(re.findall(r"([\w.]+)\s*\|\s*safe", file.read_text("utf-8")))
        assert unescaped == TRUSTED.get(file.relative_to(TEMPLATES).as_posix(), set()), file


def test_the_policy_allows_nothing_from_elsewhere() -> None:
    head = (TEMPLATES / "partials/head.html").read_text("utf-8")
    found = re.search(r'Content-Security-Policy" content="([^"]+)"', head)
    assert found
    rules = dict(rule.split(" ", 1) for rule in found[1].split("; "))
    assert rules["default-src"] == "'none'"
    assert set(" ".join(rules.values()).split()) == {"'none'", "'self'", "data:"}
    assert [name for name, value in rules.items() if "data:" in value] == ["img-src"]


@pytest.mark.parametrize("file", ALL_TEMPLATES, ids=name_of)
def test_a_template_begins_by_saying_what_it_is(file: Path) -> None:
    assert file.read_text("utf-8").startswith("{# ")


@pytest.mark.parametrize("file", PARTIALS, ids=name_of)
def test_a_partial_is_short(file: Path) -> None:
    assert len(file.read_text("utf-8").splitlines()) <= 60


@pytest.mark.parametrize("file", ALL_SCRIPTS, ids=name_of)
def test_a_script_is_short_and_says_what_it_does(file: Path) -> None:
    lines = file.read_text("utf-8").splitlines()
    assert len(lines) <= 120
    assert lines[0].startswith("// ")


def test_every_script_that_a_page_names_is_there_and_every_script_is_named() -> None:
    words = "\n".join(file.read_text("utf-8") for file in ALL_TEMPLATES)
    named = set(re.findall(r"js/([\w-]+)\.js", words))
    for listed in re.findall(r"for name in \(([^)]+)\)", words):
        named |= set(re.findall(r"'(\w+)'", listed))
    imported = {
        name
        for file in ALL_SCRIPTS
        for name in re.findall(r'from "\./([\w-]+)\.js"', file.read_text("utf-8"))
    }
    assert named | imported == {file.stem for file in SCRIPTS.glob("*.js")}


def test_no_script_that_clients_get_needs_one_that_is_for_staff_alone() -> None:
    imports = {
        file.name: set(re.findall(r'from "\./([\w-]+\.js)"', file.read_text("utf-8")))
        for file in ALL_SCRIPTS
    }
    assert set(STAFF_ALONE) <= set(imports)
    needed = {name: imports[name] & set(STAFF_ALONE) for name in set(imports) - set(STAFF_ALONE)}
    assert not any(needed.values()), needed
