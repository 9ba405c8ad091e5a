"""What pages show of light: an arrangement's switch of lights, and an order's own hours."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Fact, Link, RoleShare


@dataclass(frozen=True)
class LightView:
    """One light that a look can be shown in."""

    id: str  # 'candle', as it stands in the page's address
    name: str  # 'Candle'
    words: str  # 'As it looks by candlelight.'
    colours: tuple[str, ...]  # those of the colour band in that light, in the band's order


@dataclass(frozen=True)
class LightSwitch:
    """The lights to choose from, that of the page as it comes first."""

    lights: tuple[LightView, ...]
    drawn_in: str  # href of the table of the drawing's colours in the others
    note: str  # that it is indicative


@dataclass(frozen=True)
class LookInLight:
    """A look of an order in one of its lights."""

    look: Link
    band: tuple[RoleShare, ...]
    lost: str  # what gets lost, and which end to strengthen


@dataclass(frozen=True)
class SpellInLight:
    """A part of an order's hours, and how its looks do in the light there is then."""

    hours: str  # '18:40 to 19:35'
    light: str  # 'Low sun'
    words: str  # 'The sun is low and warm. It is the golden hour.'
    looks: tuple[LookInLight, ...]


@dataclass(frozen=True)
class OrderLightView:
    """The light of an order's hours, from the first of them to the last."""

    sun: tuple[Fact, ...]  # sunrise, sunset and the golden hours of the day; none by lamps indoors
    by_day: tuple[LookInLight, ...]  # the looks as written, in daylight; nothing is lost there
    spells: tuple[SpellInLight, ...]
    notes: tuple[str, ...]
