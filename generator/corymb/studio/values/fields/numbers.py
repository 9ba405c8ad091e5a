"""How many? Counts of things, and bare numbers."""

from decimal import Decimal
from typing import Annotated

from corymb.studio.values import number, stem_counts
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
        limits={"minimum": 0, "maximum": texts.MOST},
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
        limits={"minimum": 1, "maximum": texts.MOST},
    ),
]
StemsField = Annotated[
    int,
    Friendly(
        stem_counts.parse_stems,
        (int,),
        "How many of a stem go into a piece.",
        ("7",),
        ("integer",),
        limits={"minimum": 1, "maximum": stem_counts.MOST_STEMS},
        convert=stem_counts.few_stems,
    ),
]
HeadsField = Annotated[
    int,
    Friendly(
        stem_counts.parse_heads,
        (int,),
        "How many heads one cut stem bears.",
        ("3",),
        ("integer",),
        limits={"minimum": 1, "maximum": stem_counts.MOST_HEADS},
        convert=stem_counts.few_heads,
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
