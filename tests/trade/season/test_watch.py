"""Which cell answers for a week of the calendar, and how long a year is."""

from __future__ import annotations

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.watch import cell_of, weeks_after, year_from

# 2020 and 2026 have 53 weeks (their 1 January, or 31 December, is a Thursday), 2027 has 52.
YEARS = {
    "a year of 52 weeks": (IsoWeek(2027, 10), 52, IsoWeek(2028, 9)),
    "from within a year of 53": (IsoWeek(2026, 48), 53, IsoWeek(2027, 47)),
    "from the first week of a year of 53": (IsoWeek(2020, 1), 53, IsoWeek(2020, 53)),
    "from a 53rd week": (IsoWeek(2026, 53), 53, IsoWeek(2027, 52)),
    "from before a year of 53": (IsoWeek(2025, 10), 52, IsoWeek(2026, 9)),
}


@pytest.mark.parametrize(("start", "count", "last"), YEARS.values(), ids=YEARS)
def test_a_year_of_weeks_ends_before_the_same_week_comes_round_again(
    start: IsoWeek, count: int, last: IsoWeek
) -> None:
    weeks = year_from(start)
    assert (weeks[0], len(weeks), weeks[-1]) == (start, count, last)


@pytest.mark.parametrize(
    ("week", "cell"),
    [(IsoWeek(2026, 1), 1), (IsoWeek(2026, 52), 52), (IsoWeek(2026, 53), 52)],
    ids=str,
)
def test_a_53rd_week_is_answered_as_the_52nd(week: IsoWeek, cell: int) -> None:
    assert cell_of(week) == cell


def test_weeks_go_on_over_the_new_year() -> None:
    assert [str(week) for week in weeks_after(IsoWeek(2026, 52), 3)] == [
        "2026-W52",
        "2026-W53",
        "2027-W01",
    ]
