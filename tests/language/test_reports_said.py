"""What the terminal tells of a studio is in the studio's language, word for word."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from datetime import date
from functools import cache

import pytest

from corymb.cli import wrapping
from corymb.cli.colour_sheet import colour_sheet
from corymb.cli.cut_sheet import cut_sheet
from corymb.cli.learn_sheet import Learnt, learn_sheet
from corymb.cli.repeat_sheet import repeat_sheet
from corymb.cli.sheet import Asked, sheet
from corymb.cli.week_sheet import week_sheet
from corymb.cli.year_sheet import year_sheet
from corymb.trade.made_orders import learnt
from corymb.trade.orders.next_year import next_year
from corymb.trade.orders.repeated import Repeating
from corymb.trade.season.makeable import Makeable
from tests.language.test_every_word_said import MESSAGE, _brackets, english_in, own_words, staffs
from tests.views.making import demo

__all__ = ["_brackets"]


def _learnt() -> list[str]:
    found = (Learnt(*one) for one in learnt(demo().orders.values(), demo().recipes))
    return [line for each in found for line in list(learn_sheet(demo(), each))[1:]]


def _repeated(known_as: str, day: date) -> Iterable[str]:
    told = Repeating(demo(), Makeable.of(demo())).order(demo().orders[known_as], day)
    return repeat_sheet(demo(), told)


def _year() -> Iterable[str]:
    standing, makeable = demo().standing_orders["lantern-house"], Makeable.of(demo())
    told = next_year(demo(), makeable, standing, 2027, "lantern-house-2027")
    return year_sheet(demo(), makeable, standing, told)


JAR = "hedgerow-jar"
SHORT_DAY = re.compile(r"\d+ (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)\b")
"""A language that there is none of has English months."""

SHEETS: dict[str, Callable[[], Iterable[str]]] = {
    "a recipe": lambda: sheet(demo(), demo().recipes[JAR], Asked()),
    "a recipe's variant": lambda: sheet(demo(), demo().recipes[JAR], Asked("later", "small", 12)),
    "a recipe on a day": lambda: sheet(demo(), demo().recipes[JAR], Asked(day=date(2026, 10, 3))),
    "a week": lambda: week_sheet(staffs()),
    "a cut": lambda: cut_sheet(staffs(), staffs().cut_days[0]),
    "what is learnt": _learnt,
    "an order again": lambda: _repeated("barn-supper", date(2027, 9, 18)),
    "a standing order's year": _year,
    "a photo's colours": lambda: colour_sheet(
        demo(), "jug.jpg", (("#e8c2b4", 0.6), ("#00ff88", 0.4)), 15
    ),
}


@pytest.mark.parametrize("told", SHEETS.values(), ids=SHEETS)
def test_a_report_says_nothing_in_english_alone(
    told: Callable[[], Iterable[str]], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(wrapping, "WIDE", 10_000)
    said = [words for line in told() for words in _english_in(line)]
    assert said == []


def _english_in(line: str) -> Iterable[str]:
    """What isn't said nor the studio's own, nor to be pasted into a file of it."""
    if line == "stems:" or line.startswith("  - "):
        return []
    while MESSAGE.search(line):
        line = MESSAGE.sub(",", line)
    cells = re.split(r"  +", SHORT_DAY.sub("", line))
    found = [words for cell in cells for words in english_in(cell.removeprefix("- "))]
    sentences = (one for words in found for one in words.split(". "))
    return [one for one in sentences if one.casefold() not in own_sentences()]


@cache
def own_sentences() -> frozenset[str]:
    """What the studio wrote, sentence by sentence."""
    return frozenset(one.strip(" .") for text in own_words() for one in text.split(". "))
