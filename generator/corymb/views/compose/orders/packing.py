"""How is told what of an order travels: buckets, pieces, boxes, and what is made up there?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from corymb.studio.saying import and_list, counted
from corymb.trade.load.buckets import Filled
from corymb.trade.load.telling import delivery_words
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.packed import How, Item, Packed, high_cm
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cuts import has_papers, packed_for
from corymb.views.compose.orders.when import day_in_full
from corymb.views.papers import LoadView, PaperHead
from corymb.views.pieces import Link

THINGS: dict[How, tuple[str, str]] = {
    "piece": ("piece in its vessel", "pieces in their vessels"),
    "hand-tie": ("hand-tie in a bucket", "hand-ties in a bucket each"),
    "empty vessel": ("empty vessel", "empty vessels"),
    "bucket": ("bucket", "buckets"),
}
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
        Link("Bench sheets", addresses.of_bench(due.id)),
        Link("Bucket labels", addresses.of_labels(due.id)),
        Link("Load sheet", addresses.of_load(due.id)),
        Link("For the client", addresses.of_collection(due.id)),
    )


def load_view(catalogue: Catalogue, due: Due) -> LoadView:
    """What travels, in short."""
    pack = packed_for(catalogue, due)
    return LoadView(
        words=tuple(load_words(catalogue, due, pack)),
        overnight=overnight_words(pack.buckets.all),
        sheet=Link("Load sheet", addresses.of_load(due.id)),
    )


def load_words(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """Sentences: what travels in how many trips, boxes, and what is made up there."""
    if pack.load and pack.items:
        words = delivery_words(pack.load, things_of(pack.items))
        yield words.replace("Your flowers come in", "On the floor stand", 1)
    elif pack.items:
        yield f"{things_of(pack.items)} travel; studio.yml names no vehicle to place them in."
    yield from boxes_words(catalogue, due, pack)
    yield from there_words(catalogue, due, pack)


def things_of(items: Sequence[Item]) -> str:
    """`22 pieces in their vessels, 1 hand-tie in a bucket and 3 buckets`."""
    found = Counter(item.how for item in items)
    return and_list(counted(found[how], *words) for how, words in THINGS.items() if found[how])


def overnight_words(buckets: Sequence[Filled]) -> str:
    """`20 buckets overnight: 11 tall buckets, 9 short buckets.` Empty for none."""
    if not buckets:
        return ""
    kinds = Counter(bucket.kind.name for bucket in buckets)
    told = and_list(counted(count, name, f"{name}s") for name, count in kinds.items())
    return f"{counted(len(buckets), 'bucket', 'buckets')} overnight: {told}."


def boxes_words(
    catalogue: Catalogue, due: Due, pack: Packed, on_a_seat: bool = True
) -> Iterator[str]:
    """What lies in boxes, and for whoever drives, where they stand."""
    where = ", on a seat and out of the sun" if on_a_seat else ""
    lines = {line.number: line for line in due.lines}
    for each in pack.boxed:
        what = look_name(catalogue, lines[each.line].piece.look)
        boxes = counted(each.boxes, "shallow box", "shallow boxes")
        yield f"{each.pieces} {what}: in {boxes}, lidded{where}."


def there_words(catalogue: Catalogue, due: Due, pack: Packed) -> Iterator[str]:
    """What is too high or too wide to travel made up."""
    for line in due.lines:
        if line.number in pack.there and pack.load:
            space = pack.load.space
            what = look_name(catalogue, line.piece.look)
            why = "high" if high_cm(line.piece) > space.high_cm else "wide"
            vessel = "" if line.piece.recipe.vessel.kind == "hand" else ", its vessel empty"
            yield (
                f"{line.quantity} {what}: too {why} for the {space.name} once made up. Make it "
                f"up where it will stand; its stems travel in buckets{vessel}."
            )


def what_stands(catalogue: Catalogue, due: Due, pack: Packed, item: Item) -> str:
    """What one thing on the floor is: its arrangement, or the bucket by its label."""
    if item.bucket:
        parts = (f"{p.count} {catalogue.stem(p.lot.stem).name}" for p in item.bucket.parts)
        number = next(n for n, each in enumerate(pack.buckets.all, 1) if each is item.bucket)
        return f"{item.bucket.kind.name.capitalize()} {number}: {'; '.join(parts)}"
    name = look_name(catalogue, line_of(due.lines, item.line).piece.look)
    extra = {"hand-tie": ", in a bucket", "empty vessel": ": its vessel, empty"}
    return f"{name}{extra.get(item.how, '')}"


def line_of(lines: Iterable[DueLine], number: int) -> DueLine:
    """A line by its number."""
    return next(line for line in lines if line.number == number)
