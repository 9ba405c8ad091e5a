"""What is cut on a day, and who gets what? The lines of `corymb cut`, in the words of the pages."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.cli.wrapping import wrapped
from corymb.trade.orders.cut_days import CutDay
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cutting import cut_list_view
from corymb.views.cut import BuyRow, CutListView, CutRow, GapView, ShareView

STEPS = len("one by one")


def cut_sheet(catalogue: Catalogue, day: CutDay) -> Iterator[str]:
    """The lines to print, for one cutting day."""
    view = cut_list_view(catalogue, day)
    yield f"Cut on {view.when}"
    yield from wrapped(f"For {'; '.join(f'{each.name}, {each.when}' for each in view.shares)}.")
    yield from wrapped(view.walk)
    yield from wrapped(view.proof)
    yield from _beds(view)
    for share in view.shares:
        yield from _share(share)
    yield from _buys(view)
    if view.cautions:
        yield from ("", "Take care")
        for caution in view.cautions:
            yield from wrapped(caution, "  ")


def _beds(view: CutListView) -> Iterator[str]:
    if not view.beds:
        yield from ("", "Nothing is cut on this day.")
    for bed in view.beds:
        yield from ("", bed.name)
        for row in bed.rows:
            yield from _row(row)


def _row(row: CutRow) -> Iterator[str]:
    yield f"  [ ] {row.count:>4}  {row.steps:<{STEPS}}  {row.stem.label}"
    indent = " " * 12
    yield from wrapped(row.stage, indent)
    for words in row.careful:
        yield from wrapped(words, indent)
    homes = [f"{home.stems} {home.order}: {home.buckets}" for home in row.homes]
    homes += [f"{row.over} left over"] if row.over else []
    for words in homes:
        yield from wrapped(words, indent)
    if row.stays is not None:
        yield f"{indent}{row.stays} stay in the bed"


def _share(share: ShareView) -> Iterator[str]:
    yield from ("", f"{share.name}, {share.when}")
    yield from wrapped(f"{share.stems} stems in {share.bucket_total or 'no bucket'}.", "  ")
    for gap in share.gaps:
        yield from _gap(gap, "  Missing: ")
    for mix in share.mixes:
        yield from wrapped(f"{mix.piece}. {mix.gets}", "  ")
        for gap in mix.gaps:
            yield from _gap(gap, "    ")
    if share.spare_missed:
        yield from wrapped(share.spare_missed, "  ")
    for swap in share.swaps:
        why = f" ({'; '.join(swap.reasons)})" if swap.reasons else ""
        yield from wrapped(f"Swap: {swap.words}, {swap.where}{why}", "  ")
        for caution in swap.careful:
            yield from wrapped(caution, "    ")
    for bucket in share.buckets:
        notes = f" ({'; '.join(bucket.notes)})" if bucket.notes else ""
        words = f"{bucket.number:>3} {bucket.kind}{notes}: {'; '.join(bucket.holds)}"
        yield from wrapped(words, " ", " " * 5)


def _gap(gap: GapView, indent: str) -> list[str]:
    then = " " * (len(indent) - len(indent.lstrip()) + 2)
    return wrapped(" ".join((f"{gap.words}.", *gap.mends)), indent, then)


def _buys(view: CutListView) -> Iterator[str]:
    if view.buys:
        yield from ("", f"To buy in, {view.cost}")
    for row in view.buys:
        yield from wrapped(_bought(row), "  ")


def _bought(row: BuyRow) -> str:
    return f"{row.count:>4} {row.stem.label}, {row.each} each, {row.together}: {row.whose}"
