"""What does the load sheet of an order show: the floor, trip by trip, and how to load it?"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import rounded
from corymb.studio.models import StudioFile
from corymb.trade.load.lifting import lift_words
from corymb.trade.load.telling import trimming_words
from corymb.trade.load.trips import LoadSpace, Trip
from corymb.trade.orders.due import Due
from corymb.trade.orders.packed import Item, Packed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.lengths import length_words
from corymb.views.compose.orders.brief import brief_of
from corymb.views.compose.orders.cuts import packed_for
from corymb.views.compose.orders.labels import litres
from corymb.views.compose.orders.numbered import ranges
from corymb.views.compose.orders.packing import (
    head_of,
    load_view,
    order_link,
    what_stands,
)
from corymb.views.compose.orders.sheet_stems import sundry_words
from corymb.views.papers import FloorView, GroupView, LoadSheetView, PlacedView, TripView

DRAWN_MM = 116
"""No drawing is longer on paper, so that there is room beside it on A4."""

SCALES = (5, 10, 15, 20, 25, 30, 40, 50, 100)
"""So many times smaller than it is: round numbers, as on a plan."""

TOOLS = noted("Snips, a cloth, a watering can, a sheet for the floor and a sack for what comes off")
"""Common practice, no source."""

UNWEIGHED = noted(
    "What a vessel weighs isn't known: try each piece before you lift it, share the weight, follow "
    "your local rules, and ask a qualified person."
)

LOADING = (
    noted("Number 1 goes in first, by the seats; the highest number last, by the doors."),
    noted("Unload the other way round, from the doors in."),
    noted("Wedge what could slide or tip: crates, rolled towels, battens across the floor."),
)
RECKONED = (
    noted("Pieces are reckoned as round things as wide as they are: long troughs stand closer."),
    noted("Spare of what is made up stays behind; spare of what goes in buckets goes with it."),
    noted("Weights hold water and stems. A vessel's own weight comes on top."),
)


def load_sheet_view(catalogue: Catalogue, due: Due) -> LoadSheetView:
    """The load sheet; without a vehicle in studio.yml what travels is only listed."""
    pack = packed_for(catalogue, due)
    space = pack.load.space if pack.load else None
    every = [(number, item) for number, item in enumerate(pack.items, 1)]
    return LoadSheetView(
        head=head_of(due),
        order=order_link(due),
        brief=brief_of(catalogue, due),
        take=tuple(to_take(catalogue, due, pack)),
        load=load_view(catalogue, due),
        vehicle=space.name if space else "",
        note=space.note if space else "",
        floor=_floor(space) if space else None,
        trips=tuple(_trips(catalogue, due, pack)),
        listed=() if space else tuple(_groups(catalogue, due, pack, every)),
        before=tuple(_before(pack, catalogue.studio.house)),
        order_of_loading=tuple(map(_, LOADING)) if space and pack.items else (),
        lifting=_lifting(pack.items),
        reckoned=tuple(map(_, RECKONED)) if pack.items else (),
    )


def in_turn(trip: Trip) -> list[int]:
    """The things of a trip in the order they go in: from the seats to the doors."""
    return [p.bucket for p in sorted(trip.places, key=lambda p: (round(p.x), round(p.y)))]


def _floor(space: LoadSpace) -> FloorView:
    long, wide = max(space.long_cm, 1), max(space.wide_cm, 1)
    scale = next((n for n in SCALES if 10 * long / n <= DRAWN_MM), SCALES[-1])
    bar = next((n for n in (50, 20, 10, 5) if n <= long / 2), 5)
    return FloorView(long, wide, bar, scale)


def _trips(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[TripView]:
    trips = pack.load.trips if pack.load else ()
    for number, trip in enumerate(trips, 1):
        places = {place.bucket: place for place in trip.places}
        turn = [(n, pack.items[each]) for n, each in enumerate(in_turn(trip), 1)]
        yield TripView(
            number=number,
            of=len(trips),
            placed=tuple(
                PlacedView(n, places[i].x, places[i].y, pack.items[i].upright.across_cm / 2)
                for n, i in enumerate(in_turn(trip), 1)
            ),
            groups=tuple(_groups(catalogue, due, pack, turn)),
            kg=_kg(sum(item.kg for __, item in turn), 0),
        )


def _groups(
    catalogue: Catalogue, due: Due, pack: Packed, turn: Sequence[tuple[int, Item]]
) -> Iterator[GroupView]:
    """Things that are alike together, in the order the first of them goes in."""
    alike: dict[str, list[tuple[int, Item]]] = {}
    for number, item in turn:
        alike.setdefault(what_stands(catalogue, due, pack, item), []).append((number, item))
    for what, found in alike.items():
        item = found[0][1]
        yield GroupView(
            numbers=ranges([number for number, __ in found]),
            count=len(found),
            what=what,
            stands=length_words(round(item.upright.tall_cm), catalogue.studio.house),
            kg=_kg(item.kg, 1) if item.kg else "",
        )


def _kg(kg: float, places: int) -> str:
    return _("{number} kg").format(number=rounded(kg, places))


def to_take(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """What goes along beside flowers, to set out and to make up what is made there."""
    if due.order.handover != "delivery" or not (pack.items or pack.boxed):
        return
    yield _(TOOLS)
    for line in due.lines:
        if line.number in pack.there:
            yield from sundry_words(catalogue, line)
            water = line.piece.recipe.vessel.water
            if water:
                told = _("{litres} of water for the vessels, in cans")
                yield told.format(litres=litres(water.litres * line.quantity))


def _before(pack: Packed, house: StudioFile) -> Iterator[str]:
    """What is to be seen to before anything goes in: heights first."""
    if not pack.load or not pack.items:
        return
    space = pack.load.space
    tallest = round(max(item.upright.tall_cm for item in pack.items))
    told = _("The tallest stands {tallest}; the {vehicle} is {high} inside.")
    tall, high = length_words(tallest, house), length_words(space.high_cm, house)
    yield told.format(tallest=tall, vehicle=space.name, high=high)
    if trimming := trimming_words(pack.load):
        yield trimming
    left = [*pack.load.too_tall, *pack.load.too_wide]
    if left:
        told = ngettext(
            "{number} thing doesn't go in upright: lay long stems flat in damp paper, or take more "
            "room.",
            "{number} things don't go in upright: lay long stems flat in damp paper, or take more "
            "room.",
            len(left),
        )
        yield told.format(number=len(left))


def _lifting(items: Sequence[Item]) -> str:
    """Only what is weighed whole is held to a filter: a vessel's own weight isn't known."""
    if not items:
        return ""
    buckets = [item.kg for item in items if item.how in ("bucket", "hand-tie") and item.kg]
    rest = _(UNWEIGHED) if len(buckets) < len(items) else ""
    words = lift_words(max(buckets), heaviest=True) if buckets else ""
    return f"{words} {rest}".strip()
