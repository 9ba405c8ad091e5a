"""On which day, in which part of the year, at what o'clock, how often?"""

from datetime import date, time
from typing import Annotated

from corymb.studio.values import dates, recurrence
from corymb.studio.values import season as seasons
from corymb.studio.values import time as times
from corymb.studio.values.friendly import Friendly
from corymb.studio.values.season_text import parse_season

DateField = Annotated[
    date,
    Friendly(
        dates.parse_date,
        (date,),
        "A date, year first.",
        ("2026-09-19", "19 September 2026"),
        convert=lambda day: date(day.year, day.month, day.day),
    ),
]
IsoWeekField = Annotated[
    dates.IsoWeek,
    Friendly(
        dates.parse_iso_week,
        (dates.IsoWeek,),
        "An ISO week: year, W and the number of the week.",
        ("2026-W38",),
        pattern=r"^\s*[0-9]{4}-?[Ww][0-9]{1,2}\s*$",
    ),
]
SeasonField = Annotated[
    seasons.Season,
    Friendly(
        parse_season,
        (seasons.Season,),
        "Parts of the year, several by commas: thirds of months (early, mid, late), "
        "months, days, ISO weeks, or all year.",
        ("early July - mid October", "September", "4 July - 12 October", "W22 - W30", "all year"),
    ),
]
RecurrenceField = Annotated[
    recurrence.Recurrence,
    Friendly(
        recurrence.parse_recurrence,
        (recurrence.Recurrence,),
        "How often it comes round, in words or as an RFC 5545 rule.",
        ("weekly on Tuesday", "every 2 weeks on Friday", "FREQ=WEEKLY;BYDAY=TU"),
    ),
]
ClockField = Annotated[
    time,
    Friendly(
        times.parse_clock,
        (time,),
        "A time of day on the 24-hour clock.",
        ("06:30",),
        write=times.print_clock,
    ),
]
ClockSpanField = Annotated[
    times.ClockSpan,
    Friendly(
        times.parse_clock_span,
        (times.ClockSpan,),
        "From when to when on the 24-hour clock; it may end on the next day.",
        ("17:30-23:00",),
    ),
]
