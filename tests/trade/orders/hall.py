"""A small studio with orders: a jar that changes with the year, and a hall it is sent to."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import Any

from corymb.studio.models import Order, Recipe, StandingOrder, Stem
from corymb.studio.studio import Studio
from corymb.trade.orders.cut_days import CutDay
from tests.trade.making import recipe, stem, variant
from tests.trade.money.figures import money
from tests.trade.season.studio import small_studio

BASE = {
    "name": "The hall",
    "client": {"name": "The hall"},
    "where": {"place": "the hall", "setting": "indoors", "light": "daylight"},
    "handover": "delivery",
}


def far(name: str, season: str, colour: str, **keys: Any) -> Stem:
    """A stem that nothing stands in for, 0.40 each."""
    return stem(name, in_season=season, colours=[f"own {colour} 100 %"], **keys)


STEMS = (
    far("rose", "W20 - W35", "f2e6d8", vase_life="4-6 days"),
    far("blush", "W20 - W40", "f0e2d6"),
    far("aster", "W34 - W42", "6f5fa8"),
    far("holly", "all year", "1d3b23", vase_life="14 days"),
    far("poppy", "12 June - 19 June", "c4302b"),  # Thursdays of a common year: touch and go
)

JAR = recipe(
    "jar",
    stems=["4 rose, light, essential", "2 holly, depth, essential"],
    variants={
        "late": variant(name="Late", swap=["4 rose -> 5 aster"]),
        "draft": variant(name="Draft", swap=["4 rose -> 4 holly, light"], draft="yes"),
    },
    sizes={"small": "0.5"},
)
LOOSE = recipe("loose", stems=["4 rose, light", "6 holly, depth, essential"])
BOWL = recipe("bowl", stems=["6 holly, depth, essential"])
POPPIES = recipe("poppies", stems=["6 poppy, accent, essential"])
RECIPES = (JAR, LOOSE, BOWL, POPPIES)


def order(known_as: str, day: str, *lines: str, **keys: Any) -> Order:
    """An order of the hall's for a day."""
    own = {key.replace("_", " "): value for key, value in keys.items()}
    data = {**BASE, "date": day, "lines": list(lines), **own}
    return Order.model_validate(data).with_id(known_as)


def standing(known_as: str, **keys: Any) -> StandingOrder:
    """The hall's standing order, on Tuesdays of 2026."""
    own = {key.rstrip("_").replace("_", " "): value for key, value in keys.items()}
    days = {"repeats": "weekly on Tuesday", "from": "2026-01-06", "until": "2026-12-29"}
    return StandingOrder.model_validate({**BASE, **days, **own}).with_id(known_as)


def studio(*orders: Order | StandingOrder, recipes: tuple[Recipe, ...] = RECIPES) -> Studio:
    """A studio with these orders, and money in round figures."""
    read = small_studio(*STEMS, *recipes)
    return replace(
        read,
        house=read.house.model_copy(update={"money": money()}),
        orders={each.id: each for each in orders if isinstance(each, Order)},
        standing_orders={each.id: each for each in orders if isinstance(each, StandingOrder)},
    )


def missing(day: CutDay) -> dict[str, int]:
    """How many stems the pieces of a cutting day lack, by stem, without those from the mix."""
    counts: Counter[str] = Counter()
    for each in day.plan.filled:
        counts[each.stem] += each.short
    return dict(+counts)
