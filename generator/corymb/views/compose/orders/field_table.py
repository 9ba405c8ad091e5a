"""What is cut on a day, stem by stem? A table to take out to the beds, for staff.

A row a stem with the whole number to cut, and a cell to write down what was really cut. Which
order gets what is another table (`cut_table`).
"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.language import pgettext
from corymb.trade.cut import Cut
from corymb.trade.orders.cut_days import CutDay
from corymb.trade.orders.gets import given, left_over
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.cut_words import careful_words, steps_words
from corymb.views.compose.orders.cutting import walking_order
from corymb.views.table import Cell, Table


def field_table(catalogue: Catalogue, day: CutDay) -> Table:
    """The stems of a cutting day in the order of the walk."""
    cuts = [cut for cut in day.plan.cuts if cut.cut or cut.bought]
    cuts.sort(key=lambda cut: _place(catalogue, cut))
    return Table(head(), tuple(_row(catalogue, day, cut) for cut in cuts))


def head() -> tuple[str, ...]:
    """The names of its columns."""
    return (
        pgettext("column", "cut on"),
        pgettext("column", "bed"),
        pgettext("column", "stem"),
        pgettext("column", "botanical"),
        pgettext("column", "cut"),
        pgettext("column", "really cut"),
        pgettext("column", "steps"),
        pgettext("column", "stage"),
        pgettext("column", "careful"),
        pgettext("column", "bought in"),
        pgettext("column", "for"),
        pgettext("column", "left over"),
    )


def _place(catalogue: Catalogue, cut: Cut) -> tuple[object, str]:
    stem = catalogue.stem(cut.stem)
    return walking_order(stem.bed), stem.name.casefold()


def _row(catalogue: Catalogue, day: CutDay, cut: Cut) -> tuple[Cell, ...]:
    stem = catalogue.stem(cut.stem)
    return (
        f"{day.day}", stem.bed, stem.name, stem.botanical, cut.cut, None, steps_words(cut),
        stem.cut_when, "; ".join(careful_words(stem.hazards)), cut.bought,
        "; ".join(_homes(day, cut.stem)), left_over(day).get(cut.stem, 0),
    )  # fmt: skip


def _homes(day: CutDay, stem: str) -> Iterator[str]:
    """`60 Barn supper`: with what goes into its pieces from the mix."""
    for due in day.dues:
        if count := given(day, due.id).get(stem, 0):
            yield f"{count} {due.name}"
