"""What is cut on a day, and who gets what? The lines of `corymb cut`, in the words of the pages."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.cli.wrapping import wrapped
from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.trade.orders.cut_days import CutDay
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cutting import cut_list_view
from corymb.views.cut import BuyRow, CutListView, CutRow, GapView, ShareView


def cut_sheet(catalogue: Catalogue, day: CutDay) -> Iterator[str]:
    """The lines to print, for one cutting day."""
    view = cut_list_view(catalogue, day)
    yield _("Cut on {day}").format(day=view.when)
    orders = "; ".join(f"{each.name}, {each.when}" for each in view.shares)
    yield from wrapped(_("For {orders}.").format(orders=orders))
    yield from wrapped(view.walk)
    yield from wrapped(view.proof)
    yield from _beds(view)
    for share in view.shares:
        yield from _share(share)
    yield from _buys(view)
    if view.cautions:
        yield from ("", _("Take care"))
        for caution in view.cautions:
            yield from wrapped(caution, "  ")


def _beds(view: CutListView) -> Iterator[str]:
    if not view.beds:
        yield from ("", _("Nothing is cut on this day."))
    for bed in view.beds:
        yield from ("", bed.name)
        for row in bed.rows:
            yield from _row(row)


def _row(row: CutRow) -> Iterator[str]:
    yield f"  [ ] {row.count:>4}  {row.steps:<{len(_('one by one'))}}  {row.stem.label}"
    indent = " " * 12
    yield from wrapped(row.stage, indent)
    for words in row.careful:
        yield from wrapped(words, indent)
    homes = [f"{home.stems} {home.order}: {home.buckets}" for home in row.homes]
    homes += [_("{number} left over").format(number=row.over)] if row.over else []
    for words in homes:
        yield from wrapped(words, indent)
    if row.stays is not None:
        stay = ngettext("{number} stay in the bed", "{number} stay in the bed", row.stays)
        yield f"{indent}{stay.format(number=row.stays)}"


def _share(share: ShareView) -> Iterator[str]:
    yield from ("", f"{share.name}, {share.when}")
    stems = ngettext("{number} stems in {buckets}.", "{number} stems in {buckets}.", share.stems)
    buckets = share.bucket_total or _("no bucket")
    yield from wrapped(stems.format(number=share.stems, buckets=buckets), "  ")
    for gap in share.gaps:
        yield from _gap(gap, "  " + _("Missing:") + " ")
    for mix in share.mixes:
        yield from wrapped(f"{mix.piece}. {mix.gets}", "  ")
        for gap in mix.gaps:
            yield from _gap(gap, "    ")
    if share.spare_missed:
        yield from wrapped(share.spare_missed, "  ")
    for swap in share.swaps:
        why = f" ({'; '.join(swap.reasons)})" if swap.reasons else ""
        told = _("Swap: {swap}, {pieces}").format(swap=swap.words, pieces=swap.where)
        yield from wrapped(f"{told}{why}", "  ")
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
        yield from ("", _("To buy in, {cost}").format(cost=view.cost))
    for row in view.buys:
        yield from wrapped(_bought(row), "  ")


def _bought(row: BuyRow) -> str:
    told = _("{stem}, {price} each, {together}: {orders}").format(
        stem=row.stem.label, price=row.each, together=row.together, orders=row.whose
    )
    return f"{row.count:>4} {told}"
