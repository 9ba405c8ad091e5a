"""In what light are an order's flowers looked at, and how do they do in it?

Hour by hour from its first to its last, each look as it looks then, and what gets lost of it.
"""

from __future__ import annotations

from datetime import datetime

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import and_list
from corymb.trade.colour.areas import colour_areas
from corymb.trade.light.lights import Light
from corymb.trade.light.lost import lost_in
from corymb.trade.light.seen import INDICATIVE
from corymb.trade.light.sun import Site, SunDay, sun_day
from corymb.trade.light.which_light import MIDDAY, Occasion, Spell, spells
from corymb.trade.looks import Look
from corymb.trade.orders.due import Due
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.bands import band_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.light_switch import band_in
from corymb.views.compose.orders.when import clock_span, hours_words
from corymb.views.compose.plants import plant_words
from corymb.views.light import LookInLight, OrderLightView, SpellInLight
from corymb.views.pieces import Fact, Link

CLEAR_SKY = noted("A clear sky is taken, at the studio's own place.")


def order_light(catalogue: Catalogue, due: Due) -> OrderLightView:
    """The light of an order on its day, at the studio's own place."""
    site = Site.of(catalogue.studio.house.place)
    looks = tuple({line.piece.look.id: line.piece.look for line in due.lines}.values())
    return OrderLightView(
        sun=_sun(sun_day(site, due.day)) if _by_the_sun(due) else (),
        by_day=tuple(
            LookInLight(_link(catalogue, look), band_of(catalogue, look), "") for look in looks
        ),
        spells=tuple(
            _spell(catalogue, spell, looks)
            for spell in spells(Occasion.of(due.order, due.day, site))
        ),
        notes=_notes(due),
    )


def _spell(catalogue: Catalogue, spell: Spell, looks: tuple[Look, ...]) -> SpellInLight:
    name = _(spell.light.name)
    return SpellInLight(
        hours=clock_span(spell.start, spell.end),
        light=f"{name[0].upper()}{name[1:]}",
        words=spell.words,
        looks=tuple(_in_light(catalogue, look, spell.light) for look in looks),
    )


def _in_light(catalogue: Catalogue, look: Look, light: Light) -> LookInLight:
    called = {line.stem: plant_words(catalogue.stem(line.stem)) for line in look.lines}
    lost = lost_in(colour_areas(look.lines, catalogue.studio.stems), light, called)
    return LookInLight(
        _link(catalogue, look),
        band_in(band_of(catalogue, look), light),
        lost.words,
    )


def _link(catalogue: Catalogue, look: Look) -> Link:
    return Link(look_name(catalogue, look), addresses.of_look(look))


def _by_the_sun(due: Due) -> bool:
    """Whether the sky has a part in it at all: by candles or lamps indoors it has none."""
    where = due.order.where
    return where.setting != "indoors" or where.light == "daylight"


def _sun(day: SunDay) -> tuple[Fact, ...]:
    """Sunrise, sunset and the golden hours; what is out of the ordinary instead."""
    if day.words:
        return (Fact(day.words, _("the sun")),)
    golden = [clock_span(start, end) for start, end in day.golden]
    facts = [
        Fact(_clock(day.sunrise), _("sunrise")),
        Fact(_clock(day.sunset), _("sunset")),
        Fact(and_list(golden), ngettext("golden hour", "golden hours", len(golden))),
    ]
    return tuple(fact for fact in facts if fact.value)


def _clock(moment: datetime | None) -> str:
    return f"{moment:%H:%M}" if moment else ""


def _notes(due: Due) -> tuple[str, ...]:
    """What is taken for granted here."""
    notes = [f"{_(INDICATIVE)} {_(CLEAR_SKY)}" if _by_the_sun(due) else _(INDICATIVE)]
    if due.order.hours is None:
        taken = _("No hours are written in the order: {hours} is taken.")
        notes.append(taken.format(hours=hours_words(MIDDAY)))
    return tuple(notes)
