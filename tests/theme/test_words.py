"""Can a translator reach every word that a page's templates and scripts say?"""

from __future__ import annotations

import re
from gettext import NullTranslations
from pathlib import Path
from typing import Any

import pytest
from babel.messages.jslexer import Token, tokenize

from corymb.language import in_language, locales, speaking
from corymb.views.pieces import Audience
from tests.theme.filling import TRUSTED
from tests.theme.pages import IDS, VIEWS, rendered
from tests.theme.sources import ALL_SCRIPTS, ALL_TEMPLATES, SCRIPTS, TEMPLATES, name_of
from tests.theme.words import Page, untranslated

AS_THEY_ARE = {
    "partials/photo.html": {"w,"},  # the width of a file in `srcset`
    "partials/season-strip.html": {"M H"},  # the pen's way over a path
}
"""What is no word of any language, by the template it stands in."""


@pytest.mark.parametrize("file", ALL_TEMPLATES, ids=name_of)
def test_every_word_of_a_template_can_be_translated(file: Path) -> None:
    allowed = AS_THEY_ARE.get(file.relative_to(TEMPLATES).as_posix(), set())
    assert [text for text in untranslated(file.read_text("utf-8")) if text not in allowed] == []


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ("<p>Cut list</p>", ["Cut list"]),
        ("<p>{{ _('Cut list') }}</p>", []),
        ("<p>{% trans n=3 %}{{ n }} stem{% pluralize %}{{ n }} stems{% endtrans %}</p>", []),
        ('<img alt="{{ name }}, drawn">', ["alt=, drawn"]),
        ('<nav aria-label="{{ _(\'Main\') }}" class="top">', []),
        ("<p>{{ n }} {{ 'visit' if n == 1 else 'visits' }}</p>", ["visitvisits"]),
        ("<p{{ ' hidden' if n }}>{{ 'late'|upper }}</p>", ["late"]),
        ('<li class="a{{ \' is-wide\' if n }}">{{ url("index.html") }}</li>', []),
        ("{{ part('Take care', 'ticks') }}", ["Take care"]),
        ("{{ part(title=_('Take care'), slot='(min-width: 60em) 20vw') }}", []),
        ("{% for id, said in (('past', 'Past'),) %}{{ said }}{% endfor %}", ["Past"]),
        ("{% macro part(title='Take care') %}{{ title }}{% endmacro %}", ["Take care"]),
        ("{% set lost = 'It lacks:' %}{{ lost }}", ["It lacks:"]),
        ('<meta name="description" content="Flowers">', ["content=Flowers"]),
        ('<meta name="robots" content="noindex">', []),
    ],
    ids=lambda value: str(value)[:40],
)
def test_a_word_past_the_translators_is_found(source: str, found: list[str]) -> None:
    assert untranslated(source) == found


class Wordless(NullTranslations):
    """A language that leaves of a sentence only what is put into it, and its tags."""

    def gettext(self, message: str) -> str:
        return " ".join(re.findall(r"%\(\w+\)s|\{\w+\}|</?\w+[^<>]*>", message))

    def ngettext(self, msgid1: str, msgid2: str, n: int) -> str:
        assert isinstance(n, int), f"{n!r} of {msgid1}"
        return self.gettext(msgid1 if n == 1 else msgid2)

    def pgettext(self, context: str, message: str) -> str:
        return self.gettext(message)


@pytest.mark.parametrize("empty", [False, True], ids=["full", "empty"])
@pytest.mark.parametrize(("template", "audience", "view"), VIEWS, ids=IDS)
def test_a_page_says_nothing_past_its_language(
    template: str, audience: Audience, view: Any, empty: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Lists and days are Japanese, which joins them without a letter of ours."""
    for module in (speaking, locales):
        monkeypatch.setattr(module, "messages_of", lambda tag: Wordless())
    with in_language("ja"):
        html = rendered(template, audience, view, "12", empty=empty)
    page = Page()
    page.feed(html.replace(TRUSTED["html"], ""))
    assert page.found == []


KEYS = ("Escape", "PageUp", "PageDown", "Home", "End", "Enter")
"""Names of keys, by the standard of browsers."""
SAID = re.compile(r"^(?![.#\[])(?:[A-Z][a-z]|.*[A-Za-z,.’] [A-Za-z])")


def said_in_english(source: str) -> list[str]:
    """Texts of a script that look like words for people, outside `_()` and `plural()`."""
    found, opened, open_ = [], [], 0
    before = Token("", "", 0)
    for token in tokenize(source):
        if token.value == "(":
            open_ += 1
            opened += [open_] if before.value in ("_", "plural") else []
        elif token.value == ")":
            opened = [depth for depth in opened if depth != open_]
            open_ -= 1
        elif token.type in ("string", "template_string") and not opened:
            text = re.sub(r"\$\{.*?\}", "", token.value[1:-1])
            if SAID.search(text) and text not in KEYS and before.value != "Error":
                found.append(text)
        before = token
    return found + re.findall(r"(?:textContent|innerText|\.alt|\.title) = [\"`]\w[^;]*", source)


@pytest.mark.parametrize("file", ALL_SCRIPTS, ids=name_of)
def test_every_word_of_a_script_can_be_translated(file: Path) -> None:
    assert said_in_english(file.read_text("utf-8")) == []


@pytest.mark.parametrize(
    ("source", "found"),
    [
        ('said.textContent = _("Link copied.");', []),
        ('const why = "Try another month.";', ["Try another month."]),
        ("say(`That day is over, ${name}`);", ["That day is over, "]),
        ('plural("{n} is left.", "{n} are left.", n, { n })', []),
        ('page.querySelector(".showing .drawn")', []),
        ('said.textContent = "none";', ['textContent = "none"']),
    ],
)
def test_a_word_of_a_script_past_the_translators_is_found(source: str, found: list[str]) -> None:
    assert said_in_english(source) == found


def test_a_script_that_says_something_knows_how() -> None:
    """`_` is otherwise a name for what is thrown away, and hides the other."""
    for file in SCRIPTS.glob("*.js"):
        source = file.read_text("utf-8")
        assert ("_(" in source) <= ("words.js" in source or file.name == "words.js"), file.name
        assert not re.search(r"\(_\s*[,)]", source), file.name
