"""How far are the book's dates moved for the studio's place, which way, and why?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list, figures
from corymb.studio.models import StudioFile
from corymb.trade.season.hopkins import OUT_OF_DEPTH, Shift

NOTICED = 0.5  # days; less changes no date


def moved_words(house: StudioFile, shift: Shift) -> str:
    """`moved by up to 4 days for Dunmallow, 1 degree further north: later in spring, ...`.

    Empty where the book's dates hold good as they are.
    """
    by = list(_by(shift))
    if not by:
        return ""
    put_in = {"days": and_list(by), "place": house.place.name, "where": and_list(_ways(shift))}
    return _moved(shift, by_place=bool(put_in["where"])).format(**put_in)


def _moved(shift: Shift, *, by_place: bool) -> str:
    if not _is_noticed(shift):
        return _("moved by {days} for {place}")
    if shift.days > 0 and by_place:
        return _("moved by {days} for {place}, {where}: later in spring, earlier in autumn")
    if shift.days > 0:
        return _("moved by {days} for {place}: later in spring, earlier in autumn")
    if by_place:
        return _("moved by {days} for {place}, {where}: earlier in spring, later in autumn")
    return _("moved by {days} for {place}: earlier in spring, later in autumn")


def doubt_words(shift: Shift) -> str:
    """What speaks against it where the law is stretched too far; else empty."""
    if not shift.stretched:
        return ""
    told = _("The law is out of its depth here: {why}. So nothing is called sure.")
    return told.format(why=_(OUT_OF_DEPTH))


def _is_noticed(shift: Shift) -> bool:
    return abs(shift.days) >= NOTICED


def _by(shift: Shift) -> Iterator[str]:
    if shift.half_year:
        yield _("half a year, to the other half of the world")
    if _is_noticed(shift):
        days = round(abs(shift.days))
        yield ngettext("up to {number} day", "up to {number} days", days).format(number=days)


def _ways(shift: Shift) -> Iterator[str]:
    """`1.1 degrees further north`, `20 m lower`."""
    way = shift.way
    if size := _size(way.polewards):
        yield _polewards(shift, size).format(number=figures(size))
    if size := _size(way.eastwards):
        yield _eastwards(way.eastwards > 0, size).format(number=figures(size))
    if metres := round(abs(way.upwards)):
        told = _("{number} m higher") if way.upwards > 0 else _("{number} m lower")
        yield told.format(number=metres)


def _size(degrees: float) -> float:
    return round(abs(degrees), 1)


def _polewards(shift: Shift, size: float) -> str:
    nearer, number = shift.way.polewards > 0, _plural(size)
    if shift.half_year and nearer:
        return ngettext(
            "{number} degree nearer the pole", "{number} degrees nearer the pole", number
        )
    if shift.half_year:
        return ngettext(
            "{number} degree nearer the equator", "{number} degrees nearer the equator", number
        )
    if shift.south == nearer:
        return ngettext("{number} degree further south", "{number} degrees further south", number)
    return ngettext("{number} degree further north", "{number} degrees further north", number)


def _eastwards(east: bool, size: float) -> str:
    number = _plural(size)
    if east:
        return ngettext("{number} degree further east", "{number} degrees further east", number)
    return ngettext("{number} degree further west", "{number} degrees further west", number)


def _plural(size: float) -> int:
    """Gettext counts in whole numbers; what isn't one is said as several."""
    return int(size) if size == int(size) else 2
