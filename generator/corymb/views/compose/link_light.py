"""In what light is a style link's look seen on its day, in a client's words?

The page comes in daylight, as colours were written down. Every other light of the hours is shown
beside it, the two that last longest where there are more.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import timedelta

from corymb.language import gettext as _
from corymb.language import noted
from corymb.trade.light.lights import Light
from corymb.trade.light.which_light import Spell
from corymb.views.compose.orders.when import clock_span

MOST = 2
AS_WRITTEN = ("noon", "window", "canvas")
"""Lights in which colours are as they were written down, near enough for a page."""

SAID = {
    "noon": noted("in full daylight"),
    "low sun": noted("in low, warm sun"),
    "window": noted("by daylight from the windows"),
    "canvas": noted("by daylight, under canvas"),
    "dusk": noted("at dusk"),
    "candle": noted("by candlelight"),
    "warm lamps": noted("by warm lamps"),
    "cool lamps": noted("by cool lamps"),
}
NAMED = {
    "low sun": noted("Low sun"),
    "dusk": noted("Dusk"),
    "candle": noted("Candlelight"),
    "warm lamps": noted("Warm lamps"),
    "cool lamps": noted("Cool lamps"),
}


@dataclass(frozen=True)
class OtherLight:
    """A light of the hours in which colours look otherwise than by day."""

    id: str  # 'low-sun', as it stands in a picture's address
    light: Light

    @property
    def name(self) -> str:
        """`Candlelight`."""
        return _(NAMED[self.light.kind])


def other_lights(spells: Iterable[Spell]) -> tuple[OtherLight, ...]:
    """The lights to draw the looks in beside daylight, in the order in which they come."""
    lasting: dict[str, timedelta] = {}
    lights: dict[str, Light] = {}
    for spell in spells:
        kind = spell.light.kind
        if kind not in AS_WRITTEN:
            lasting[kind] = lasting.get(kind, timedelta()) + (spell.end - spell.start)
            lights.setdefault(kind, spell.light)
    longest = sorted(lasting, key=lambda kind: -lasting[kind])[:MOST]
    return tuple(
        OtherLight(kind.replace(" ", "-"), lights[kind]) for kind in lights if kind in longest
    )


def light_words(spells: Iterable[Spell]) -> tuple[str, ...]:
    """Hour by hour: `18:40 to 19:35: in low, warm sun`."""
    return tuple(
        _("{hours}: {light}").format(
            hours=clock_span(spell.start, spell.end), light=_(SAID[spell.light.kind])
        )
        for spell in spells
    )
