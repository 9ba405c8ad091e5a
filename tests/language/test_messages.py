"""Is every message there for translators, and does each language say all of them?

What a translation keeps of a sentence is tested beside what is gathered (`test_gathering`).
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest
from babel import Locale
from babel.messages.catalog import Catalog, Message
from babel.messages.plurals import get_plural
from babel.messages.pofile import read_po

from corymb.language import LANGUAGES
from corymb.language.messages import FOLDER

TEMPLATE = FOLDER / "corymb.pot"
TRANSLATED = LANGUAGES[1:]

Known = tuple[str | None, str | tuple[str, ...]]
"""A message by its context and its words, in singular and plural where it has both."""

GATHERED_AGAIN = "Gather the messages again: see `Say it in another language` in DEVELOPERS.md."


@cache
def catalogue(file: Path, language: str | None = None) -> Catalog:
    with file.open("rb") as written:
        return read_po(written, locale=language and language.replace("-", "_"))


def known(messages: Catalog) -> dict[Known, Message]:
    """The messages but the header, each as one looks it up."""
    return {
        (each.context, each.id if isinstance(each.id, str) else tuple(each.id)): each
        for each in messages
        if each.id
    }


def test_the_template_holds_what_is_gathered_now(gathered: Catalog) -> None:
    now, then = known(gathered), known(catalogue(TEMPLATE))
    assert now.keys() - then.keys() == set(), GATHERED_AGAIN
    assert then.keys() - now.keys() == set(), GATHERED_AGAIN


@pytest.mark.parametrize("language", TRANSLATED)
def test_a_language_has_every_message(language: str) -> None:
    there = known(catalogue(FOLDER / f"{language}.po", language))
    assert known(catalogue(TEMPLATE)).keys() - there.keys() == set()


@pytest.mark.parametrize("language", TRANSLATED)
def test_a_language_says_every_message_and_is_sure_of_it(language: str) -> None:
    messages = known(catalogue(FOLDER / f"{language}.po", language))
    unsure = [each for each, message in messages.items() if message.fuzzy]
    unsaid = [each for each, message in messages.items() if not all(said_for(message))]
    assert (unsure, unsaid) == ([], [])


@pytest.mark.parametrize("language", TRANSLATED)
def test_a_language_says_a_number_in_as_many_forms_as_it_has(language: str) -> None:
    """As many as CLDR gives it for whole numbers, in the words of gettext."""
    messages = catalogue(FOLDER / f"{language}.po", language)
    plural = get_plural(Locale.parse(language, sep="-"))
    assert messages.plural_forms == plural.plural_forms
    numbers = [each for each in known(messages).values() if not isinstance(each.id, str)]
    assert {len(said_for(each)) for each in numbers} == {plural.num_plurals}


def said_for(message: Message) -> tuple[str, ...]:
    """What is said for a message, form by form."""
    said = message.string
    return (said,) if isinstance(said, str) else tuple(said or ())
