"""What part of it, how many times as much, and for what money?"""

from decimal import Decimal
from typing import Annotated

from corymb.studio.values import money, number, share
from corymb.studio.values.friendly import Friendly

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
