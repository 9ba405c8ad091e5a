"""What an order's page says of the light of its hours."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from corymb.studio.values.time import parse_clock_span
from corymb.trade.light.seen import INDICATIVE
from corymb.trade.orders.due import Due
from corymb.views.compose.light_told import order_light
from tests.views.making import catalogue_of, demo

CATALOGUE = catalogue_of(demo(), "staff")
DAY = date(2026, 9, 19)
SUPPER = next(due for due in CATALOGUE.dues.between(DAY, DAY) if due.id == "barn-supper")


def placed(setting: str, light: str, hours: str | None = "17:30-23:00") -> Due:
    """The barn supper somewhere else, by another light, in other hours."""
    where = SUPPER.order.where.model_copy(update={"setting": setting, "light": light})
    span = parse_clock_span(hours) if hours else None
    order = SUPPER.order.model_copy(update={"where": where, "hours": span})
    return replace(SUPPER, order=order)


@pytest.mark.parametrize(
    ("setting", "light", "lights"),
    [
        ("indoors", "candle", ["Candlelight"]),
        ("indoors", "daylight", ["Daylight from a window", "Dusk", "Candlelight"]),
        ("outdoors", "candle", ["Full daylight", "Low sun", "Candlelight"]),
        ("outdoors", "daylight", ["Full daylight", "Low sun", "Dusk", "Candlelight"]),
        ("under canvas", "warm lamps", ["Daylight under canvas", "Warm lamps"]),
    ],
    ids=[
        "indoors by candle",
        "indoors by a window",
        "outdoors into the night",
        "outdoors",
        "under canvas",
    ],
)
def test_the_light_of_each_hour_is_told_in_order(
    setting: str, light: str, lights: list[str]
) -> None:
    spells = order_light(CATALOGUE, placed(setting, light)).spells
    assert [spell.light for spell in spells] == lights
    assert spells[0].hours.startswith("17:30 to ")
    assert spells[-1].hours.endswith(" to 23:00")


def test_the_golden_hour_of_the_day_is_told_with_sunrise_and_sunset() -> None:
    view = order_light(CATALOGUE, placed("outdoors", "candle"))
    assert [fact.label for fact in view.sun] == ["sunrise", "sunset", "golden hours"]
    assert any("golden hour" in spell.words for spell in view.spells)


def test_each_look_is_shown_once_by_day_and_in_each_light() -> None:
    view = order_light(CATALOGUE, SUPPER)
    names = [look.look.label for look in view.by_day]
    assert len(names) == len(set(names)) == len({line.piece.look.id for line in SUPPER.lines})
    for spell in view.spells:
        assert [look.look.label for look in spell.looks] == names
        for look, by_day in zip(spell.looks, view.by_day, strict=True):
            assert look.band != by_day.band


def test_what_candles_take_is_told_with_the_end_to_strengthen() -> None:
    (spell,) = order_light(CATALOGUE, SUPPER).spells
    assert all(look.lost.endswith(".") for look in spell.looks)
    own = [look.lost.partition("Strengthen the light end: more ")[2] for look in spell.looks]
    assert any(own)
    assert len(set(own)) > 1, "each look is told its own pale stems"
    assert not any(look.lost.startswith("Candlelight") for look in spell.looks)


def test_without_hours_it_says_which_are_taken() -> None:
    notes = order_light(CATALOGUE, placed("outdoors", "daylight", None)).notes
    assert notes[0].startswith(INDICATIVE)
    assert notes[1] == "No hours are written in the order: 12:00 to 15:00 is taken."
    assert len(order_light(CATALOGUE, SUPPER).notes) == 1


@pytest.mark.parametrize("light", ["candle", "warm lamps", "cool lamps"])
def test_by_candles_and_lamps_indoors_nothing_is_said_of_the_sun(light: str) -> None:
    view = order_light(CATALOGUE, placed("indoors", light))
    assert view.sun == ()
    assert view.notes == (INDICATIVE,)


def test_indoors_by_day_and_outdoors_a_clear_sky_is_taken() -> None:
    for setting, light in (("indoors", "daylight"), ("outdoors", "candle")):
        view = order_light(CATALOGUE, placed(setting, light))
        assert view.sun
        assert "A clear sky is taken" in view.notes[0]
