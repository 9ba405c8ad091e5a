"""A studio's money in round figures, so that every sum in these tests can be done by hand."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from corymb.studio.models.studio_file import Money
from corymb.trade.money.costs import Needs, Rates, StemsOf, SundryOf
from corymb.trade.money.prices import MarkUps, PriceRule
from corymb.trade.money.tax import TaxRule

RATES = Rates(hourly_rate=Decimal(18), overhead=Decimal("0.20"), waste=Decimal("0.20"))
TAX_IN = TaxRule(Decimal("0.10"), in_prices=True)
TAX_OUT = TaxRule(Decimal("0.10"), in_prices=False)
UPS = MarkUps(grown=Decimal("2.5"), bought=Decimal(2), sundries=Decimal("1.5"))
RULE = PriceRule(UPS, TAX_IN, round_to=Decimal(5))

JAR = Needs(
    (
        StemsOf("rose", 6, Decimal("0.40")),
        StemsOf("mint", 4, Decimal("0.30")),
        StemsOf("lily", 2, Decimal(2), True),
    ),
    (SundryOf("jar", Decimal("1.20")), SundryOf("twine", Decimal("0.30"), measured=True)),
    minutes=Decimal(20),
)
"""Grown 2.40 + 1.20, waste 0.90; bought 4.00, waste 1.00; sundries 1.50; labour 6.00."""

MONEY: dict[str, Any] = {
    "currency": "EUR",
    "hourly rate": "18",
    "overhead": "20 %",
    "waste": "20 %",
    "mark up": {"grown": "2.5", "bought": "2", "sundries": "1.5"},
    "tax": "10 %",
    "tax in prices": "yes",
    "round prices to": "5",
}


def money(**keys: str) -> Money:
    """The same figures as in a studio's file, with some of its own."""
    own = {key.replace("_", " "): value for key, value in keys.items()}
    return Money.model_validate({**MONEY, **own})
