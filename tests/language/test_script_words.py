"""Scripts get the sentences that they use, in the site's language, and each form by its number."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from babel.core import Locale

from corymb.language import in_language
from corymb.site.script_words import MESSAGES, script_words, used_by_scripts
from tests.language.made_up import made_up

POLISH = """\
msgid ""
msgstr ""
"Content-Type: text/plain; charset=UTF-8\\n"
"Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) "
"? 1 : 2);\\n"

msgid "Link copied."
msgstr "Skopiowano link."

msgid "What no script says"
msgstr "Czego nie mówi żaden skrypt"

msgid "{left} of {all} fit."
msgid_plural "{left} of {all} fit."
msgstr[0] "{left} z {all} pasuje."
msgstr[1] "{left} z {all} pasują."
msgstr[2] "{left} z {all} pasuje do tego."
"""


@pytest.fixture(autouse=True)
def _polish(tmp_path: Path) -> Iterator[None]:
    with made_up(tmp_path, pl=POLISH):
        yield


def published(tag: str) -> str:
    with in_language(tag):
        return script_words().decode()


@pytest.mark.parametrize(
    ("tag", "country"), [("en", "en-GB"), ("en-IE", "en-IE"), ("fi-FI", "en-GB")]
)
def test_english_needs_no_messages_but_a_countrys_way_with_dates(tag: str, country: str) -> None:
    module = published(tag)
    assert f'LANGUAGE = "{country}"' in module
    assert "MESSAGES = {}" in module


def test_the_themes_own_module_is_that_of_english() -> None:
    own, made = MESSAGES.read_text("utf-8"), published("en")
    assert own.splitlines()[-2:] == made.splitlines()[-2:]


def test_another_language_has_what_its_file_says_of_the_scripts_and_no_more() -> None:
    module = published("pl-PL")
    assert 'LANGUAGE = "pl-PL"' in module
    table = re.search(r"MESSAGES = (.*);", module)
    assert table
    assert json.loads(table[1]) == {
        "Link copied.": "Skopiowano link.",
        "{left} of {all} fit.": {
            "one": "{left} z {all} pasuje.",
            "few": "{left} z {all} pasują.",
            "many": "{left} z {all} pasuje do tego.",
        },
    }


# A browser's Intl.PluralRules goes by the same rules of Unicode's CLDR, here as Babel has them.
@pytest.mark.parametrize(("number", "category"), [(1, "one"), (22, "few"), (12, "many")])
def test_the_forms_are_named_as_browsers_name_them(number: int, category: str) -> None:
    assert Locale.parse("pl").plural_form(number) == category


def test_every_script_that_speaks_is_heard() -> None:
    used = {message if isinstance(message, str) else message[0] for message in used_by_scripts()}
    assert {"Link copied.", "Nothing found.", "Week {week}, {days}."} <= used
