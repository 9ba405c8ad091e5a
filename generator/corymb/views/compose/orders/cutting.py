"""What does the cut list of a day show, bed by bed and order by order?"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal

from corymb.language import gettext as _
from corymb.language import noted, pgettext
from corymb.studio.values.dates import IsoWeek
from corymb.trade.cut import Cut
from corymb.trade.load.buckets import Filled as Bucket
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given, left_over
from corymb.trade.orders.packed import packed
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import at_the_bench
from corymb.views.compose.orders.brief import walk_notes
from corymb.views.compose.orders.cut_share import (
    bucket_total,
    share_view,
    stem_link,
)
from corymb.views.compose.orders.cut_words import (
    careful_words,
    mornings_words,
    proof_words,
    steps_words,
    walk_words,
)
from corymb.views.compose.orders.ordering import order_words
from corymb.views.compose.orders.sheet_stems import standing_in
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.compose.orders.when import day_in_full, days_away, weekday_and_day
from corymb.views.compose.wording import to_the_cent
from corymb.views.cut import BedView, BuyRow, CutListView, CutRow, CutShareView, HomeView
from corymb.views.pieces import Fact, Link

NO_BED = noted("No bed named")
"""Where the studio's files don't say where a stem grows; these come last."""


def cut_list_view(catalogue: Catalogue, day: CutDay) -> CutListView:
    """The list that is taken out to the beds, and what becomes of the stems."""
    shown = {due.id for due in shown_dues(catalogue)}
    shares = tuple(share_view(catalogue, day, due, due.id in shown) for due in day.dues)
    buckets = buckets_by_order(catalogue, day)
    beds = tuple(_beds(catalogue, day, buckets))
    week = IsoWeek.of(day.day)
    return CutListView(
        id=day.day.isoformat(),
        when=day_in_full(day.day),
        days=days_away(day.day, catalogue.today),
        week=Link(_("week {week}").format(week=week.week), addresses.of_week(str(week))),
        tables=(
            Link(_("For a spreadsheet"), addresses.of_cut_table(day.day)),
            Link(_("The same by order"), addresses.of_cut_orders(day.day)),
        ),
        facts=_facts(day, beds, sum(map(len, buckets.values()))),
        mornings=mornings_words(day),
        walk=walk_words(day),
        noted=walk_notes(catalogue.studio, day),
        order_in=order_words(catalogue, day, day.dues),
        proof=proof_words(day.plan),
        beds=beds,
        shares=shares,
        bucket_total=bucket_total([each for some in buckets.values() for each in some]),
        buys=buy_rows(catalogue, day, day.dues),
        cost=_cost(catalogue, day, day.dues),
        short=missing_stems(day),
        cautions=at_the_bench(
            catalogue.stem(cut.stem) for cut in day.plan.cuts if cut.cut or cut.bought
        ),
    )


def cut_share_view(catalogue: Catalogue, due: Due) -> CutShareView | None:
    """An order's share of its cut, for its own page; none where no cut is planned for it yet."""
    for day in catalogue.cut_days:
        for each in day.dues:
            if each.id == due.id:
                return CutShareView(
                    list=cut_link(day),
                    share=share_view(catalogue, day, each),
                    buys=buy_rows(catalogue, day, [each]),
                    cost=_cost(catalogue, day, [each]),
                    walk=walk_words(day),
                )
    return None


def cut_link(day: CutDay) -> Link:
    """The cut list of a day."""
    told = _("Cut list, {day}").format(day=weekday_and_day(day.day))
    return Link(told, addresses.of_cut(day.day))


def walking_order(bed: str) -> tuple[bool, list[tuple[bool, int, str]]]:
    """Beds by name, numbers in them by their value: `long bed 2` before `long bed 10`."""
    parts = [part for part in re.split(r"(\d+)", bed.casefold()) if part]
    return not bed, [
        (not part.isdecimal(), int(part) if part.isdecimal() else 0, part) for part in parts
    ]


def buckets_by_order(catalogue: Catalogue, day: CutDay) -> dict[str, tuple[Bucket, ...]]:
    """The buckets of each order, in the order of their numbers."""
    return {due.id: packed(due, day, catalogue.studio).buckets.all for due in day.dues}


def missing_stems(day: CutDay) -> int:
    """How many stems the day's pieces lack, those from the mix too."""
    return day.plan.parts.short + sum(sum(mix.missing.values()) for mix in day.mixed)


def _facts(day: CutDay, beds: Sequence[BedView], buckets: int) -> tuple[Fact, ...]:
    rows = [row for bed in beds for row in bed.rows]
    return (
        Fact(f"{sum(row.count for row in rows)}", pgettext("label", "stems to cut")),
        Fact(f"{len(rows)}", pgettext("label", "kinds")),
        Fact(f"{len(beds)}", pgettext("label", "beds")),
        Fact(f"{buckets}", pgettext("label", "buckets")),
    )


def _beds(
    catalogue: Catalogue, day: CutDay, buckets: Mapping[str, Sequence[Bucket]]
) -> Iterator[BedView]:
    by_bed: dict[str, list[Cut]] = {}
    for cut in day.plan.cuts:
        if cut.cut:
            by_bed.setdefault(catalogue.stem(cut.stem).bed, []).append(cut)
    for bed in sorted(by_bed, key=walking_order):
        cuts = sorted(by_bed[bed], key=lambda cut: catalogue.stem(cut.stem).name.casefold())
        name = bed[:1].upper() + bed[1:] if bed else _(NO_BED)
        yield BedView(name, tuple(_row(catalogue, day, cut, buckets) for cut in cuts))


def _row(
    catalogue: Catalogue, day: CutDay, cut: Cut, buckets: Mapping[str, Sequence[Bucket]]
) -> CutRow:
    stem = catalogue.stem(cut.stem)
    return CutRow(
        stem=stem_link(catalogue, cut.stem),
        botanical=stem.botanical,
        count=cut.cut,
        steps=steps_words(cut),
        stage=stem.cut_when,
        careful=careful_words(stem.hazards),
        homes=tuple(_homes(day, cut.stem, buckets)),
        over=left_over(day).get(cut.stem, 0),
        stays=cut.left_standing if day.week else None,
    )


def _homes(day: CutDay, stem: str, buckets: Mapping[str, Sequence[Bucket]]) -> Iterator[HomeView]:
    """Where what is cut of a stem goes; what is bought of it comes to the buckets later."""
    for due in day.dues:
        count = given(day, due.id).get(stem, 0) - day.bought(due).get(stem, 0)
        if count:
            yield HomeView(due.name, count, standing_in(stem, buckets[due.id]))


def buy_rows(catalogue: Catalogue, day: CutDay, dues: Sequence[Due]) -> tuple[BuyRow, ...]:
    """What is bought in for some orders, by stem."""
    house = catalogue.studio.house
    whose: dict[str, dict[str, int]] = {}
    for due in dues:
        for stem, count in day.bought(due).items():
            whose.setdefault(stem, {})[due.name] = count
    return tuple(
        BuyRow(
            stem=stem_link(catalogue, stem),
            count=sum(counts.values()),
            whose="; ".join(
                _("{number} for {order}").format(number=count, order=name)
                for name, count in counts.items()
            ),
            each=to_the_cent(catalogue.stem(stem).bought or Decimal(0), house),
            together=to_the_cent(
                sum(counts.values()) * (catalogue.stem(stem).bought or Decimal(0)), house
            ),
        )
        for stem, counts in sorted(
            whose.items(), key=lambda item: catalogue.stem(item[0]).name.casefold()
        )
    )


def _cost(catalogue: Catalogue, day: CutDay, dues: Sequence[Due]) -> str:
    total = sum(
        (
            count * (catalogue.stem(stem).bought or Decimal(0))
            for due in dues
            for stem, count in day.bought(due).items()
        ),
        Decimal(0),
    )
    return to_the_cent(total, catalogue.studio.house) if total else ""
