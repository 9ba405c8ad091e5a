"""Which friendly values can a model's field hold? One annotated type for each."""

from datetime import date, time
from decimal import Decimal
from typing import Annotated

from corymb.studio import words
from corymb.studio.values import (
    colour,
    dates,
    length,
    money,
    number,
    place,
    recurrence,
    share,
    work,
)
from corymb.studio.values import season as seasons
from corymb.studio.values import text as texts
from corymb.studio.values import time as times
from corymb.studio.values import volume as volumes
from corymb.studio.values import weight as weights
from corymb.studio.values.friendly import Friendly, choice
from corymb.studio.values.season_text import parse_season

_NUMBER = r"[0-9]+(\.[0-9]+)?"
_UNIT = r" ?[A-Za-z\"]+\.?"

LengthField = Annotated[
    length.Length,
    Friendly(
        length.parse_length,
        (length.Length,),
        "A length with its unit: mm, cm, m, in or ft.",
        ("9 cm", "90 mm", "1.2 m", "24 in"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
LengthRangeField = Annotated[
    length.LengthRange,
    Friendly(
        length.parse_length_range,
        (length.LengthRange,),
        "A length, or the shortest and the longest with a dash between.",
        ("60-90 cm", "75 cm"),
        pattern=rf"^\s*{_NUMBER}({_UNIT})?(\s*[-–—]\s*{_NUMBER}{_UNIT}| to {_NUMBER}{_UNIT})?\s*$",
    ),
]
FloorField = Annotated[
    length.Floor,
    Friendly(
        length.parse_floor,
        (length.Floor,),
        "A load floor: its two sides with x between.",
        ("170 x 120 cm",),
    ),
]
HeightField = Annotated[
    length.Height,
    Friendly(
        length.parse_height,
        (length.Height,),
        "How high a place lies above the sea.",
        ("60 m", "200 ft"),
    ),
]
WeightField = Annotated[
    weights.Weight,
    Friendly(
        weights.parse_weight,
        (weights.Weight,),
        "A weight with its unit: g, kg, oz or lb.",
        ("25 g", "0.9 kg"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
VolumeField = Annotated[
    volumes.Volume,
    Friendly(
        volumes.parse_volume,
        (volumes.Volume,),
        "An amount of water: ml, cl or L.",
        ("5 L", "500 ml"),
        pattern=rf"^\s*{_NUMBER}{_UNIT}\s*$",
    ),
]
DurationField = Annotated[
    times.Duration,
    Friendly(
        times.parse_duration,
        (times.Duration,),
        "A length of time in minutes and hours.",
        ("45 min", "1 h 30 min", "1.5 hours"),
    ),
]
DayRangeField = Annotated[
    times.DayRange,
    Friendly(
        times.parse_day_range,
        (times.DayRange,),
        "Days or weeks: one number, or the fewest and the most.",
        ("5-7 days", "1 week"),
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
RecurrenceField = Annotated[
    recurrence.Recurrence,
    Friendly(
        recurrence.parse_recurrence,
        (recurrence.Recurrence,),
        "How often it comes round, in words or as an RFC 5545 rule.",
        ("weekly on Tuesday", "every 2 weeks on Friday", "FREQ=WEEKLY;BYDAY=TU"),
    ),
]
ShareField = Annotated[
    share.Share,
    Friendly(
        share.parse_share,
        (share.Share,),
        "A part of the whole, in percent.",
        ("85 %", "0.85"),
        ("string", "number"),
    ),
]
ScaleField = Annotated[
    share.Scale,
    Friendly(
        share.parse_scale,
        (share.Scale,),
        "How many times as much: a percentage or a number.",
        ("120 %", "0.6", "2"),
        ("string", "number"),
    ),
]
MarkUpField = Annotated[
    Decimal,
    Friendly(
        share.parse_mark_up,
        (Decimal, int),
        "What a cost is multiplied by to make a price.",
        ("2.6",),
        ("number",),
        write=number.plain,
        limits={"minimum": 0, "maximum": share.MOST_TIMES},
        convert=Decimal,
    ),
]
MoneyField = Annotated[
    Decimal,
    Friendly(
        money.parse_money,
        (Decimal, int),
        "An amount of money in the studio's currency, with a point for the cents.",
        ("1.20", "28"),
        ("number", "string"),
        write=money.print_money,
        convert=Decimal,
    ),
]
PriceGuideField = Annotated[
    money.PriceGuide,
    Friendly(
        money.parse_price_guide,
        (money.PriceGuide,),
        "The price a client sees; `from` when it can be more.",
        ("from 165", "28"),
        ("string", "number"),
    ),
]
ColourPartField = Annotated[
    colour.ColourPart,
    Friendly(
        colour.parse_colour_part,
        (colour.ColourPart,),
        "A colour of a stem: name, six-figure number, share. Shares add up to 100 %.",
        ("shell e8c2b4 80 %", "apricot heart c98472"),
    ),
]
NamedColourField = Annotated[
    colour.NamedColour,
    Friendly(
        colour.parse_named_colour,
        (colour.NamedColour,),
        "A colour: name and six-figure number.",
        ("white linen f4efe6",),
    ),
]
HexField = Annotated[
    str,
    Friendly(
        colour.parse_hex,
        (str,),
        "A colour's six-figure number.",
        ("5d7350",),
        ("string", "number"),
        pattern="^#?[0-9a-fA-F]{6}$",
    ),
]
TextField = Annotated[
    str,
    Friendly(
        texts.parse_text, (str,), "Text.", ("Words",), ("string", "number"), longest=1_000_000
    ),
]
IdField = Annotated[
    str,
    Friendly(
        texts.parse_id,
        (str,),
        "A name to refer by: small letters and figures, words joined by hyphens.",
        ("dahlia-shell",),
        pattern="^[a-z0-9]+(-[a-z0-9]+)*$",
    ),
]
YesNoField = Annotated[
    bool,
    Friendly(
        texts.parse_yes_no,
        (bool,),
        "yes or no.",
        ("yes", "no"),
        ("boolean", "string"),
        write=texts.print_yes_no,
        limits={"enum": ["yes", "no", True, False]},
    ),
]
WholeField = Annotated[
    int,
    Friendly(
        texts.parse_whole,
        (int,),
        "A whole number.",
        ("7",),
        ("integer",),
        limits={"minimum": 0},
    ),
]
CountField = Annotated[
    int,
    Friendly(
        texts.parse_count,
        (int,),
        "A whole number, 1 or more.",
        ("7",),
        ("integer",),
        limits={"minimum": 1},
    ),
]
NumberField = Annotated[
    float,
    Friendly(
        texts.parse_number,
        (float, int, Decimal),
        "A number, with a point for the decimals.",
        ("2.6",),
        ("number",),
        write=number.plain,
        convert=float,
    ),
]
DecimalField = Annotated[
    Decimal,
    Friendly(
        texts.parse_decimal,
        (Decimal, int),
        "A number, with a point for the decimals.",
        ("2.6",),
        ("number",),
        write=number.plain,
        convert=Decimal,
    ),
]
EmailField = Annotated[
    str,
    Friendly(texts.parse_email, (str,), "An e-mail address.", ("flowers@garden.example",)),
]
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
LatitudeField = Annotated[
    float,
    Friendly(
        place.parse_latitude,
        (float, int),
        "Degrees north of the equator; south is below 0.",
        ("52.3",),
        ("number",),
        write=number.plain,
        limits={"minimum": -90, "maximum": 90},
        convert=float,
    ),
]
LongitudeField = Annotated[
    float,
    Friendly(
        place.parse_longitude,
        (float, int),
        "Degrees east of Greenwich; west is below 0.",
        ("-7.1",),
        ("number",),
        write=number.plain,
        limits={"minimum": -180, "maximum": 180},
        convert=float,
    ),
]
TimeZoneField = Annotated[
    str,
    Friendly(place.parse_time_zone, (str,), "A time zone: continent/city.", ("Europe/Dublin",)),
]
CurrencyField = Annotated[
    str,
    Friendly(place.parse_currency, (str,), "A currency's three letters (ISO 4217).", ("EUR",)),
]
LanguageField = Annotated[
    str,
    Friendly(place.parse_language, (str,), "A language for dates and prices.", ("en-IE",)),
]

UseField = Annotated[str, choice(words.USES, "a use")]
RoleField = Annotated[str, choice(words.ROLES, "a role")]
FormField = Annotated[str, choice(words.FORMS, "a form")]
HazardField = Annotated[str, choice(words.HAZARDS, "a hazard")]
VesselKindField = Annotated[str, choice(words.VESSELS, "a kind of vessel")]
DifficultyField = Annotated[str, choice(words.DIFFICULTIES, "a difficulty")]
StylePlaceField = Annotated[str, choice(words.STYLE_PLACES, "a place for a style")]
EndsWithField = Annotated[str, choice(words.ENDINGS, "an end of a season")]
ScentField = Annotated[str, choice(words.SCENTS, "a scent")]
SettingField = Annotated[str, choice(words.SETTINGS, "a setting")]
LightField = Annotated[str, choice(words.LIGHTS, "a light")]
HandoverField = Annotated[str, choice(words.HANDOVERS, "a handover")]
LengthUnitField = Annotated[str, choice(words.LENGTH_UNITS, "a unit of length")]
ConsentField = Annotated[str, choice(words.CONSENTS, "someone a photo may be shown to")]
ReaderField = Annotated[str, choice(words.READERS, "a reader")]
