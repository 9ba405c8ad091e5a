"""Standing orders come round as RFC 5545 says, and keep their hour when the clocks change."""

from datetime import UTC, date, time

import pytest

from corymb.studio.values.recurrence import parse_recurrence
from corymb.trade.hours.clock import moment
from corymb.trade.hours.visits import Coming, visits

# RFC 5545, 3.8.5.3, its examples; python-dateutil and ical.js agree on all but the last, which
# ical.js 2.2.1 gets wrong.
EXAMPLES = {
    "every other week on Tuesday and Thursday, eight times": (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
        "1997-09-02",
        "1997-09-02 1997-09-04 1997-09-16 1997-09-18 1997-09-30 1997-10-02 1997-10-14 1997-10-16",
    ),
    "monthly on the first Friday, ten times": (
        "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
        "1997-09-05",
        "1997-09-05 1997-10-03 1997-11-07 1997-12-05 1998-01-02 "
        "1998-02-06 1998-03-06 1998-04-03 1998-05-01 1998-06-05",
    ),
    "a week that starts on Monday": (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
        "1997-08-05",
        "1997-08-05 1997-08-10 1997-08-19 1997-08-24",
    ),
    "a week that starts on Sunday": (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
        "1997-08-05",
        "1997-08-05 1997-08-17 1997-08-19 1997-08-31",
    ),
    "Monday of week 20, three years": (
        "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
        "1997-05-12",
        "1997-05-12 1998-05-11 1999-05-17",
    ),
}


@pytest.mark.parametrize(("rule", "first", "days"), EXAMPLES.values(), ids=EXAMPLES)
def test_visits_fall_on_the_days_of_the_standards_examples(
    rule: str, first: str, days: str
) -> None:
    start = date.fromisoformat(first)
    coming = Coming(parse_recurrence(rule), start)
    found = visits(coming, start, date(1999, 12, 31))
    assert [visit.day.isoformat() for visit in found] == days.split()
    assert [visit.number for visit in found] == list(range(1, len(found) + 1))


# IANA time zone database: Britain put its clocks back at 01:00 UTC on 26 October 2025.
def test_seven_in_the_morning_stays_seven_when_the_clocks_go_back() -> None:
    coming = Coming(parse_recurrence("FREQ=WEEKLY;BYDAY=SA,SU"), date(2025, 10, 25))
    at_seven = [
        moment(visit.day, time(7), "Europe/London").astimezone(UTC)
        for visit in visits(coming, date(2025, 10, 25), date(2025, 10, 26))
    ]
    assert [f"{each:%Y%m%dT%H%M%SZ}" for each in at_seven] == [
        "20251025T060000Z",
        "20251026T070000Z",
    ]
