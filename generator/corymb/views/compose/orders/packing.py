"""How is told what of an order travels: buckets, pieces, boxes, and what is made up there?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.trade.load.buckets import Filled
from corymb.trade.load.telling import loaded_words
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.packed import How, Item, Packed, high_cm
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import has_papers, packed_for
from corymb.views.compose.orders.when import day_in_full
from corymb.views.papers import LoadView, PaperHead
from corymb.views.pieces import Link

TOLD: tuple[How, ...] = ("piece", "hand-tie", "empty vessel", "bucket")
"""In the order they are told."""


def head_of(due: Due) -> PaperHead:
    """What stands at the head of every paper: of the client no more than the order's name does."""
    return PaperHead(due.name, day_in_full(due.day), due.order.where.place)


def order_link(due: Due) -> Link:
    """The order's own page."""
    return Link(due.name, addresses.of_due(due.id))


def papers_of(catalogue: Catalogue, due: Due) -> tuple[Link, ...]:
    """The papers of an order; none where its cut isn't planned yet."""
    if not has_papers(catalogue, due):
        return ()
    return (
        Link(_("Bench sheets"), addresses.of_bench(due.id)),
        Link(_("Bucket labels"), addresses.of_labels(due.id)),
        Link(_("Load sheet"), addresses.of_load(due.id)),
        Link(_("For the client"), addresses.of_collection(due.id)),
        Link(_("Care cards"), addresses.of_cards(due.id)),
    )


def load_view(catalogue: Catalogue, due: Due) -> LoadView:
    """What travels, in short."""
    pack = packed_for(catalogue, due)
    return LoadView(
        words=tuple(load_words(catalogue, due, pack)),
        overnight=overnight_words(pack.buckets.all),
        sheet=Link(_("Load sheet"), addresses.of_load(due.id)),
    )


def load_words(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """Sentences: what travels in how many trips, boxes, and what is made up there."""
    if pack.load and pack.items:
        yield loaded_words(pack.load, things_of(pack.items))
    elif pack.items:
        told = _("{things} travel; studio.yml names no vehicle to place them in.")
        yield told.format(things=things_of(pack.items))
    yield from boxes_words(catalogue, due, pack)
    yield from there_words(catalogue, due, pack)


def things_of(items: Sequence[Item]) -> str:
    """`22 pieces in their vessels, 1 hand-tie in a bucket and 3 buckets`."""
    found = Counter(item.how for item in items)
    return and_list(_things(how, found[how]) for how in TOLD if found[how])


def _things(how: How, count: int) -> str:
    told = {
        "piece": ngettext(
            "{number} piece in its vessel", "{number} pieces in their vessels", count
        ),
        "hand-tie": ngettext(
            "{number} hand-tie in a bucket", "{number} hand-ties in a bucket each", count
        ),
        "empty vessel": ngettext("{number} empty vessel", "{number} empty vessels", count),
        "bucket": ngettext("{number} bucket", "{number} buckets", count),
    }
    return told[how].format(number=count)


def overnight_words(buckets: Sequence[Filled]) -> str:
    """`20 buckets overnight: 11 tall buckets, 9 short buckets.` Empty for none."""
    if not buckets:
        return ""
    kinds = Counter(bucket.kind.name for bucket in buckets)
    told = ngettext(
        "{number} bucket overnight: {kinds}.", "{number} buckets overnight: {kinds}.", len(buckets)
    )
    each = and_list(_of_a_kind(name, count) for name, count in kinds.items())
    return told.format(number=len(buckets), kinds=each)


def _of_a_kind(kind: str, count: int) -> str:
    """The studio's word for a bucket, which English writes with an s."""
    # L10N: {bucket} is the studio's own word for one bucket: 3 tall buckets. Where your language
    # can't build its plural, `{number} × {bucket}`.
    told = ngettext("{number} {bucket}", "{number} {bucket}s", count)
    return told.format(number=count, bucket=kind)


def boxes_words(
    catalogue: Catalogue, due: Due, pack: Packed, on_a_seat: bool = True
) -> Iterator[str]:
    """What lies in boxes, and for whoever drives, where they stand."""
    lines = {line.number: line for line in due.lines}
    for each in pack.boxed:
        what = look_name(catalogue, lines[each.line].piece.look)
        told = ngettext(
            "{number} {what}: in {boxes} shallow box, lidded.",
            "{number} {what}: in {boxes} shallow boxes, lidded.",
            each.boxes,
        )
        if on_a_seat:
            told = ngettext(
                "{number} {what}: in {boxes} shallow box, lidded, on a seat and out of the sun.",
                "{number} {what}: in {boxes} shallow boxes, lidded, on a seat and out of the sun.",
                each.boxes,
            )
        yield told.format(number=each.pieces, what=what, boxes=each.boxes)


def there_words(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """What is too high or too wide to travel made up."""
    for line in due.lines:
        if line.number in pack.there and pack.load:
            space = pack.load.space
            told = _("{number} {what}: too wide for the {vehicle} once made up.")
            if high_cm(line.piece) > space.high_cm:
                told = _("{number} {what}: too high for the {vehicle} once made up.")
            what = look_name(catalogue, line.piece.look)
            why = told.format(number=line.quantity, what=what, vehicle=space.name)
            yield f"{why} {_made_there(line)}"


def _made_there(line: DueLine) -> str:
    if line.piece.recipe.vessel.kind == "hand":
        return _("Make it up where it will stand; its stems travel in buckets.")
    return _("Make it up where it will stand; its stems travel in buckets, its vessel empty.")


def what_stands(catalogue: Catalogue, due: Due, pack: Packed, item: Item) -> str:
    """What one thing on the floor is: its arrangement, or the bucket by its label."""
    if item.bucket:
        parts = (f"{p.count} {catalogue.stem(p.lot.stem).name}" for p in item.bucket.parts)
        number = next(n for n, each in enumerate(pack.buckets.all, 1) if each is item.bucket)
        return f"{item.bucket.kind.name.capitalize()} {number}: {'; '.join(parts)}"
    name = look_name(catalogue, line_of(due.lines, item.line).piece.look)
    if item.how == "hand-tie":
        return _("{name}, in a bucket").format(name=name)
    if item.how == "empty vessel":
        return _("{name}: its vessel, empty").format(name=name)
    return name


def line_of(lines: Iterable[DueLine], number: int) -> DueLine:
    """A line by its number."""
    return next(line for line in lines if line.number == number)
