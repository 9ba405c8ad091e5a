"""Dates, months and lists are said as the language says them: CLDR's answers, from memory.

An English that has no country is written as in Britain, and a language without sentences too.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, time
from pathlib import Path

import pytest

from corymb.language import in_language, locales
from corymb.studio.values.dates import IsoWeek
from corymb.views.compose.week_words import week_words
from corymb.views.compose.wording import spans_of
from tests.language.made_up import made_up

HEADER = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n'
GERMAN = """
msgid "week {week}, {days}"
msgstr "Woche {week}, {days}"

msgctxt "days"
msgid "{first} to {last}"
msgstr "{first} bis {last}"

msgid "early {month}"
msgstr "Anfang {month}"

msgctxt "parts of the year"
msgid "{first} to {last}"
msgstr "{first} bis {last}"
"""
WEDNESDAY = date(2026, 9, 16)


@pytest.fixture(autouse=True)
def _with_sentences(tmp_path: Path) -> Iterator[None]:
    others = dict.fromkeys(("fr", "pl", "es", "hu"), HEADER)
    with made_up(tmp_path, de=HEADER + GERMAN, **others):
        yield


@pytest.mark.parametrize(
    ("tag", "day", "month", "july", "behind_a_day", "three"),
    [
        ("en", "16 September 2026", "September 2026", "July", "July", "a, b and c"),
        ("en-IE", "16 September 2026", "September 2026", "July", "July", "a, b and c"),
        ("en-US", "September 16, 2026", "September 2026", "July", "July", "a, b, and c"),
        ("nl-NL", "16 September 2026", "September 2026", "July", "July", "a, b and c"),
        ("de-AT", "16. September 2026", "September 2026", "Juli", "Juli", "a, b und c"),
        ("fr-FR", "16 septembre 2026", "septembre 2026", "juillet", "juillet", "a, b et c"),
        ("pl-PL", "16 września 2026", "wrzesień 2026", "lipiec", "lipca", "a, b i c"),
        ("es-ES", "16 de septiembre de 2026", "septiembre de 2026", "julio", "julio", "a, b y c"),
    ],
)
def test_a_day_and_a_list_are_said_as_in_the_language(
    tag: str, day: str, month: str, july: str, behind_a_day: str, three: str
) -> None:
    with in_language(tag):
        assert locales.date_words(WEDNESDAY) == day
        assert locales.month_of_year(WEDNESDAY) == month
        assert locales.month_names()[6] == july
        assert locales.month_in_date(7) == behind_a_day
        assert locales.and_list("abc") == three


@pytest.mark.parametrize(
    ("tag", "first", "last", "ends"),
    [
        ("en-IE", (2026, 9, 14), (2026, 9, 20), ("14", "20 September 2026")),
        ("en-IE", (2026, 9, 28), (2026, 10, 4), ("28 September", "4 October 2026")),
        ("en-IE", (2026, 12, 28), (2027, 1, 3), ("28 December 2026", "3 January 2027")),
        ("en-US", (2026, 9, 14), (2026, 9, 20), ("September 14", "20, 2026")),
        ("de-DE", (2026, 9, 14), (2026, 9, 20), ("14.", "20. September 2026")),
        ("pl-PL", (2026, 9, 28), (2026, 10, 4), ("28 września", "4 października 2026")),
        ("hu-HU", (2026, 9, 28), (2026, 10, 4), ("2026. szeptember 28.", "október 4.")),
    ],
    ids=str,
)
def test_a_span_says_once_what_its_ends_share(
    tag: str, first: tuple[int, int, int], last: tuple[int, int, int], ends: tuple[str, str]
) -> None:
    with in_language(tag):
        assert locales.ends_of_span(date(*first), date(*last)) == ends


@pytest.mark.parametrize(
    ("words", "and_", "or_"),
    [([], "", ""), (["a"], "a", "a"), (["a", "b"], "a and b", "a or b")],
    ids=["none", "one", "two"],
)
def test_a_short_list_needs_no_comma(words: list[str], and_: str, or_: str) -> None:
    assert (locales.and_list(words), locales.or_list(words)) == (and_, or_)


def test_a_number_has_the_languages_mark_before_its_decimals() -> None:
    assert [locales.figures(number) for number in (9.5, 1200, 60.96)] == ["9.5", "1200", "60.96"]
    with in_language("de-DE"):
        assert locales.figures(9.5) == "9,5"


def test_weeks_and_parts_of_the_year_are_put_together_in_the_languages_own_sentences() -> None:
    with in_language("de-AT"):
        assert week_words(IsoWeek(2026, 40)) == "Woche 40, 28. September bis 4. Oktober 2026"
        assert spans_of(frozenset(range(1, 28))) == "Anfang Jänner bis Anfang Juli"
    assert week_words(IsoWeek(2026, 40)) == "week 40, 28 September to 4 October 2026"


@pytest.mark.parametrize(
    ("tag", "hour", "short_day", "weight"),
    [
        ("en-IE", "06:30", "Wed 16", "9.0"),
        ("en-US", "06:30", "16 Wed", "9.0"),
        ("de-DE", "06:30", "Mi., 16.", "9,0"),
        ("es-ES", "6:30", "mié 16", "9,0"),
    ],
)
def test_an_hour_and_a_measure_are_written_as_the_language_writes_them(
    tag: str, hour: str, short_day: str, weight: str
) -> None:
    with in_language(tag):
        assert locales.clock_words(time(6, 30)) == hour
        assert locales.clock_words(datetime(2026, 9, 16, 6, 30)) == hour
        assert locales.weekday_and_number(WEDNESDAY) == short_day
        assert locales.rounded(9, 1) == weight
