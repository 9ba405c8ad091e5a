"""What is coming on in a week, at its best, and going over."""

from __future__ import annotations

import pytest

from corymb.studio.values.dates import IsoWeek
from corymb.trade.season.beds import Beds
from corymb.trade.season.coming import in_the_beds, is_coming_on, is_going_over
from tests.trade.making import stem

SUMMER = frozenset(range(20, 31))
WINTER = frozenset({51, 52, 1, 2, 3})
TWO_FLUSHES = frozenset({20, 21, 22, 30, 31, 32})
ALL_YEAR = frozenset(range(1, 53))

# The weeks asked about, and for each: c coming on, g going over, . neither.
# Coming on: the week before the first and the first. Going over: the last two.
TABLE = {
    "from the week before": (SUMMER, "2026-W18", ".cc.."),
    "to the last": (SUMMER, "2026-W27", "..gg."),
    "over the new year, 53 weeks": (WINTER, "2026-W49", ".cc...gg."),
    "out of the new year": (WINTER, "2026-W53", "..gg."),
    "a flush that begins with the year": (frozenset(range(1, 9)), "2026-W51", "..cc."),
    "a flush that ends with a long year": (frozenset(range(40, 53)), "2026-W50", "..gg."),
    "two flushes": (TWO_FLUSHES, "2026-W19", "ccgg."),
    "the second of two flushes": (TWO_FLUSHES, "2026-W28", ".ccgg."),
    "two weeks alone": (frozenset({20, 21}), "2026-W18", ".cgg."),
    "one week alone": (frozenset({20}), "2026-W18", ".cg.."),
    "all year": (ALL_YEAR, "2026-W51", "....."),
    "never": (frozenset[int](), "2026-W51", "....."),
}


@pytest.mark.parametrize(("cells", "first", "signs"), TABLE.values(), ids=TABLE)
def test_a_stem_comes_on_before_and_at_its_first_week_and_goes_over_in_its_last_two(
    cells: frozenset[int], first: str, signs: str
) -> None:
    start = IsoWeek(int(first[:4]), int(first[6:]))
    weeks = [start.plus(n) for n in range(len(signs))]
    told = [
        "c" if is_coming_on(cells, week) else "g" if is_going_over(cells, week) else "."
        for week in weeks
    ]
    assert "".join(told) == signs
    assert not any(is_coming_on(cells, week) and is_going_over(cells, week) for week in weeks)


def test_a_week_tells_each_stem_under_its_heading() -> None:
    stems = {
        "rose": stem("rose", in_season="W20 - W30", at_best="W22 - W24"),
        "poppy": stem("poppy", in_season="W24 - W40"),
        "mint": stem("mint", in_season="W10 - W23", at_best="W20 - W23"),
        "ivy": stem("ivy", in_season="all year", at_best="all year"),
    }
    beds = in_the_beds(Beds(stems), stems, IsoWeek(2027, 23))
    assert (beds.coming_on, beds.at_best, beds.going_over) == (
        ("poppy",),
        ("rose", "ivy"),
        ("mint",),
    )
