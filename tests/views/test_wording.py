"""How weeks, money and lists are said."""

from __future__ import annotations

from decimal import Decimal

import pytest

from corymb.studio.load import read_studio
from corymb.studio.models import StudioFile
from corymb.studio.values.money import PriceGuide
from corymb.trade.season.weeks import runs_of
from corymb.views.compose.wording import money, price_guide, sentence, spans_of
from tests.site.test_demo_pages import CONTENT

SPANS = {
    "one week": ({30}, "late July"),
    "a run": (set(range(28, 42)), "mid July to mid October"),
    "within a month": ({20, 21, 22}, "mid to late May"),
    "two runs": ({23, 24, 40}, "early to mid June and early October"),
    "over the new year": ({50, 51, 52, 1, 2}, "mid December to mid January"),
    "all year": (set(range(1, 53)), "all year"),
    "never": (set(), ""),
}


@pytest.mark.parametrize(("weeks", "words"), SPANS.values(), ids=SPANS)
def test_weeks_are_said_in_thirds_of_months(weeks: set[int], words: str) -> None:
    assert spans_of(frozenset(weeks)) == words


def test_runs_hold_every_week_once() -> None:
    weeks = {1, 2, 10, 11, 12, 30, 51, 52}
    runs = runs_of(weeks)
    assert runs == [(10, 12), (30, 30), (51, 2)]


@pytest.fixture(scope="module")
def house() -> StudioFile:
    studio, _ = read_studio(CONTENT)
    assert studio is not None
    return studio.house


# The forms of money are CLDR's for en-IE; a whole amount is written without its cents by the
# house's own choice.
MONEY = {"28": "€28", "1.20": "€1.20", "0.055": "€0.06", "0.045": "€0.05", "1234.5": "€1,234.50"}


@pytest.mark.parametrize(("amount", "written"), MONEY.items(), ids=MONEY)
def test_money_is_written_as_the_country_writes_it(
    house: StudioFile, amount: str, written: str
) -> None:
    assert money(Decimal(amount), house) == written


def test_a_price_guide_says_from_only_where_the_studio_did(house: StudioFile) -> None:
    assert price_guide(PriceGuide(Decimal(165), from_=True), house) == "from €165"
    assert price_guide(PriceGuide(Decimal(28)), house) == "€28"
    assert price_guide(None, house) == ""


def test_a_sentence_has_a_capital_and_a_full_stop() -> None:
    assert sentence("half open") == "Half open."
    assert sentence("Already whole.") == "Already whole."
    assert sentence("") == ""
