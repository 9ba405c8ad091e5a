"""Do the words that are gathered for translators come whole, with names for what varies?"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from string import Formatter

import pytest
from babel.messages.catalog import Catalog, Message
from babel.messages.pofile import read_po

import corymb
from corymb.language import LANGUAGES
from corymb.language.messages import FOLDER

ROOT = Path(__file__).parents[2]
NAMED = re.compile(r"%\((\w+)\)s")
TAG = re.compile(r"</?\w+[^<>]*>")
MARKS = {"_", "gettext", "ngettext", "pgettext", "noted"}


@cache
def catalogue_of(language: str) -> Catalog:
    with (FOLDER / f"{language}.po").open("rb") as written:
        return read_po(written, locale=language.replace("-", "_"))


def forms_of(message: Message) -> tuple[str, ...]:
    return (message.id,) if isinstance(message.id, str) else tuple(message.id)


def named_in(text: str) -> set[str]:
    """What varies in a sentence, by the two ways of naming it."""
    return {*NAMED.findall(text), *(name for name in _braced(text) if name)}


def _braced(text: str) -> Iterator[str]:
    if not NAMED.search(text):
        yield from (name for _, name, _, _ in Formatter().parse(text) if name is not None)


@pytest.mark.parametrize(
    ("of", "words"),
    [
        ("code", "as pictured"),
        ("a template", "Month by month"),
        ("a sentence with a link", "The year at a glance. To see one day, "),
        ("a script", "Link copied."),
        ("a number in a script", "{number} found."),
    ],
)
def test_the_words_of(of: str, words: str, gathered: Catalog) -> None:
    assert any(forms_of(message)[0].startswith(words) for message in gathered), of


def test_what_varies_has_a_name(gathered: Catalog) -> None:
    """`{}`, `{0}` and `%s` say nothing to a translator, and can't change places."""
    nameless = [
        text
        for message in gathered
        for text in forms_of(message)
        if re.search(r"%[sdrif]\b", text.replace("%%", ""))
        or any(not name.isidentifier() for name in _braced(text))
    ]
    assert nameless == []


def test_a_percent_sign_of_a_template_is_written_twice(gathered: Catalog) -> None:
    """A single one begins the name of what varies."""
    of_templates = [
        message
        for message in gathered
        if any(file[-5:] == ".html" for file, _ in message.locations)
    ]
    assert len(of_templates) > 300
    single = [
        text
        for message in of_templates
        for text in forms_of(message)
        if "%" in NAMED.sub("", text).replace("%%", "")
    ]
    assert single == []


def test_the_forms_of_a_number_speak_of_the_same_things(gathered: Catalog) -> None:
    """Only the number itself may be left out, where one thing is said in a word."""
    for message in gathered:
        one, *many = map(named_in, forms_of(message))
        assert all(one <= form and len(form - one) <= 1 for form in many), message.id


def test_a_sentence_has_no_loose_ends(gathered: Catalog) -> None:
    """Space at an end is a sign of a sentence that is glued together."""
    loose = [text for message in gathered for text in forms_of(message) if text != text.strip()]
    assert loose == []


def hidden(code: str) -> list[str]:
    """The sentences that stand within a pieced string, where nothing gathers them."""
    pieced = (node for node in ast.walk(ast.parse(code)) if isinstance(node, ast.JoinedStr))
    return [
        argument.value
        for string in pieced
        for node in ast.walk(string)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in MARKS
        for argument in node.args
        if isinstance(argument, ast.Constant) and isinstance(argument.value, str)
    ]


@pytest.mark.parametrize(
    ("code", "found"),
    [
        ("f\"{alt} {_('Seen from above.')}\"", ["Seen from above."]),
        ('f"{alt} {_(ABOVE)}"', []),
        ('_("Seen from above.").format(alt=f"{alt}.")', []),
    ],
)
def test_a_sentence_within_a_pieced_string_is_seen(code: str, found: list[str]) -> None:
    assert hidden(code) == found


def test_no_sentence_stands_where_it_is_not_gathered(gathered: Catalog) -> None:
    known = {form for message in gathered for form in forms_of(message)}
    files = sorted(Path(corymb.__file__).parent.rglob("*.py"))
    assert {text for file in files for text in hidden(file.read_text("utf-8"))} - known == set()


@pytest.mark.parametrize("language", LANGUAGES[1:])
def test_a_translation_keeps_what_varies_and_its_tags(language: str) -> None:
    translated = [message for message in catalogue_of(language) if message.id and message.string]
    for message in translated:
        said = [message.string] if isinstance(message.string, str) else [*(message.string or ())]
        least, most = named_in(forms_of(message)[0]), named_in(forms_of(message)[-1])
        for text in filter(None, said):
            assert least <= named_in(text) <= most, text
            assert sorted(TAG.findall(text)) in [*map(_tags, forms_of(message))], text


def _tags(text: str) -> list[str]:
    return sorted(TAG.findall(text))


def test_the_readme_names_each_language() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    *most, last = (f"`{language}`" for language in LANGUAGES)
    listed = f"{', '.join(most)} and {last}" if most else last
    assert f"It speaks {listed} so far" in readme
