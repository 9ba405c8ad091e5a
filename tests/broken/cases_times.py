"""Days, seasons, hours and working days, written wrong."""

from tests.broken.bench import DAHLIAS, HOUSE, JAR, LOG, MADE, ORDER, STANDING, at, case

CASES = [
    case(
        "an order that comes round without end on one day",
        STANDING,
        "repeats: weekly on Tuesday",
        "repeats: FREQ=DAILY;INTERVAL=0",
        at(3, 10, "`repeats`: ‘FREQ=DAILY;INTERVAL=0’: INTERVAL lies between 1 and 366."),
    ),
    case(
        "an order on a day that no year has",
        STANDING,
        "repeats: weekly on Tuesday",
        "repeats: FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
        at(3, 10, "never comes round: no year has such a day."),
    ),
    case(
        "a day that the month hasn't got",
        MADE,
        "date: 2025-09-20",
        "date: 2025-09-31",
        at(4, 7, "`date`: ‘2025-09-31’: September 2025 has 30 days."),
    ),
    case(
        "a date with slashes",
        ORDER,
        "date: 2026-09-19",
        "date: 19/09/2026",
        at(3, 7, "‘19/09/2026’ can be misread: write 2026-09-19."),
    ),
    case(
        "a date in words that say none",
        ORDER,
        "date: 2026-09-19",
        "date: next Saturday",
        at(3, 7, "is not a date: write it like ‘2026-09-19’ or ‘19 September 2026’."),
    ),
    case(
        "a day of the week that isn't the date's",
        ORDER,
        "date: 2026-09-19",
        "date: Friday 19 September 2026",
        at(3, 7, "19 September 2026 is a Saturday, not Friday."),
    ),
    case(
        "a month misspelt",
        DAHLIAS,
        "    in season: early July - mid",
        "    in season: early Juli - mid",
        at(16, 16, "`in season`: ‘Juli’ is not a month. Did you mean ‘July’?"),
    ),
    case(
        "half a time in the log",
        LOG,
        "4 July - 12 October",
        "4 July to",
        at(2, 17, "is not a part of the year: write it like ‘early July - mid October’"),
    ),
    case(
        "minutes by the unit of length",
        JAR,
        "time: 20 min",
        "time: 20 m",
        at(6, 7, "‘m’ in ‘20 m’ is not a unit here. The units are min or h."),
    ),
    case(
        "days with no unit",
        DAHLIAS,
        "    vase life: 5-7 days\n    cut when: nearly",
        "    vase life: 5-7\n    cut when: nearly",
        at(17, 16, "`vase life`: ‘5-7’ has no unit: write ‘5-7 days’."),
    ),
    case(
        "hours by another clock",
        ORDER,
        "hours: 17:30-23:00",
        "hours: 5.30pm-11pm",
        at(4, 8, "‘5.30pm’ is not a time of day: write it like ‘17:30’."),
    ),
    case(
        "a time of day in the words of a clock",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nwork: {cut at: 5 am}",
        at(45, 16, "`cut at`: ‘5 am’ is not a time of day: write it like ‘05:00’."),
    ),
    case(
        "a day's work that no one does",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nwork:\n  hours a day: 70",
        at(46, 16, "‘70’ hours are no day's work: it is half an hour or more, and 16 at most."),
    ),
    case(
        "making long before it is wanted",
        HOUSE,
        "    heaviest stem: 120 g",
        "    heaviest stem: 120 g\nwork:\n  make days before: 9",
        at(46, 21, "‘9’ days before handing over is too early: 3 at most, 1 is usual."),
    ),
]
