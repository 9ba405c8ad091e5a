"""What does a client read who fetches the flowers, or gets them: in what, and how to keep them?

It goes out of the house: no cost, no note, no address and no other order; of its own order, the
name. How the studio loads and what it takes from which bucket is the studio's own business.
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import clock_words
from corymb.trade.load.telling import collection_words
from corymb.trade.order_lines import REGULAR
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.packed import Packed
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import take_home
from corymb.views.compose.orders.arranging import arranging_views, loose_buckets
from corymb.views.compose.orders.cuts import cut_for, packed_for
from corymb.views.compose.orders.lines import number_of
from corymb.views.compose.orders.packing import boxes_words, head_of, order_link, things_of
from corymb.views.compose.orders.sheet_stems import words_as_made
from corymb.views.compose.orders.shown import timed_due
from corymb.views.compose.orders.when import day_and_hours, hours_words, weekday_and_day
from corymb.views.compose.trade_words import size_words
from corymb.views.papers import CollectionView, KeepingView
from corymb.views.pieces import Fact

STANDING = noted("Keep everything upright, in water and in the shade until it is used.")
CAR = noted(
    "On the way: no sun through the glass, no heater on them, and don't leave them in a warm car."
)
COOL = noted(
    "At home: the coolest room there is, away from radiators, draughts and the fruit bowl."
)
TOP_UP = noted("Top up the water as soon as it is where it will stand, and again before bed.")
LOOSE = noted(
    "Loose stems: cut a finger's breadth off each before it goes into a vessel, and strip every "
    "leaf that would stand below the water."
)
WORN = noted("What is worn stays in its box, closed and cool, until it is pinned on.")


def collection_view(catalogue: Catalogue, due: Due) -> CollectionView:
    """The client's own sheet."""
    pack = packed_for(catalogue, due)
    collects = due.order.handover == "collection"
    return CollectionView(
        head=head_of(due),
        order=order_link(due),
        collects=collects,
        what=tuple(client_words(catalogue, line) for line in due.lines),
        words=_words(pack) if collects else "",
        more=(
            *boxes_words(catalogue, due, pack, on_a_seat=collects),
            *_there(catalogue, due, pack),
        ),
        when=tuple(_when(catalogue, due, collects)),
        until_use=tuple(_until_use(due, pack, collects)),
        arrange=tuple(arranging_views(catalogue, due)),
        loose=tuple(loose_buckets(catalogue, due)),
        keeping=tuple(_keeping(catalogue, due)),
        cautions=take_home([catalogue.stem(known_as) for known_as in _stems(catalogue, due)]),
    )


def client_words(catalogue: Catalogue, line: DueLine) -> str:
    """`6 Hedgerow jar: Later in the year, small size; loose stems for you to arrange`."""
    piece = line.piece
    what = look_name(catalogue, piece.look)
    if piece.size != REGULAR:
        what = _("{what}, {size} size").format(what=what, size=size_words(piece.size))
    if piece.in_buckets:
        what = _("{what}; loose stems for you to arrange").format(what=what)
    return number_of(line.quantity, what)


def _words(pack: Packed) -> str:
    return collection_words(pack.load, things_of(pack.items)) if pack.load and pack.items else ""


def _there(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    for line in due.lines:
        if line.number in pack.there:
            told = _("{what}: too large to travel made up. It is made up where it will stand.")
            yield told.format(what=look_name(catalogue, line.piece.look))


def _when(catalogue: Catalogue, due: Due, collects: bool) -> Iterator[Fact]:
    steps = timed_due(catalogue, due).timeline.steps
    given = next((step for step in steps if step.name == "hand over"), None)
    if given:
        at, label = (
            (given.start, _("to fetch from"))
            if collects
            else (given.end, _("with you and set out by"))
        )
        yield Fact(day_and_hours(at.date(), clock_words(at)), label)
    if due.next_visit:
        yield Fact(weekday_and_day(due.next_visit), _("we come again"))
    elif due.order.hours:
        yield Fact(hours_words(due.order.hours), _("in use"))


def _until_use(due: Due, pack: Packed, collects: bool) -> Iterator[str]:
    """What stands already where it is used needs no room to wait in."""
    if not all(line.number in pack.there for line in due.lines):
        yield _(STANDING)
    yield from ((_(CAR), _(COOL)) if collects else ())
    yield _(TOP_UP)
    if any(line.piece.in_buckets for line in due.lines):
        yield _(LOOSE)
    if pack.boxed:
        yield _(WORN)


def _keeping(catalogue: Catalogue, due: Due) -> Iterator[KeepingView]:
    """The words of the looks as they are made, those together that are kept alike."""
    day = cut_for(catalogue, due)
    alike: dict[str, list[str]] = {}
    for line in due.lines:
        care = words_as_made(catalogue, line, as_cut(due, line, day)).care()
        if care:
            alike.setdefault(care, []).append(look_name(catalogue, line.piece.look))
    for care, names in alike.items():
        yield KeepingView("; ".join(dict.fromkeys(names)), care)


def _stems(catalogue: Catalogue, due: Due) -> dict[str, None]:
    """What is really in it, each once: the spare too of what leaves loose, for it goes along."""
    day = cut_for(catalogue, due)
    return dict.fromkeys(
        stem
        for line in due.lines
        for stem in stems_of(as_cut(due, line, day), spare=line.piece.in_buckets)
    )
