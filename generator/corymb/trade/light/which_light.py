"""In which light, or lights, is an order looked at?

Indoors it is the light that the order names, for as long as it lasts; daylight indoors ends with
the day. Outdoors and under canvas the sun's course through the hours decides: high, low, gone
down, dark; then the light that the order names, or candles where it names daylight alone.
Clouds are not known months ahead, so a clear sky is taken. Indicative.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from itertools import groupby
from math import ceil
from zoneinfo import ZoneInfo

from corymb.language import gettext as _
from corymb.language import noted
from corymb.studio.models import Order, StandingOrder
from corymb.studio.values.time import ClockSpan
from corymb.trade.light.lights import (
    CANDLE,
    DUSK,
    LOW_UP_TO,
    NAMED,
    UNDER_CANVAS,
    WINDOW,
    Light,
    low_sun,
    noon,
)
from corymb.trade.light.sun import CIVIL, GOLDEN_FROM, GOLDEN_TO, RISE, Site, sun_at

STEP = timedelta(minutes=5)

HARD_FROM = 30.0
"""A sun from so many degrees on makes hard light."""

MIDDAY = ClockSpan(time(12), time(15))
"""Taken where an order says no hours."""


@dataclass(frozen=True)
class Occasion:
    """When, where and by what light flowers are looked at."""

    site: Site
    day: date
    hours: ClockSpan | None
    setting: str
    """`indoors`, `outdoors` or `under canvas`."""
    light: str
    """`daylight`, `candle`, `warm lamps` or `cool lamps`."""

    @classmethod
    def of(cls, order: Order | StandingOrder, day: date, site: Site) -> Occasion:
        """Of an order on a day; the order's place is taken to lie near the studio's."""
        return cls(site, day, order.hours, order.where.setting, order.where.light)


@dataclass(frozen=True)
class Spell:
    """A part of the hours, and its light."""

    start: datetime
    end: datetime
    light: Light
    golden: bool
    """Whether any of it lies in the golden hour."""
    words: str
    """What is said of it, in a sentence."""


@dataclass(frozen=True)
class _Moment:
    at: datetime
    kind: str
    height: float


def spells(occasion: Occasion) -> tuple[Spell, ...]:
    """The lights of the hours, in order; each lasts for some minutes at least."""
    moments = [_moment(occasion, at) for at in _moments(occasion)]
    groups = [list(group) for _kind_of, group in groupby(moments, key=lambda moment: moment.kind)]
    starts = [group[0].at for group in groups]
    after = (moments[-1].at.astimezone(UTC) + STEP).astimezone(moments[-1].at.tzinfo)
    ends = [*starts[1:], after]
    return tuple(_spell(occasion, group, end) for group, end in zip(groups, ends, strict=True))


def _moments(occasion: Occasion) -> Iterator[datetime]:
    """Every five minutes of the hours, by real time: clocks may change in the night."""
    hours = occasion.hours or MIDDAY
    zone = ZoneInfo(occasion.site.zone)
    last = occasion.day + timedelta(days=hours.overnight)
    start = datetime.combine(occasion.day, hours.start, tzinfo=zone).astimezone(UTC)
    end = datetime.combine(last, hours.end, tzinfo=zone).astimezone(UTC)
    for step in range(max(1, ceil((end - start) / STEP))):
        yield (start + step * STEP).astimezone(zone)


def _moment(occasion: Occasion, at: datetime) -> _Moment:
    height = sun_at(occasion.site, at).height
    return _Moment(at, _kind(occasion, height), height)


def _kind(occasion: Occasion, height: float) -> str:
    """The kind of light at one moment, by the sun's height."""
    if occasion.setting == "indoors":
        if occasion.light != "daylight":
            return occasion.light
        return "window" if height > RISE else "dusk" if height > CIVIL else "dark"
    if height > RISE:
        if occasion.setting == "under canvas":
            return "canvas"
        return "noon" if height > LOW_UP_TO else "low sun"
    if occasion.light != "daylight":
        return occasion.light
    return "dusk" if height > CIVIL else "dark"


def _spell(occasion: Occasion, group: list[_Moment], end: datetime) -> Spell:
    heights = [moment.height for moment in group]
    light = _light(group[0].kind, heights)
    golden = occasion.setting != "indoors" and any(GOLDEN_FROM < h < GOLDEN_TO for h in heights)
    words = _words(occasion, group[0].kind, heights, golden=golden)
    return Spell(group[0].at, end, light, golden, words)


def _light(kind: str, heights: list[float]) -> Light:
    """The light of a spell: of the highest sun at noon, of the middle height when it is low."""
    if kind == "noon":
        return noon(max(heights), noted("full daylight"))
    if kind == "low sun":
        return low_sun(sum(heights) / len(heights))
    known = {"window": WINDOW, "canvas": UNDER_CANVAS, "dusk": DUSK, "dark": CANDLE}
    return known[kind] if kind in known else NAMED[kind]


def _words(occasion: Occasion, kind: str, heights: list[float], *, golden: bool) -> str:
    if occasion.setting == "indoors":
        return _(_INDOORS[kind])
    if kind == "noon":
        hard = max(heights) >= HARD_FROM
        return _(_HARD if hard else _CLEAR).format(degrees=round(max(heights)))
    if golden and kind == "low sun":
        return _("The sun is low and warm. It is the golden hour.")
    return _(_OUTDOORS[kind])


_HARD = noted("The sun stands up to {degrees}° high: hard light, deep shadows.")
_CLEAR = noted("The sun stands up to {degrees}° high: clear light.")

_INDOORS = {
    "window": noted("Indoors, by daylight from a window: cool and even."),
    "dusk": noted("Indoors, and the daylight is going: ask what is lit."),
    "dark": noted("Indoors, and it is dark outside: ask what is lit. Candles are taken here."),
    "candle": noted("Indoors, by candlelight."),
    "warm lamps": noted("Indoors, by warm lamps."),
    "cool lamps": noted("Indoors, by cool lamps."),
}

_OUTDOORS = {
    "low sun": noted("The sun is low and warm."),
    "canvas": noted("Under canvas by day: soft and even, a little warm."),
    "dusk": noted("The sun is down and the sky still light: blue and dim."),
    "dark": noted("It is dark: ask what is lit. Candles are taken here."),
    "candle": noted("The sun is down: by candlelight."),
    "warm lamps": noted("The sun is down: by warm lamps."),
    "cool lamps": noted("The sun is down: by cool lamps."),
}
