"""What does an order of the studio's own files come to, and what goes into all of it?"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from corymb.studio.models import Recipe, Stem
from corymb.studio.models.studio_file import Money
from corymb.studio.values.money import PriceGuide
from corymb.trade.money.costs import Needs, together
from corymb.trade.money.from_recipe import (
    needs_of,
    price_of_piece,
    price_rule_of,
    stems_of,
    tax_rule_of,
)
from corymb.trade.money.guide import asked_for_regular, asked_in_proportion
from corymb.trade.money.quote import Quote, QuoteLine, quote_of
from corymb.trade.orders.pieces import Piece, Several, counts_of, words_of


def order_needs(
    several: Sequence[Several],
    recipes: Mapping[str, Recipe],
    stems: Mapping[str, Stem],
    minutes: Decimal | int | None = None,
) -> Needs:
    """All that goes into an order; without `minutes` every piece takes its recipe's time."""
    whole = together(needs_of(piece, recipes, stems).times(quantity) for quantity, piece in several)
    return replace(
        whole,
        stems=stems_of(counts_of(several), stems),
        minutes=whole.minutes if minutes is None else Decimal(minutes),
    )


def order_quote(
    several: Sequence[Several],
    recipes: Mapping[str, Recipe],
    stems: Mapping[str, Stem],
    money: Money,
) -> Quote:
    """The quote for an order, each piece at the price that `guide` says."""
    lines = [
        QuoteLine(quantity, words_of(piece), asked_for(piece, recipes, stems, money))
        for quantity, piece in several
    ]
    return quote_of(lines, tax_rule_of(money))


def asked_for(
    piece: Piece, recipes: Mapping[str, Recipe], stems: Mapping[str, Stem], money: Money
) -> Decimal:
    """What the client is asked for one piece, by the rule in `guide`."""
    regular = price_of_piece(piece.regular, recipes, stems, money)
    asked = asked_for_regular(piece.guide, regular.shown)
    if piece == piece.regular:
        return asked
    price = price_of_piece(piece, recipes, stems, money)
    return asked_in_proportion(asked, regular, price, price_rule_of(money))


def guide_in_size(
    piece: Piece, recipes: Mapping[str, Recipe], stems: Mapping[str, Stem], money: Money
) -> PriceGuide | None:
    """The guide price that clients read for a piece: for another size, in proportion to its own."""
    guide = piece.guide
    if guide is None or piece == piece.regular:
        return guide
    regular, price = (
        price_of_piece(each, recipes, stems, money) for each in (piece.regular, piece)
    )
    amount = asked_in_proportion(guide.amount, regular, price, price_rule_of(money))
    return replace(guide, amount=amount)
