"""German as it comes out: sentences as pages have them, around the studio's own words and figures.

Whether each message is there and keeps what varies is asked of every language elsewhere.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, datetime
from decimal import Decimal
from functools import cache
from html import unescape

import pytest
from babel.messages.pofile import read_po

from corymb.language import gettext as _
from corymb.language import in_language, ngettext
from corymb.language.lengths import length_in
from corymb.language.locales import and_list
from corymb.language.messages import FOLDER
from corymb.site.render import render
from corymb.studio.models import StudioFile
from corymb.studio.values.dates import IsoWeek
from corymb.studio.values.time import DayRange
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import days_words, time_words
from corymb.views.compose.orders.cutting import cut_list_view
from corymb.views.compose.orders.when import clock_span, day_in_full, days_away
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.site_frame import site_frame
from corymb.views.compose.swaps import swap_view
from corymb.views.compose.week_words import week_third, week_words
from corymb.views.compose.wording import money, percent, spans_of
from corymb.views.frame import PageFrame
from corymb.views.pieces import Audience
from tests.views.making import catalogue_of, demo, swap

GERMAN = "de-DE"
WEDDING = date(2026, 9, 19)
TAG = re.compile(r"<[^>]*>")
PAGE = PageFrame("arrangements/here.html", "", "arrangements", "", "")


@pytest.fixture(autouse=True)
def _german() -> Iterator[None]:
    with in_language(GERMAN):
        yield


@cache
def german(audience: Audience) -> Catalogue:
    """The demo, had its studio been a German one."""
    house = demo().house.model_copy(update={"language": GERMAN})
    return catalogue_of(replace(demo(), house=house), audience)


def house() -> StudioFile:
    return german("clients").studio.house


def stems(number: int) -> str:
    return ngettext("{number} stem", "{number} stems", number).format(number=number)


def missing(number: int) -> str:
    told = ngettext("{number} stem is missing", "{number} stems are missing", number)
    return told.format(number=number)


def of_a_day(day: date) -> str:
    """A day within a sentence, behind a word that goes before it."""
    return _("Cut on {day}").format(day=day_in_full(day))


SAID: dict[str, Callable[[], str]] = {
    "1 Stiel": lambda: stems(1),
    "2 Stiele": lambda: stems(2),
    "1 Stiel fehlt": lambda: missing(1),
    "20 Stiele fehlen": lambda: missing(20),
    "Rose, Wicke und Farn": lambda: and_list(["Rose", "Wicke", "Farn"]),
    "Samstag, 19. September 2026": lambda: day_in_full(WEDDING),
    "Zu schneiden am Samstag, 19. September 2026": lambda: of_a_day(WEDDING),
    "Woche 38, 14. bis 20. September 2026": lambda: week_words(IsoWeek.of(WEDDING)),
    "Mitte September 2026": lambda: week_third(IsoWeek.of(WEDDING)),
    "Anfang bis Ende Juni": lambda: spans_of(frozenset(range(23, 27))),
    "das ganze Jahr": lambda: spans_of(frozenset(range(1, 53))),
    "vor 9 Wochen": lambda: days_away(WEDDING, date(2026, 11, 25)),
    "in 2 Tagen": lambda: days_away(WEDDING, date(2026, 9, 17)),
    "17:30 bis 23:00 Uhr": lambda: clock_span(
        datetime(2026, 9, 19, 17, 30), datetime(2026, 9, 19, 23)
    ),
    "28 €": lambda: money(Decimal(28), house()),
    "1,20 €": lambda: money(Decimal("1.2"), house()),
    "13,5 %": lambda: percent(Decimal("0.135"), house()),
    "7,5 cm": lambda: length_in("", 7.5),
    "4 Std. 5 min": lambda: time_words(245),
    "5-7 Tage": lambda: days_words(DayRange(5, 7)),
    "5 Cosmos (white) anstelle von 3 Dahlia (shell)": lambda: (
        swap_view(german("staff"), swap("dahlia-shell", "cosmos-white")).words
    ),
}


@pytest.mark.parametrize("words", SAID)
def test_it_is_said_in_german(words: str) -> None:
    assert SAID[words]().replace("\u00a0", " ") == words


@cache
def page(name: str) -> str:
    """A page as the browser gets it."""
    audience: Audience = "staff" if name == "a cut list" else "clients"
    catalogue = german(audience)
    view: object = recipe_view(catalogue, catalogue.looks["hedgerow-jar"][""])
    if name == "a cut list":
        view = cut_list_view(catalogue, catalogue.cut_days[0])
    frame = replace(PAGE, template="cut.html" if name == "a cut list" else "recipe.html")
    return render(site_frame(catalogue, "/"), frame, view).decode()


def text_of(html: str) -> str:
    """What is read of a page, its spaces alike."""
    return " ".join(unescape(TAG.sub(" ", html)).replace("\u00a0", " ").split())


@pytest.mark.parametrize(
    ("name", "sentences"),
    [
        (
            "an arrangement",
            (
                "Wann wir es machen können",
                "Mitte Juli bis Ende August.",
                "Mit der Variante „When the hay is down“",
                "Richtpreis ab 28 €",
                "Marjoram und Apple mint außer Reichweite stellen.",
                "Tiefe, Licht, Akzent",
            ),
        ),
        ("a cut list", ("Schnittliste", "Stiele zu schneiden", "In der Reihenfolge des Rundgangs")),
    ],
)
def test_a_page_is_german_and_says_so(name: str, sentences: tuple[str, ...]) -> None:
    html = page(name)
    assert '<html lang="de-DE"' in html
    assert [each for each in sentences if each not in text_of(html)] == []


def messages() -> Iterator[str]:
    """Everything that is said in German."""
    with (FOLDER / "de.po").open("rb") as written:
        for message in read_po(written, locale="de"):
            if message.id:
                said = message.string
                yield from (said,) if isinstance(said, str) else said or ()


def test_german_quotation_marks_come_in_pairs_and_end_no_attribute() -> None:
    """A straight one in a label would end it; those of tags are meant to."""
    for said in messages():
        bare = TAG.sub("", said)
        assert not set(bare) & set('"‘”«»'), said
        assert bare.count("„") == bare.count("“"), said
