"""A sentence is said in the language of the block it stands in, and in English outside."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from corymb.language import gettext, in_language, ngettext, pgettext, spoken
from corymb.language.messages import messages_digest
from corymb.site.render import environment
from tests.language.made_up import made_up

POLISH = """\
msgid ""
msgstr ""
"Content-Type: text/plain; charset=UTF-8\\n"
"Plural-Forms: nplurals=3; plural=(n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) "
"? 1 : 2);\\n"

msgid "Counts"
msgstr "Liczby"

msgctxt "role"
msgid "light"
msgstr "jasny"

msgid "%(n)s stem"
msgid_plural "%(n)s stems"
msgstr[0] "%(n)s łodyga"
msgstr[1] "%(n)s łodygi"
msgstr[2] "%(n)s łodyg"
"""


@pytest.fixture(autouse=True)
def _polish(tmp_path: Path) -> Iterator[None]:
    with made_up(tmp_path, pl=POLISH):
        yield


@pytest.mark.parametrize(
    ("tag", "says"), [("pl-PL", "Liczby"), ("en-IE", "Counts"), ("fi", "Counts")]
)
def test_a_language_without_sentences_is_spoken_in_english(tag: str, says: str) -> None:
    with in_language(tag):
        assert gettext("Counts") == says
        assert spoken() == tag
    assert gettext("Counts") == "Counts"


# The plural rule of Polish is that of Unicode's CLDR.
@pytest.mark.parametrize(
    ("number", "says"), [(1, "1 łodyga"), (3, "3 łodygi"), (5, "5 łodyg"), (22, "22 łodygi")]
)
def test_a_number_takes_the_form_that_its_language_gives_it(number: int, says: str) -> None:
    template = "{% trans n=n %}{{ n }} stem{% pluralize %}{{ n }} stems{% endtrans %}"
    with in_language("pl"):
        assert ngettext("%(n)s stem", "%(n)s stems", number) % {"n": number} == says
        assert environment().from_string(template).render(n=number) == says


def test_a_word_with_two_meanings_is_told_apart_by_its_context() -> None:
    with in_language("pl"):
        assert pgettext("role", "light") == "jasny"
        assert pgettext("of the day", "light") == "light"


def test_what_is_put_into_a_sentence_is_escaped_in_a_template() -> None:
    template = environment().from_string("{% trans name='<b>' %}For {{ name }}{% endtrans %}")
    assert template.render() == "For &lt;b&gt;"


def test_a_language_is_told_from_its_country_and_from_what_it_said_before(tmp_path: Path) -> None:
    before = messages_digest("pl-PL")
    assert before != messages_digest("pl")
    assert messages_digest("fi") == "fi"
    (tmp_path / "pl.po").write_text(POLISH.replace("Liczby", "Ile"), "utf-8")
    assert messages_digest("pl-PL") != before
