"""What a hotel gets, visit after visit."""

from __future__ import annotations

from datetime import date
from itertools import pairwise
from typing import Any

import pytest

from corymb.studio.models import Recipe, StandingOrder, Stem, Style
from corymb.trade.orders.laid_out import LaidOut, laid_out, thin_weeks
from corymb.trade.season.beds import Beds
from corymb.trade.season.makeable import Makeable
from corymb.trade.swaps.limits import SwapLimits
from tests.trade.making import recipe, stem, variant

STYLE = Style.model_validate(
    {
        "name": "Standing piece",
        "plural": "Standing pieces",
        "about": "Tall.",
        "place": "standing",
        "stem length": "20-120 cm",
        "heaviest stem": "200 g",
    }
).with_id("standing-piece")

ORDER = {
    "name": "The hall",
    "client": {"name": "The hall"},
    "repeats": "weekly on Tuesday",
    "from": "2026-01-06",
    "until": "2026-12-29",
    "where": {"place": "the hall", "setting": "indoors", "light": "daylight"},
    "handover": "delivery",
}


def order(*rotation: str, **keys: Any) -> StandingOrder:
    return StandingOrder.model_validate({**ORDER, "rotation": list(rotation), **keys})


def far(name: str, season: str, colour: str) -> Stem:
    """A stem that nothing stands in for."""
    return stem(name, in_season=season, colours=[f"own {colour} 100 %"])


STEMS = {
    "holly": far("holly", "all year", "1d3b23"),
    "quince": far("quince", "March - April", "c4302b"),
    "rose": far("rose", "June - August", "f2e6d8"),
    "aster": far("aster", "September", "6f5fa8"),
}


def one(name: str, *stems: str, **keys: Any) -> Recipe:
    return recipe(name, stems=[f"5 {each}, light, essential" for each in stems], **keys)


WINTER = one("winter", "holly", variants={"quince": variant(add=["3 quince, accent, essential"])})
SUMMER = one("summer", "rose", "holly")
AUTUMN = one("autumn", "aster")


def lay(
    hall: StandingOrder, *recipes: Recipe, until: str = "2026-12-31", **sent: str
) -> list[LaidOut]:
    by_id = {each.id: each for each in recipes}
    styles = dict.fromkeys(by_id, STYLE)
    makeable = Makeable(Beds(STEMS), STEMS, styles, SwapLimits())
    really = {date.fromisoformat(day.replace("_", "-")[1:]): look for day, look in sent.items()}
    return list(laid_out(hall, date.fromisoformat(until), by_id, makeable, really))


def looks(laid: list[LaidOut], first: str, last: str) -> list[str]:
    days = date.fromisoformat(first), date.fromisoformat(last)
    return [each.best.look.id for each in laid if days[0] <= each.visit.day <= days[1]]


def test_the_same_is_never_sent_twice_running_where_anything_else_can_be_made() -> None:
    laid = lay(order("winter", "summer", "autumn"), WINTER, SUMMER, AUTUMN)
    for before, after in pairwise(laid):
        assert before.best.look.id != after.best.look.id or after.choices == 1


def test_what_stands_alone_is_sent_again_and_said_to_be_thin() -> None:
    laid = lay(order("winter", "summer", "autumn"), WINTER, SUMMER, AUTUMN)
    assert set(looks(laid, "2026-01-06", "2026-02-17")) == {"winter"}
    assert {each.thin for each in laid if each.visit.day < date(2026, 2, 10)} == {"one"}
    assert laid[1].since == 1


def test_two_that_stand_together_are_sent_by_turns() -> None:
    laid = lay(order("winter", "summer", "autumn"), WINTER, SUMMER, AUTUMN)
    july = looks(laid, "2026-06-30", "2026-07-21")
    assert july in (["summer", "winter"] * 2, ["winter", "summer"] * 2)


def test_every_visit_of_the_year_is_laid_out_but_those_skipped() -> None:
    hall = order("winter", "summer", skip=["2026-08-04"], moved={"2026-12-22": "2026-12-23"})
    days = [each.visit.day for each in lay(hall, WINTER, SUMMER)]
    assert len(days) == 51
    assert date(2026, 8, 4) not in days and date(2026, 12, 23) in days


def test_a_week_in_which_nothing_stands_is_thin_and_still_gets_a_look() -> None:
    laid = lay(order("summer", "autumn"), SUMMER, AUTUMN)
    january = laid[0]
    assert (january.thin, january.choices, january.best.state) == ("nothing", 0, "none")
    assert january in thin_weeks(laid)


def test_what_was_really_sent_counts() -> None:
    laid = lay(
        order("winter", "summer"), WINTER, SUMMER, d2026_06_30="summer", d2026_07_07="summer"
    )
    sent = looks(laid, "2026-06-30", "2026-07-14")
    assert sent == ["summer", "summer", "winter"]


def test_what_was_sent_before_the_first_visit_counts_too() -> None:
    hall = order("winter", "summer", **{"from": "2026-07-07"})
    assert looks(lay(hall, WINTER, SUMMER), "2026-07-07", "2026-07-07") == ["winter"]
    laid = lay(hall, WINTER, SUMMER, d2026_06_30="winter")
    assert looks(laid, "2026-07-07", "2026-07-07") == ["summer"]


@pytest.mark.parametrize("drafted", ["recipe", "variant"])
def test_a_draft_is_never_sent(drafted: str) -> None:
    tried = one(
        "winter", "holly", variants={"quince": variant(add=["3 quince, accent"], draft="yes")}
    )
    also = one("summer", "rose", draft="yes")
    used = [tried, SUMMER] if drafted == "variant" else [WINTER, also]
    sent = {each.best.look.id for each in lay(order("winter", "summer"), *used)}
    assert ("winter--quince" if drafted == "variant" else "summer") not in sent
