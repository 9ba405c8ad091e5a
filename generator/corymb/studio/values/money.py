"""How much money? Decimal throughout; the currency is the studio's."""

import re
from dataclasses import dataclass
from decimal import Decimal

from corymb.studio.saying import or_list
from corymb.studio.suggest import quoted
from corymb.studio.values.number import LONGEST, uncomma

_SIGNED = re.compile(r"(?:[€£$]|[A-Z]{3}(?=[\s0-9]))?\s*(?P<number>.*?)\s*(?:[€£$]|\b[A-Z]{3})?")
_AMOUNT = re.compile(r"[0-9]+(?:\.[0-9]{1,4})?")


@dataclass(frozen=True, order=True)
class PriceGuide:
    """A price a client sees: exactly so much, or from so much upwards."""

    amount: Decimal
    from_: bool = False

    def __str__(self) -> str:
        return f"{'from ' if self.from_ else ''}{print_money(self.amount)}"


def parse_money(text: str) -> Decimal:
    """Reads `1.20`, `€1.20`, `1.20 EUR`; up to four decimals. Raises ValueError."""
    flat = " ".join(text.split())
    signed = _SIGNED.fullmatch(flat)
    number = signed["number"] if signed else flat
    if re.fullmatch(r"[0-9]+,[0-9]+", number):
        raise ValueError(f"{quoted(flat)} has a comma in it: write {or_list(uncomma(number))}.")
    if re.fullmatch(r"[-−][0-9.]+", number):
        raise ValueError(f"{quoted(flat)} is below nothing: money here is never negative.")
    if not _AMOUNT.fullmatch(number) or sum(c.isdigit() for c in number) > LONGEST:
        raise ValueError(f"{quoted(flat)} is not an amount of money: write it like ‘1.20’.")
    return Decimal(number)


def print_money(amount: Decimal) -> str:
    """A whole amount bare (`28`), any other with two decimals or as many as it needs (`1.20`)."""
    if amount == amount.to_integral_value():
        return f"{amount:.0f}"
    cents = amount.normalize()
    return f"{cents:f}" if -int(cents.as_tuple().exponent) > 2 else f"{cents:.2f}"


def parse_price_guide(text: str) -> PriceGuide:
    """Reads `28` or `from 165`. Raises ValueError."""
    flat = " ".join(text.split())
    head, _, rest = flat.partition(" ")
    from_ = head.casefold() == "from"
    if re.search(r"[0-9]\s*(?:[-–—]|to )\s*[0-9]", flat):
        raise ValueError(f"{quoted(flat)} is a range: write where it starts, like ‘from 28’.")
    return PriceGuide(parse_money(rest if from_ else flat), from_)
