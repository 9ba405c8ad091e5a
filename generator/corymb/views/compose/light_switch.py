"""In which lights can an arrangement be looked at on its page, and how does it look there?

The page comes with the colours as they were written down, which are those of noon; another light
is shown when someone asks for it.
"""

from __future__ import annotations

from dataclasses import replace

from corymb.language import gettext as _
from corymb.language import noted
from corymb.trade.light.lights import SHOWN, Light
from corymb.trade.light.seen import INDICATIVE, seen
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.bands import band_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import trade_word
from corymb.views.light import LightSwitch, LightView
from corymb.views.pieces import RoleShare

NOON = "noon"

WORDS = {
    "low sun": noted("As it looks in low sun."),
    "candle": noted("As it looks by candlelight."),
}

OTHERS: dict[str, Light] = {
    light.kind.replace(" ", "-"): light for light in SHOWN if light.kind in WORDS
}
"""The lights to switch to, by the word for them in an address."""


def light_switch(catalogue: Catalogue, look: Look) -> LightSwitch:
    """Noon and the others, for a look."""
    band = band_of(catalogue, look)
    noon = LightView(NOON, _name(NOON), "", _colours(band))
    return LightSwitch(
        lights=(noon, *(_other(band, known_as) for known_as in OTHERS)),
        drawn_in=addresses.of_colours_in_light(look),
        note=_(INDICATIVE),
    )


def _other(band: tuple[RoleShare, ...], known_as: str) -> LightView:
    light = OTHERS[known_as]
    return LightView(
        id=known_as,
        name=_name(light.kind),
        words=_(WORDS[light.kind]),
        colours=_colours(band_in(band, light)),
    )


def band_in(band: tuple[RoleShare, ...], light: Light) -> tuple[RoleShare, ...]:
    """A colour band as it looks in a light: the same patches in other colours."""
    return tuple(
        replace(
            part,
            patches=tuple(replace(patch, hex=seen(patch.hex, light)) for patch in part.patches),
        )
        for part in band
    )


def _name(kind: str) -> str:
    """`Low sun`."""
    word = trade_word("light", kind)
    return f"{word[0].upper()}{word[1:]}"


def _colours(band: tuple[RoleShare, ...]) -> tuple[str, ...]:
    return tuple(patch.hex for part in band for patch in part.patches)
