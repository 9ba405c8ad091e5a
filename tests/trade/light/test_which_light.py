"""From when and where flowers are looked at to the lights of those hours."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise

import pytest

from corymb.studio.values.time import ClockSpan
from corymb.trade.light.sun import Site, sun_day
from corymb.trade.light.which_light import Occasion, spells
from tests.trade.colour.mixes import demo

DUNMALLOW = Site(52.3, -7.1, "Europe/Dublin")
TROMSO = Site(69.649, 18.956, "Europe/Oslo")
SEPTEMBER, JUNE, DECEMBER = date(2026, 9, 19), date(2026, 6, 20), date(2026, 12, 19)

EVENING = ClockSpan(time(17, 30), time(23))
LUNCH = ClockSpan(time(12), time(15))
NIGHT = ClockSpan(time(20), time(2))

KINDS: dict[str, tuple[Site, date, ClockSpan | None, str, str, list[str]]] = {
    "indoors by candle": (DUNMALLOW, SEPTEMBER, EVENING, "indoors", "candle", ["candle"]),
    "indoors by lamps": (DUNMALLOW, JUNE, LUNCH, "indoors", "cool lamps", ["cool lamps"]),
    "indoors by daylight": (DUNMALLOW, JUNE, LUNCH, "indoors", "daylight", ["window"]),
    "indoors by daylight into the night": (
        DUNMALLOW, SEPTEMBER, EVENING, "indoors", "daylight", ["window", "dusk", "candle"],
    ),
    "outdoors at lunch in June": (DUNMALLOW, JUNE, LUNCH, "outdoors", "daylight", ["noon"]),
    "outdoors on an evening in September": (
        DUNMALLOW, SEPTEMBER, EVENING, "outdoors", "daylight",
        ["noon", "low sun", "dusk", "candle"],
    ),
    "outdoors with candles lit once the sun is down": (
        DUNMALLOW, SEPTEMBER, EVENING, "outdoors", "candle", ["noon", "low sun", "candle"],
    ),
    "under canvas with lamps": (
        DUNMALLOW, SEPTEMBER, EVENING, "under canvas", "warm lamps", ["canvas", "warm lamps"],
    ),
    "outdoors at lunch in December": (
        DUNMALLOW, DECEMBER, LUNCH, "outdoors", "daylight", ["noon", "low sun"],
    ),
    "outdoors through a summer's night": (
        DUNMALLOW, JUNE, NIGHT, "outdoors", "daylight", ["noon", "low sun", "dusk", "candle"],
    ),
    "no hours told": (DUNMALLOW, SEPTEMBER, None, "outdoors", "daylight", ["noon"]),
    "where the sun doesn't set": (TROMSO, JUNE, NIGHT, "outdoors", "daylight", ["noon", "low sun"]),
    "where the sun doesn't rise": (
        TROMSO, DECEMBER, LUNCH, "outdoors", "daylight", ["dusk", "candle"],
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    ("site", "day", "hours", "setting", "light", "told"), KINDS.values(), ids=KINDS
)
def test_the_lights_of_an_occasion_follow_the_sun_and_what_is_lit(
    site: Site, day: date, hours: ClockSpan | None, setting: str, light: str, told: list[str]
) -> None:
    found = spells(Occasion(site, day, hours, setting, light))
    assert [spell.light.kind for spell in found] == told


@pytest.mark.parametrize("hours", [EVENING, LUNCH, NIGHT, ClockSpan(time(12), time(12, 3))])
def test_spells_follow_each_other_through_the_hours_without_a_gap(hours: ClockSpan) -> None:
    found = spells(Occasion(DUNMALLOW, SEPTEMBER, hours, "outdoors", "daylight"))
    assert found[0].start.time() == hours.start
    for one, next_ in pairwise(found):
        assert one.end == next_.start
    length = found[-1].end - found[0].start
    assert abs(length - timedelta(minutes=hours.minutes)) < timedelta(minutes=5)


def test_the_low_sun_s_light_ends_when_the_sun_sets() -> None:
    found = spells(Occasion(DUNMALLOW, SEPTEMBER, EVENING, "outdoors", "daylight"))
    low = next(spell for spell in found if spell.light.kind == "low sun")
    sunset = sun_day(DUNMALLOW, SEPTEMBER).sunset
    assert sunset and abs(low.end - sunset) <= timedelta(minutes=5)
    assert low.golden and low.words == "The sun is low and warm. It is the golden hour."


WORDS = {
    "a high sun": (
        JUNE, LUNCH, "outdoors", "daylight",
        "The sun stands up to 61° high: hard light, deep shadows.",
    ),
    "a candle": (SEPTEMBER, EVENING, "indoors", "candle", "Indoors, by candlelight."),
    "a window": (
        JUNE, LUNCH, "indoors", "daylight",
        "Indoors, by daylight from a window: cool and even.",
    ),
    "canvas": (
        JUNE, LUNCH, "under canvas", "daylight",
        "Under canvas by day: soft and even, a little warm.",
    ),
    "a dark evening": (
        DECEMBER, ClockSpan(time(19), time(22)), "outdoors", "daylight",
        "It is dark: ask what is lit. Candles are taken here.",
    ),
    "lamps outside": (
        DECEMBER, ClockSpan(time(19), time(22)), "outdoors", "warm lamps",
        "The sun is down: by warm lamps.",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("day", "hours", "setting", "light", "words"), WORDS.values(), ids=WORDS)
def test_a_light_is_told_in_a_sentence(
    day: date, hours: ClockSpan, setting: str, light: str, words: str
) -> None:
    assert spells(Occasion(DUNMALLOW, day, hours, setting, light))[0].words == words


def test_the_night_the_clocks_go_back_is_an_hour_longer() -> None:
    night = Occasion(DUNMALLOW, date(2026, 10, 24), NIGHT, "outdoors", "daylight")
    last = spells(night)[-1]
    assert f"{last.end:%d %H:%M}" == "25 02:00"
    assert last.end.astimezone(UTC) == datetime(2026, 10, 25, 2, tzinfo=UTC)


def test_every_order_of_the_demo_has_its_lights() -> None:
    studio, _ = demo()
    site = Site.of(studio.house.place)
    for order in studio.orders.values():
        assert spells(Occasion.of(order, order.date, site)), order.id
    for standing in studio.standing_orders.values():
        assert spells(Occasion.of(standing, SEPTEMBER, site)), standing.id
