"""What pages show of money: a quote, which a client may see, and the rest, for staff alone."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class QuoteLineView:
    """So many of one thing, in words, at so much each."""

    quantity: int
    words: str
    each: str
    total: str


@dataclass(frozen=True)
class QuoteView:
    """What an order comes to for the client. It holds no cost, and nothing to work one out from."""

    lines: tuple[QuoteLineView, ...]
    net: str
    tax: str
    tax_words: str  # 'tax in it, 13.5 %' or 'tax on top, 13.5 %'
    to_pay: str


@dataclass(frozen=True)
class MoneyRow:
    """One step of a sum: what it is, how it is worked out, and what it comes to."""

    words: str
    how: str
    amount: str


@dataclass(frozen=True)
class MoneyLine:
    """One line of an order: a piece's cost, what it works out at, and what is asked for it."""

    quantity: int
    words: str
    cost: str
    worked_out: str
    asked: str
    beside_guide: str  # 'as the guide price', '€4 over the guide price', or ''


@dataclass(frozen=True)
class StageView:
    """What an order costs and leaves at one stage: as written, with swaps, as cut, as made."""

    words: str
    cost: str
    left: str
    margin: str  # '58 %', or '' where nothing is asked


@dataclass(frozen=True)
class MoneyView:
    """An order's money, for staff alone."""

    quote: QuoteView
    lines: tuple[MoneyLine, ...]
    costs: tuple[MoneyRow, ...]  # head by head, at the last stage that is known
    cost: str
    net: str  # the quote without tax
    left: str
    margin: str
    stages: tuple[StageView, ...]
    told: tuple[str, ...]  # what the swaps, the spare and the making did, a sentence each


@dataclass(frozen=True)
class SizePrice:
    """A look in one size: what it costs, works out at, is asked for, and leaves."""

    name: str
    cost: str
    worked_out: str
    asked: str
    left: str
    margin: str


@dataclass(frozen=True)
class PriceStep:
    """One step from the costs to the price: what it is, its cost, times what, and what it adds."""

    words: str
    how: str
    cost: str
    times: str
    amount: str
    sum: bool  # whether it is the sum of those above


@dataclass(frozen=True)
class PriceView:
    """How a look's price is put together, for staff alone."""

    sizes: tuple[SizePrice, ...]
    bought: SizePrice | None  # the regular size, with every stem bought in that can be
    not_bought: str  # 'Sweet pea, plum can't be bought in.'
    guide: str  # 'from €28', or '' without a guide price
    beside: str  # '€32, €4 over the guide price'
    steps: tuple[PriceStep, ...]
