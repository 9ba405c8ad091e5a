"""How often an order comes round is read in words or as a calendar's rule."""

from datetime import date

import pytest

from corymb.studio.values.recurrence import Recurrence, parse_recurrence


@pytest.mark.parametrize(
    ("text", "rule", "printed"),
    [
        ("weekly on Tuesday", "FREQ=WEEKLY;BYDAY=TU", "weekly on Tuesday"),
        ("every Tuesday", "FREQ=WEEKLY;BYDAY=TU", "weekly on Tuesday"),
        ("Weekly on tuesdays", "FREQ=WEEKLY;BYDAY=TU", "weekly on Tuesday"),
        ("weekly on Fri and Tue", "FREQ=WEEKLY;BYDAY=TU,FR", "weekly on Tuesday and Friday"),
        ("weekly on Monday, Wednesday and Friday", "FREQ=WEEKLY;BYDAY=MO,WE,FR",
         "weekly on Monday, Wednesday and Friday"),
        ("every 2 weeks on Friday", "FREQ=WEEKLY;INTERVAL=2;BYDAY=FR", "every 2 weeks on Friday"),
        ("every other week on Friday", "FREQ=WEEKLY;INTERVAL=2;BYDAY=FR",
         "every 2 weeks on Friday"),
        ("fortnightly on Friday", "FREQ=WEEKLY;INTERVAL=2;BYDAY=FR", "every 2 weeks on Friday"),
        ("every 1 week on Friday", "FREQ=WEEKLY;BYDAY=FR", "weekly on Friday"),
        ("monthly on the first Monday", "FREQ=MONTHLY;BYDAY=1MO", "monthly on the first Monday"),
        ("monthly on the last Friday", "FREQ=MONTHLY;BYDAY=-1FR", "monthly on the last Friday"),
        ("monthly on the 15th", "FREQ=MONTHLY;BYMONTHDAY=15", "monthly on the 15"),
        ("daily", "FREQ=DAILY", "daily"),
        ("every day", "FREQ=DAILY", "daily"),
        ("FREQ=WEEKLY;BYDAY=TU", "FREQ=WEEKLY;BYDAY=TU", "FREQ=WEEKLY;BYDAY=TU"),
        ("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29;BYDAY=MO",
         "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29;BYDAY=MO",
         "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29;BYDAY=MO"),
        ("RRULE:freq=weekly; byday=tu", "FREQ=WEEKLY;BYDAY=TU", "FREQ=WEEKLY;BYDAY=TU"),
    ],
)  # fmt: skip
def test_a_recurrence_is_read(text: str, rule: str, printed: str) -> None:
    read = parse_recurrence(text)
    assert read == Recurrence(rule)
    assert str(read) == printed
    assert parse_recurrence(printed) == read


HOW = "‘weekly on Tuesday’, ‘every 2 weeks on Friday’ or ‘monthly on the first Monday’"


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("now and then", f"‘now and then’ doesn't say how often: write {HOW}."),
        ("", f"‘’ doesn't say how often: write {HOW}."),
        ("weekly", f"‘weekly’ doesn't say how often: write {HOW}."),
        ("weekly on Teusday", "‘teusday’ is not a day of the week. Did you mean ‘Tuesday’? "
         f"Write it like {HOW}."),
        ("every 99 weeks on Friday", "Every 99 weeks can't be right: write between 1 and 52."),
        ("monthly on the fifth Friday", "‘fifth’ is not which of them in the month: "
         "write first, second, third, fourth or last."),
        ("monthly on the 31st", "Not every month has a day 31: choose the 1st to the 28th."),
        ("FREQ=DAILY;FREQ=HOURLY",
         "‘FREQ=DAILY;FREQ=HOURLY’ says one thing twice: take one of the two out."),
        ("FREQ=DAILY;INTERVAL=-1",
         "‘FREQ=DAILY;INTERVAL=-1’: INTERVAL lies between 1 and 366."),
        ("FREQ=DAILY;COUNT=0", "‘FREQ=DAILY;COUNT=0’: COUNT lies between 1 and 4000."),
        ("FREQ=DAILY;COUNT=" + "9" * 40,
         f"‘FREQ=DAILY;COUNT={'9' * 40}’: COUNT lies between 1 and 4000."),
        ("FREQ=HOURLY", "‘FREQ=HOURLY’: FREQ is DAILY, WEEKLY, MONTHLY or YEARLY."),
        ("FREQ=WEEKLY;BYDAY=XX",
         f"‘FREQ=WEEKLY;BYDAY=XX’ is not a rule a calendar can read: write {HOW}."),
        ("FREQ=WEEKLY;NONSENSE=1",
         f"‘FREQ=WEEKLY;NONSENSE=1’ is not a rule a calendar can read: write {HOW}."),
        ("FREQ=DAILY;INTERVAL=0", "‘FREQ=DAILY;INTERVAL=0’: INTERVAL lies between 1 and 366."),
        ("FREQ=DAILY;INTERVAL=9999999",
         "‘FREQ=DAILY;INTERVAL=9999999’: INTERVAL lies between 1 and 366."),
        ("FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
         "‘FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30’ never comes round: no year has such a day."),
        ("FREQ=DAILY;BYMINUTE=1,2,3",
         "‘FREQ=DAILY;BYMINUTE=1,2,3’ names minutes: when it is wanted goes in `hours`."),
        ("FREQ=WEEKLY;DTSTART=2026",
         "‘FREQ=WEEKLY;DTSTART=2026’ holds a start: the start goes in `from`."),
    ],
)  # fmt: skip
def test_a_wrong_recurrence_is_told(text: str, message: str) -> None:
    with pytest.raises(ValueError) as wrong:
        parse_recurrence(text)
    assert str(wrong.value) == message


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("weekly on Tuesday", ["2026-01-06", "2026-01-13", "2026-01-20"]),
        ("every 2 weeks on Tuesday and Friday", ["2026-01-06", "2026-01-09", "2026-01-20"]),
        ("monthly on the last Friday", ["2026-01-30", "2026-02-27", "2026-03-27"]),
        ("FREQ=WEEKLY;COUNT=2;BYDAY=TU", ["2026-01-06", "2026-01-13"]),
    ],
)
def test_a_recurrence_gives_its_days(text: str, days: list[str]) -> None:
    rule = parse_recurrence(text).starting(date(2026, 1, 6))
    found = [moment.date().isoformat() for moment, _ in zip(rule, range(3), strict=False)]
    assert found == days
