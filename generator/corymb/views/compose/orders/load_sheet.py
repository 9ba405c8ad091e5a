"""What does the load sheet of an order show: the floor, trip by trip, and how to load it?"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from corymb.studio.saying import counted
from corymb.studio.values.number import plain
from corymb.trade.load.lifting import lift_words
from corymb.trade.load.telling import trimming_words
from corymb.trade.load.trips import LoadSpace, Trip
from corymb.trade.orders.due import Due
from corymb.trade.orders.packed import Item, Packed
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.brief import brief_of
from corymb.views.compose.orders.cuts import packed_for
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

TOOLS = "Snips, a cloth, a watering can, a sheet for the floor and a sack for what comes off"
"""Common practice, no source."""

UNWEIGHED = (
    "What a vessel weighs isn't known: try each piece before you lift it, share the weight, follow "
    "your local rules, and ask a qualified person."
)

LOADING = (
    "Number 1 goes in first, by the seats; the highest number last, by the doors.",
    "Unload the other way round, from the doors in.",
    "Wedge what could slide or tip: crates, rolled towels, battens across the floor.",
)
RECKONED = (
    "Pieces are reckoned as round things as wide as they are: long troughs stand closer.",
    "Spare of what is made up stays behind; spare of what goes in buckets goes with it.",
    "Weights hold water and stems. A vessel's own weight comes on top.",
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
        before=tuple(_before(pack)),
        order_of_loading=LOADING if space and pack.items else (),
        lifting=_lifting(pack.items),
        reckoned=RECKONED if pack.items else (),
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
            kg=f"{sum(item.kg for _, item in turn):.0f} kg",
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
            numbers=ranges([number for number, _ in found]),
            count=len(found),
            what=what,
            stands=f"{plain(round(item.upright.tall_cm))} cm",
            kg=f"{item.kg:.1f} kg" if item.kg else "",
        )


def to_take(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """What goes along beside flowers, to set out and to make up what is made there."""
    if due.order.handover != "delivery" or not (pack.items or pack.boxed):
        return
    yield TOOLS
    for line in due.lines:
        if line.number in pack.there:
            yield from sundry_words(catalogue, line)
            water = line.piece.recipe.vessel.water
            if water:
                yield f"{plain(water.litres * line.quantity)} L of water for the vessels, in cans"


def _before(pack: Packed) -> Iterator[str]:
    """What is to be seen to before anything goes in: heights first."""
    if not pack.load or not pack.items:
        return
    space = pack.load.space
    tallest = round(max(item.upright.tall_cm for item in pack.items))
    yield f"The tallest stands {tallest} cm; the {space.name} is {plain(space.high_cm)} cm inside."
    if trimming := trimming_words(pack.load):
        yield trimming
    left = [*pack.load.too_tall, *pack.load.too_wide]
    if left:
        things = counted(len(left), "thing doesn't", "things don't")
        yield f"{things} go in upright: lay long stems flat in damp paper, or take more room."


def _lifting(items: Sequence[Item]) -> str:
    """Only what is weighed whole is held to a filter: a vessel's own weight isn't known."""
    if not items:
        return ""
    buckets = [item.kg for item in items if item.how in ("bucket", "hand-tie") and item.kg]
    rest = UNWEIGHED if len(buckets) < len(items) else ""
    words = lift_words(max(buckets), what="The heaviest bucket") if buckets else ""
    return f"{words} {rest}".strip()
