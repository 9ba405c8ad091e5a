"""The table for the beds: a row a stem, with the whole number to cut."""

from __future__ import annotations

import pytest

from corymb.trade.orders.gets import given, left_over
from corymb.views.compose.orders.cutting import walking_order
from corymb.views.compose.orders.field_table import field_table, head
from tests.views.making import demo
from tests.views.test_papers import staff

DAYS = {f"{day.day}": day for day in staff().cut_days}
EACH_DAY = pytest.mark.parametrize("known_as", DAYS)


def rows_of(known_as: str) -> list[dict[str, object]]:
    return [
        dict(zip(head(), row, strict=True)) for row in field_table(staff(), DAYS[known_as]).rows
    ]


@EACH_DAY
def test_each_stem_has_one_row_with_all_that_is_cut_of_it(known_as: str) -> None:
    told = {(row["stem"], row["cut"], row["bought in"]) for row in rows_of(known_as)}
    cuts = [cut for cut in DAYS[known_as].plan.cuts if cut.cut or cut.bought]
    assert told == {(demo().stems[cut.stem].name, cut.cut, cut.bought) for cut in cuts}
    assert len(rows_of(known_as)) == len(cuts)
    assert all(row["stage"] and row["really cut"] is None for row in rows_of(known_as))


@EACH_DAY
def test_what_is_cut_and_bought_is_for_an_order_or_left_over(known_as: str) -> None:
    day = DAYS[known_as]
    names = {stem.name: stem.id for stem in demo().stems.values()}
    for row in rows_of(known_as):
        stem = names[str(row["stem"])]
        homes = [int(part.split()[0]) for part in str(row["for"]).split("; ") if part]
        assert sum(homes) == sum(given(day, due.id).get(stem, 0) for due in day.dues)
        assert row["left over"] == left_over(day).get(stem, 0)
        assert sum(homes) + int(str(row["left over"])) == int(str(row["cut"])) + int(
            str(row["bought in"])
        )


@EACH_DAY
def test_the_rows_are_in_the_order_of_the_walk(known_as: str) -> None:
    beds = [str(row["bed"]) for row in rows_of(known_as)]
    assert beds == sorted(beds, key=walking_order)
