"""Lengths of time, days and hours of the clock are read as people write them."""

from datetime import time

import pytest

from corymb.studio.values.time import (
    ClockSpan,
    DayRange,
    Duration,
    parse_clock_span,
    parse_day_range,
    parse_duration,
)


@pytest.mark.parametrize(
    ("text", "minutes", "printed"),
    [
        ("45 min", 45, "45 min"),
        ("45min", 45, "45 min"),
        ("90 minutes", 90, "1 h 30 min"),
        ("1 h 30 min", 90, "1 h 30 min"),
        ("1h30", 90, "1 h 30 min"),
        ("1 hour and 30 minutes", 90, "1 h 30 min"),
        ("1.5 hours", 90, "1 h 30 min"),
        ("0.25 h", 15, "15 min"),
        ("8 h", 480, "8 h"),
        ("60 min", 60, "1 h"),
        ("1 h 5 min", 65, "1 h 5 min"),
    ],
)
def test_a_length_of_time_is_read_in_minutes(text: str, minutes: int, printed: str) -> None:
    assert parse_duration(text) == Duration(minutes)
    assert str(Duration(minutes)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("45", "‘45’ has no unit: write for instance ‘45 min’. The units are min or h."),
        ("45 m", "‘m’ in ‘45 m’ is not a unit here. The units are min or h."),
        ("1 h 75 min", "‘1 h 75 min’ has more than 59 minutes beside its hours."),
        ("0 min", "‘0 min’ is no time at all: write it like ‘45 min’."),
        ("0.33 h", "‘0.33 h’ comes to 19.8 minutes: write whole minutes, like ‘20 min’."),
        ("2000 h", "‘2000 h’ is more than a thousand hours: is the unit right?"),
        ("soon", "‘soon’ is not a length of time: write it like ‘45 min’."),
        ("1,5 h", "‘1,5’ has a comma in it: write 1.5."),
    ],
)
def test_a_wrong_length_of_time_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_duration(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "fewest", "most", "printed"),
    [
        ("5-7 days", 5, 7, "5-7 days"),
        ("5–7 days", 5, 7, "5-7 days"),
        ("5 to 7 days", 5, 7, "5-7 days"),
        ("10 days", 10, 10, "10 days"),
        ("1 day", 1, 1, "1 day"),
        ("1 week", 7, 7, "7 days"),
        ("2 weeks", 14, 14, "14 days"),
        ("1-2 weeks", 7, 14, "7-14 days"),
        ("5 days - 2 weeks", 5, 14, "5-14 days"),
    ],
)
def test_days_are_read(text: str, fewest: int, most: int, printed: str) -> None:
    assert parse_day_range(text) == DayRange(fewest, most)
    assert str(DayRange(fewest, most)) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("5-7", "‘5-7’ has no unit: write ‘5-7 days’."),
        ("5", "‘5’ has no unit: write ‘5 days’."),
        ("7-5 days", "‘7-5 days’ runs backwards: put the fewer days first."),
        ("0 days", "‘0 days’ should be whole days, one or more, like ‘5-7 days’."),
        ("1.5 days", "‘1.5 days’ should be whole days, one or more, like ‘5-7 days’."),
        ("5 dyas", "‘dyas’ in ‘5 dyas’ is not a unit here. Did you mean ‘day’ or ‘days’? "
         "The units are days or weeks."),
        ("a week", "‘a week’ is not a number of days: write it like ‘5-7 days’."),
    ],
)  # fmt: skip
def test_wrong_days_are_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_day_range(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "start", "end", "minutes"),
    [
        ("17:30-23:00", time(17, 30), time(23, 0), 330),
        ("17:30 – 23:00", time(17, 30), time(23, 0), 330),
        ("17.30 to 23.00", time(17, 30), time(23, 0), 330),
        ("9:00 until 12:00", time(9, 0), time(12, 0), 180),
        ("22:00-02:00", time(22, 0), time(2, 0), 240),
        ("20:00-24:00", time(20, 0), time(0, 0), 240),
    ],
)
def test_hours_of_use_are_read(text: str, start: time, end: time, minutes: int) -> None:
    span = parse_clock_span(text)
    assert span == ClockSpan(start, end)
    assert span.minutes == minutes


@pytest.mark.parametrize(
    ("span", "overnight", "printed"),
    [
        (ClockSpan(time(17, 30), time(23, 0)), False, "17:30-23:00"),
        (ClockSpan(time(22, 0), time(2, 0)), True, "22:00-02:00"),
    ],
    ids=["same day", "overnight"],
)
def test_hours_of_use_may_run_past_midnight(span: ClockSpan, overnight: bool, printed: str) -> None:
    assert span.overnight is overnight
    assert str(span) == printed


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("17:30", "‘17:30’ should say from when to when, like ‘17:30-23:00’."),
        ("5 pm - 11 pm", "‘5 pm’ is not a time of day: write it like ‘17:00’."),
        ("5:30pm-11pm", "‘5:30pm’ is not a time of day: write it like ‘17:30’."),
        ("12 am - 3:00", "‘12 am’ is not a time of day: write it like ‘00:00’."),
        ("17-23", "‘17’ is not a time of day: write it like ‘17:00’."),
        ("1730-2300", "‘1730’ is not a time of day: write it like ‘17:30’."),
        ("17:30-25:00", "‘25:00’ is not a time of day: the day ends at 23:59."),
        ("17:30-24:30", "‘24:30’ is not a time of day: the day ends at 23:59."),
        ("17:30-17:30", "‘17:30-17:30’ starts and ends at the same time."),
        ("noon-dusk", "‘noon’ is not a time of day: write it like ‘17:30’."),
    ],
)
def test_wrong_hours_are_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_clock_span(text)
    assert str(wrong.value) == message
