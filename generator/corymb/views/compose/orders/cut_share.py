"""What is an order's own share of a cut: its stems, its buckets, its swaps and what is missing?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from corymb.language import gettext as _
from corymb.language.locales import and_list
from corymb.trade.cut import Fill, Filled
from corymb.trade.load.buckets import Filled as Bucket
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due, DueLine
from corymb.trade.orders.gets import given
from corymb.trade.orders.needs import Key
from corymb.trade.orders.packed import packed
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench
from corymb.views.compose.orders.brief import brief_of
from corymb.views.compose.orders.cut_gaps import gap_views, mix_views
from corymb.views.compose.orders.lines import line_words
from corymb.views.compose.orders.when import weekday_and_day
from corymb.views.cut import BucketView, CutSwapView, ShareRow, ShareView
from corymb.views.pieces import Link


def share_view(catalogue: Catalogue, day: CutDay, due: Due, shown: bool = True) -> ShareView:
    """An order's share; `shown` where the order has a page."""
    of_due = day.of(due)
    buckets = packed(due, day, catalogue.studio).buckets
    return ShareView(
        order=Link(due.name, addresses.of_due(due.id)) if shown else None,
        name=due.name,
        when=_("wanted on {day}").format(day=weekday_and_day(due.day)),
        brief=brief_of(catalogue, due),
        stems=sum(given(day, due.id).values()),
        rows=tuple(_rows(catalogue, day, due)),
        buckets=tuple(
            _bucket(catalogue, number, each, goes=number > len(buckets.bench))
            for number, each in enumerate(buckets.all, 1)
        ),
        bucket_total=bucket_total(buckets.all),
        swaps=tuple(_swaps(catalogue, due, of_due)),
        mixes=mix_views(catalogue, day, due),
        gaps=gap_views(catalogue, day, due),
        spare_missed=_spare_missed(catalogue, of_due),
    )


def bucket_total(buckets: Iterable[Bucket]) -> str:
    """`14 × tall bucket, 3 × short bucket`, the most first; empty for none."""
    counts = Counter(bucket.kind.name for bucket in buckets)
    return ", ".join(f"{count} × {kind}" for kind, count in counts.most_common())


def _rows(catalogue: Catalogue, day: CutDay, due: Due) -> Iterator[ShareRow]:
    spare = _counts(fill for each in day.of(due) for fill in each.spare)
    bought = day.bought(due)
    for stem, count in _by_name(catalogue, given(day, due.id)):
        yield ShareRow(
            stem_link(catalogue, stem), count - spare[stem], spare[stem], bought.get(stem, 0)
        )


def _by_name(catalogue: Catalogue, counts: dict[str, int]) -> list[tuple[str, int]]:
    return sorted(counts.items(), key=lambda item: catalogue.stem(item[0]).name.casefold())


def _counts(fills: Iterable[Fill]) -> Counter[str]:
    counts: Counter[str] = Counter()
    for fill in fills:
        counts[fill.stem] += fill.count
    return counts


def stem_link(catalogue: Catalogue, stem: str) -> Link:
    """A stem's name and its page."""
    return Link(catalogue.stem(stem).name, addresses.of_stem(stem))


def _bucket(catalogue: Catalogue, number: int, bucket: Bucket, goes: bool) -> BucketView:
    notes = (
        _("goes as it stands") if goes else "",
        _("no water") if bucket.dry else "",
        "" if bucket.stands else _("higher than it holds: prop the stems up"),
    )
    return BucketView(
        number=number,
        kind=bucket.kind.name,
        holds=tuple(f"{part.count} {catalogue.stem(part.lot.stem).name}" for part in bucket.parts),
        notes=tuple(filter(None, notes)),
    )


def _swaps(catalogue: Catalogue, due: Due, of_due: Sequence[Filled]) -> Iterator[CutSwapView]:
    """What goes in for another stem, line by line of the order; nothing does for spare."""
    lines = {line.number: line for line in due.lines}
    for each in of_due:
        for fill in each.fills:
            if fill.stem != each.stem:
                yield _swap(catalogue, lines[line_number(each)], each, fill)


def _swap(catalogue: Catalogue, line: DueLine, each: Filled, fill: Fill) -> CutSwapView:
    coming, going = catalogue.stem(fill.stem), catalogue.stem(each.stem)
    is_new = set(coming.hazards) - set(going.hazards)
    words = _("{number} {stem} for {of} {other}")
    return CutSwapView(
        words=words.format(number=fill.count, stem=coming.name, of=fill.of, other=going.name),
        where=line_words(catalogue, line),
        reasons=fill.why,
        careful=at_the_bench([coming]) if is_new else (),
    )


def line_number(each: Filled) -> int:
    """The line of the order that a wanted stem is for, by its key."""
    return Key.of(each.key).line


def _spare_missed(catalogue: Catalogue, of_due: Sequence[Filled]) -> str:
    missed: Counter[str] = Counter()
    for each in of_due:
        missed[each.stem] += each.spare_missed
    names = [f"{count} {catalogue.stem(stem).name}" for stem, count in missed.items() if count]
    return _("Spare that can't be cut: {stems}.").format(stems=and_list(names)) if names else ""
