"""Dates and weeks are read, and a wrong one is answered with the right way to write it."""

from datetime import date

import pytest

from corymb.studio.values.dates import IsoWeek, parse_date, parse_iso_week


@pytest.mark.parametrize(
    "text",
    ["2026-09-19", "2026-9-19", "19 September 2026", "19th of September 2026", "19 Sept 2026",
     "19 sep. 2026", "September 19, 2026", "Sept 19th 2026", "Saturday 19 September 2026",
     "Sat, 19 September 2026", "sat September 19, 2026"],
)  # fmt: skip
def test_a_date_is_read_however_it_is_written(text: str) -> None:
    assert parse_date(text) == date(2026, 9, 19)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("19/09/2026", "‘19/09/2026’ can be misread: write 2026-09-19."),
        ("5.9.2026", "‘5.9.2026’ can be misread: write 2026-09-05 or 2026-05-09."),
        ("9/9/2026", "‘9/9/2026’ can be misread: write 2026-09-09."),
        ("2026-02-29", "‘2026-02-29’: February 2026 has 28 days."),
        ("2026-04-31", "‘2026-04-31’: April 2026 has 30 days."),
        ("2026-00-10", "‘2026-00-10’: there is no month 0; write year-month-day."),
        ("2026-19-09", "‘2026-19-09’: there is no month 19; write year-month-day."),
        ("0026-09-19", "‘0026-09-19’: the year 26 can't be right."),
        ("19 Setpember 2026", "‘Setpember’ is not a month. Did you mean ‘September’?"),
        ("Friday 19 September 2026", "19 September 2026 is a Saturday, not Friday."),
        ("Satruday 19 September 2026", "‘Satruday’ is not a day of the week. "
         "Did you mean ‘Saturday’?"),
        ("next Saturday", "‘next Saturday’ is not a date: write it like ‘2026-09-19’ or "
         "‘19 September 2026’."),
        ("19 September", "‘19 September’ is not a date: write it like ‘2026-09-19’ or "
         "‘19 September 2026’."),
        ("", "‘’ is not a date: write it like ‘2026-09-19’ or ‘19 September 2026’."),
    ],
)  # fmt: skip
def test_a_wrong_date_is_told_with_what_would_be_right(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_date(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize("text", ["2026-W38", "2026-w38", "2026W38", "2026 W38", " 2026-W38 "])
def test_a_week_is_read_however_it_is_written(text: str) -> None:
    assert parse_iso_week(text) == IsoWeek(2026, 38)
    assert str(IsoWeek(2026, 38)) == "2026-W38"


def test_a_week_prints_two_figures() -> None:
    assert str(IsoWeek(2026, 6)) == "2026-W06"


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("2026-38", "‘2026-38’ is not a week: write it like ‘2026-W38’."),
        ("W38", "‘W38’ is not a week: write it like ‘2026-W38’."),
        ("2026-W54", "‘2026-W54’: the weeks of 2026 run from W01 to W53."),
        ("2025-W00", "‘2025-W00’: the weeks of 2025 run from W01 to W52."),
        ("1026-W10", "‘1026-W10’: the year 1026 can't be right."),
    ],
)
def test_a_wrong_week_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_iso_week(text)
    assert str(wrong.value) == message


def test_a_week_knows_the_weeks_around_it() -> None:
    assert IsoWeek(2026, 53).plus(1) == IsoWeek(2027, 1)
    assert IsoWeek(2026, 1).plus(-1) == IsoWeek(2025, 52)
    assert list(IsoWeek(2026, 52).until(IsoWeek(2026, 51))) == []
