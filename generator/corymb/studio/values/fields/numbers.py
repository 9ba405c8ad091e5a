"""How many? Counts of things, and bare numbers."""

from decimal import Decimal
from typing import Annotated

from corymb.studio.values import number
from corymb.studio.values import text as texts
from corymb.studio.values.friendly import Friendly

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
