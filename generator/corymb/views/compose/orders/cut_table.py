"""What is cut on which day, and for whom? A table for spreadsheets, for staff.

A row a stem and order, beds in walking order; what no order gets has a row of its own. So the
rows of a day and stem add up to what is cut and bought of it.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator

from corymb.language import gettext as _
from corymb.language import noted, pgettext
from corymb.trade.load.buckets import Filled as Bucket
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.due import Due
from corymb.trade.orders.gets import given, left_over
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cutting import buckets_by_order, walking_order
from corymb.views.compose.orders.sheet_stems import standing_in
from corymb.views.table import Cell, Table

NO_ORDER = noted("left over")


def cut_table(catalogue: Catalogue, days: Iterable[CutDay]) -> Table:
    """The rows of some cutting days, one day after the other."""
    rows = tuple(row for day in days for row in _rows(catalogue, day))
    return Table(head(), rows)


def head() -> tuple[str, ...]:
    """The names of its columns."""
    return (
        pgettext("column", "cut on"),
        pgettext("column", "bed"),
        pgettext("column", "stem"),
        pgettext("column", "botanical"),
        pgettext("column", "order"),
        pgettext("column", "wanted on"),
        pgettext("column", "stems"),
        pgettext("column", "cut"),
        pgettext("column", "bought in"),
        pgettext("column", "spare"),
        pgettext("column", "buckets"),
    )


def _rows(catalogue: Catalogue, day: CutDay) -> Iterator[tuple[Cell, ...]]:
    buckets, over = buckets_by_order(catalogue, day), left_over(day)
    for stem in sorted({cut.stem for cut in day.plan.cuts}, key=lambda s: _place(catalogue, s)):
        for due in day.dues:
            count = given(day, due.id).get(stem, 0)
            if count:
                yield _row(catalogue, day, due, stem, count, buckets[due.id])
        if stem in over:
            facts = catalogue.stem(stem)
            yield (
                f"{day.day}", facts.bed, facts.name, facts.botanical, _(NO_ORDER), None,
                over[stem], over[stem], 0, 0, None,
            )  # fmt: skip


def _place(catalogue: Catalogue, stem: str) -> tuple[object, str]:
    facts = catalogue.stem(stem)
    return walking_order(facts.bed), facts.name.casefold()


def _row(
    catalogue: Catalogue, day: CutDay, due: Due, stem: str, count: int, buckets: tuple[Bucket, ...]
) -> tuple[Cell, ...]:
    facts, bought = catalogue.stem(stem), day.bought(due).get(stem, 0)
    return (
        f"{day.day}", facts.bed, facts.name, facts.botanical, due.name, f"{due.day}",
        count, count - bought, bought, _spare(day, due)[stem], standing_in(stem, buckets),
    )  # fmt: skip


def _spare(day: CutDay, due: Due) -> Counter[str]:
    counts: Counter[str] = Counter()
    for each in day.of(due):
        for fill in each.spare:
            counts[fill.stem] += fill.count
    return counts
