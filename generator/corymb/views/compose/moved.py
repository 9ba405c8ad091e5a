"""How far are the book's dates moved for the studio's place, which way, and why?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.models import StudioFile
from corymb.studio.saying import and_list, counted
from corymb.trade.season.hopkins import OUT_OF_DEPTH, Shift

NOTICED = 0.5  # days; less changes no date

LATER = "later in spring, earlier in autumn"
EARLIER = "earlier in spring, later in autumn"


def moved_words(house: StudioFile, shift: Shift) -> str:
    """`moved by up to 4 days for Dunmallow, 1 degree further north: later in spring, ...`.

    Empty where the book's dates hold good as they are.
    """
    by = list(_by(shift))
    if not by:
        return ""
    moved = f"moved by {and_list(by)} for {house.place.name}"
    if not _is_noticed(shift):
        return moved
    why = f", {and_list(_ways(shift))}" if [*_ways(shift)] else ""
    return f"{moved}{why}: {LATER if shift.days > 0 else EARLIER}"


def doubt_words(shift: Shift) -> str:
    """What speaks against it where the law is stretched too far; else empty."""
    if not shift.stretched:
        return ""
    return f"The law is out of its depth here: {OUT_OF_DEPTH}. So nothing is called sure."


def _is_noticed(shift: Shift) -> bool:
    return abs(shift.days) >= NOTICED


def _by(shift: Shift) -> Iterator[str]:
    if shift.half_year:
        yield "half a year, to the other half of the world"
    if _is_noticed(shift):
        yield f"up to {counted(round(abs(shift.days)), 'day', 'days')}"


def _ways(shift: Shift) -> Iterator[str]:
    """`1.1 degrees further north`, `20 m lower`."""
    way = shift.way
    to_the_pole = "nearer the pole" if shift.half_year else _further(shift.south)
    to_the_equator = "nearer the equator" if shift.half_year else _further(not shift.south)
    yield from _degrees(way.polewards, to_the_pole, to_the_equator)
    yield from _degrees(way.eastwards, "further east", "further west")
    if round(abs(way.upwards)):
        yield f"{abs(way.upwards):.0f} m {'higher' if way.upwards > 0 else 'lower'}"


def _further(south: bool) -> str:
    return "further south" if south else "further north"


def _degrees(degrees: float, there: str, back: str) -> Iterator[str]:
    size = f"{abs(degrees):.1f}".removesuffix(".0")
    if size != "0":
        yield f"{size} degree{'' if size == '1' else 's'} {there if degrees > 0 else back}"
