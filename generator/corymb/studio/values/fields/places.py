"""Where on earth, in whose time, money and language?"""

from typing import Annotated

from corymb.studio.values import number, place
from corymb.studio.values.friendly import Friendly

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
