"""How the command line reads a day."""

from __future__ import annotations

from datetime import date

import pytest

from corymb.cli.days import next_on

TODAY = date(2026, 11, 25)

DAYS = {
    "2026-09-19": date(2026, 9, 19),
    "19 September": date(2027, 9, 19),
    "25 November": date(2026, 11, 25),
    "26 November": date(2026, 11, 26),
    "Saturday 28 November": date(2026, 11, 28),
}


@pytest.mark.parametrize("text", DAYS)
def test_a_day_without_a_year_is_the_next_of_its_name(text: str) -> None:
    assert next_on(text, TODAY) == DAYS[text]


@pytest.mark.parametrize("text", ["next week", "31 September", "3.10.2026"])
def test_what_is_no_day_stays_none(text: str) -> None:
    with pytest.raises(ValueError, match="‘"):
        next_on(text, TODAY)
