"""How long a stem has to keep, counted by the clock over a night on which the clocks change."""

from __future__ import annotations

from datetime import date, time

import pytest

from corymb.trade.hours.clock import moment
from corymb.trade.hours.keeping import Keeping, days_wanted, too_short_lived

ASTER = Keeping("aster", "Aster", 4, 7)
# Ireland's clocks go forward on 29 March 2026 and back on 25 October (IANA time zone database).
SPANS = {
    "a plain week": ("2026-06-01 06:30", "2026-06-08 06:30", 7),
    "a minute more": ("2026-06-01 06:30", "2026-06-08 06:31", 8),
    "a week with an hour less": ("2026-03-24 06:30", "2026-03-31 06:30", 7),
    "with an hour less, a minute more": ("2026-03-24 06:30", "2026-03-31 06:31", 8),
    "a week with an hour more": ("2026-10-20 06:30", "2026-10-27 06:30", 7),
    "with an hour more, a minute more": ("2026-10-20 06:30", "2026-10-27 06:31", 8),
}


@pytest.mark.parametrize(("cut", "until", "days"), SPANS.values(), ids=SPANS)
def test_a_stem_is_flagged_just_where_it_is_wanted_for_longer_than_it_keeps(
    cut: str, until: str, days: int
) -> None:
    start, end = (
        moment(date.fromisoformat(each[:10]), time.fromisoformat(each[11:]), "Europe/Dublin")
        for each in (cut, until)
    )
    assert days_wanted(start, end) == days
    flags = too_short_lived([ASTER], start, end)
    assert [flag.stem for flag in flags] == (["aster"] if days > 7 else [])
    assert all(f"keeps 7 days at least, and is wanted for {days}," in flag.words for flag in flags)
