"""Who makes how much of it, and when?"""

from decimal import Decimal
from typing import Annotated

from corymb.studio.values import number, work
from corymb.studio.values.friendly import Friendly

PiecesField = Annotated[
    int,
    Friendly(
        work.parse_pieces,
        (int,),
        "How many of one recipe.",
        ("12",),
        ("integer",),
        limits={"minimum": 1, "maximum": work.MOST_PIECES},
        convert=work.few_enough,
    ),
]
PeopleField = Annotated[
    int,
    Friendly(
        work.parse_people,
        (int,),
        "How many people work at it, yourself counted.",
        ("2",),
        ("integer",),
        limits={"minimum": 1, "maximum": work.MOST_PEOPLE},
    ),
]
HoursOfWorkField = Annotated[
    float,
    Friendly(
        work.parse_hours_of_work,
        (float, int, Decimal),
        "Hours of work in a day.",
        ("7", "7.5"),
        ("number",),
        write=number.plain,
        limits={"minimum": work.SHORTEST_DAY, "maximum": work.LONGEST_DAY},
        convert=float,
    ),
]
DaysBeforeField = Annotated[
    int,
    Friendly(
        work.parse_days_before,
        (int,),
        "How many days before handing over.",
        ("1",),
        ("integer",),
        limits={"minimum": 0, "maximum": work.MOST_DAYS_BEFORE},
    ),
]
