"""Views say everything in the site's language: in one made up for it, no word of English is left.

Each message is set in brackets, ⟦stems⟧; what stands outside them must be the studio's own.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import fields, is_dataclass
from functools import cache
from gettext import NullTranslations

import pytest
from babel import Locale
from pydantic import BaseModel

from corymb.language import in_language
from corymb.language.locales import month_names
from corymb.language.messages import messages_of
from corymb.studio.studio import Studio
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.costs_table import costs_table
from corymb.views.compose.in_season import in_season_view
from corymb.views.compose.lists import not_found_view, style_view
from corymb.views.compose.orders.bench_sheets import bench_sheets_view
from corymb.views.compose.orders.collection import collection_view
from corymb.views.compose.orders.cuts import with_papers
from corymb.views.compose.orders.cutting import cut_list_view
from corymb.views.compose.orders.labels import labels_view
from corymb.views.compose.orders.listed import orders_view
from corymb.views.compose.orders.load_sheet import load_sheet_view
from corymb.views.compose.orders.order import order_view
from corymb.views.compose.orders.weeks import week_views
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.site_frame import site_frame
from corymb.views.compose.stems import stem_view
from corymb.views.compose.training.path import path_view
from corymb.views.compose.training.practice import practice_view
from corymb.views.compose.training.questions import questions_view
from corymb.views.compose.weeks_ahead import weeks_ahead_view
from corymb.views.compose.your_date import dated
from tests.views.making import catalogue_of, demo

BRACKETED = "eo"
"""No studio's language, and none that we have messages of: dates in it are English."""

KEYS = {
    "href", "id", "section", "state", "role", "use", "kind", "hex", "width", "style", "size",
    "language", "audience", "colour_words", "base_path", "email", "month", "drawn_in", "ask_href",
    "key", "path", "leads_to", "practice_href", "recipe_id",
}  # fmt: skip
"""Fields that scripts, styles, filters and addresses go by; templates say their words."""

UNITS = {"kg", "cm"}
WEEKDAYS = Locale("en").days["format"]["abbreviated"].values()
OF_THE_CALENDAR = {"and", *(name.casefold() for name in (*month_names(), *WEEKDAYS))}
"""What Unicode's CLDR says for us, in lists and dates."""
MESSAGE = re.compile(r"⟦[^⟦⟧]*⟧")
BETWEEN = re.compile(r"#[0-9a-f]{6}|[:;,()·×–]| - |\d+|[%€]")
WORD = re.compile(r"[^\W\d_]{2,}")


class Bracketed(NullTranslations):
    """Every message as it is, in brackets."""

    def gettext(self, message: str) -> str:
        return f"⟦{message}⟧"

    def ngettext(self, msgid1: str, msgid2: str, n: int) -> str:
        return f"⟦{msgid1 if n == 1 else msgid2}⟧"

    def pgettext(self, context: str, message: str) -> str:
        return f"⟦{message}⟧"


@pytest.fixture(autouse=True)
def _brackets(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    bracketed = Bracketed()
    monkeypatch.setattr(
        "corymb.language.speaking.messages_of",
        lambda tag: bracketed if tag == BRACKETED else messages_of(tag),
    )
    with in_language(BRACKETED):
        yield


VIEWS: dict[str, Callable[[Catalogue], object]] = {
    "an arrangement": lambda c: recipe_view(c, c.looks["hedgerow-jar"][""]),
    "a variant": lambda c: recipe_view(c, c.looks["hedgerow-jar"]["later"]),
    "a flower": lambda c: stem_view(c, c.stem("dahlia-shell")),
    "a flower of all year": lambda c: stem_view(c, c.stem("ivy-trail")),
    "a style": lambda c: style_view(c, c.studio.styles["posy"]),
    "a lost page": not_found_view,
    "the weeks ahead": weeks_ahead_view,
    "a recipe on a day": lambda c: dated(c, c.studio.recipes["rooks-wing-hand-tie"]),
    "the menu": lambda c: site_frame(c, "/"),
    "the costs": lambda c: costs_table(c).head,
    "the year": in_season_view,
    "the orders": orders_view,
    "an order": lambda c: order_view(c, with_papers(c)[0]),
    "a cut list": lambda c: cut_list_view(c, c.cut_days[0]),
    "bench sheets": lambda c: bench_sheets_view(c, with_papers(c)[0], {}),
    "labels": lambda c: labels_view(c, with_papers(c)[0], ""),
    "a load sheet": lambda c: load_sheet_view(c, with_papers(c)[0]),
    "a client's own sheet": lambda c: collection_view(c, with_papers(c)[0]),
    "the path of learning": path_view,
    "a look step by step": lambda c: practice_view(c, c.looks["hedgerow-jar"]["later"]),
    "questions": questions_view,
    "a week": lambda c: next(view for _, view in week_views(c)),
}


@pytest.mark.parametrize("view", VIEWS.values(), ids=VIEWS)
def test_a_view_says_nothing_in_english_alone(view: Callable[[Catalogue], object]) -> None:
    said = [text for text in texts(view(staffs())) if english_in(text)]
    assert said == []


@cache
def staffs() -> Catalogue:
    """What all of these views are made from, so that it is worked out once."""
    return catalogue_of(demo(), "staff")


def test_english_is_told_from_the_studios_own_words() -> None:
    assert english_in("3 stems") == ["stems"]
    assert (
        english_in("⟦With {number} ⟦{stem}⟧⟧: Hedgerow jar (Later in the year), 14 September") == []
    )
    assert english_in("Hedgerow jar and swaps") == ["Hedgerow jar and swaps"]


def texts(view: object, field: str = "") -> Iterator[str]:
    """Every text of a view that is for reading."""
    if field in KEYS:
        return
    if isinstance(view, str):
        yield view
    elif is_dataclass(view) and not isinstance(view, type):
        for each in fields(view):
            yield from texts(getattr(view, each.name), each.name)
    elif isinstance(view, tuple | list):
        for each in view:
            yield from texts(each)


def english_in(text: str) -> list[str]:
    """What is neither in brackets nor written by the studio."""
    while MESSAGE.search(text):
        text = MESSAGE.sub(",", text)
    parts = (part.strip(" .‘’\n") for part in BETWEEN.split(text))
    return [part for part in parts if WORD.search(part) and part.casefold() not in own_words()]


@cache
def own_words() -> frozenset[str]:
    """The texts of the studio, whole and in the parts that punctuation makes of them."""
    sundries = (each for recipe in demo().recipes.values() for each in recipe.sundries)
    found = {f"{each.unit} {each.name}".casefold() for each in sundries}
    found |= {*UNITS, *OF_THE_CALENDAR}
    for text in written(demo()):
        parts = BETWEEN.split(text) if "\n" not in text else ()  # pages of text stay whole
        found |= {part.strip(" .‘’\n").casefold() for part in (text, *parts)}
    return frozenset(found)


def written(studio: object) -> Iterator[str]:
    """Every text in a studio's files."""
    if isinstance(studio, str):
        yield studio
    elif isinstance(studio, Studio):
        yield from written([part for name, part in vars(studio).items() if name != "sources"])
    elif isinstance(studio, dict):
        yield from written([*studio.keys(), *studio.values()])
    elif isinstance(studio, BaseModel):
        yield from written([getattr(studio, name) for name in type(studio).model_fields])
    elif isinstance(studio, list | tuple | set | frozenset):
        for each in studio:
            yield from written(each)
    elif is_dataclass(studio) and not isinstance(studio, type):
        yield from written([getattr(studio, each.name) for each in fields(studio)])
