"""What does a look of the studio's own files need, cost, and sell for?

The time is the recipe's, or the variant's own, for the regular size; another size takes as many
times more or less, as it takes stems (house rule; give `minutes` where a better figure is known).
What leaves in buckets isn't made up: no time. What is drawn from the order's other flowers has
no stems of its own: they are paid for where they were cut.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from decimal import Decimal

from corymb.studio.models import Recipe, Stem
from corymb.studio.models.studio_file import Money
from corymb.studio.suggest import quoted as in_quotes
from corymb.trade.money.coins import places_of
from corymb.trade.money.costs import Needs, Rates, StemsOf, SundryOf, costs_of
from corymb.trade.money.prices import MarkUps, Price, PriceRule, price_of
from corymb.trade.money.tax import TaxRule
from corymb.trade.orders.pieces import Piece
from corymb.trade.written_for import stages_of, written


def rates_of(money: Money) -> Rates:
    """What costs go by, from `money` in studio.yml."""
    return Rates(
        money.hourly_rate,
        money.overhead.fraction,
        money.waste.fraction,
        places_of(money.currency),
    )


def tax_rule_of(money: Money) -> TaxRule:
    """How tax is told apart, from `money` in studio.yml."""
    return TaxRule(money.tax.fraction, money.tax_in_prices, places_of(money.currency))


def price_rule_of(money: Money) -> PriceRule:
    """How a price is made of a cost, from `money` in studio.yml."""
    ups = MarkUps(money.mark_up.grown, money.mark_up.bought, money.mark_up.sundries)
    return PriceRule(ups, tax_rule_of(money), money.round_prices_to)


def stems_of(
    counts: Mapping[str, int], stems: Mapping[str, Stem], bought: Mapping[str, int] | None = None
) -> tuple[StemsOf, ...]:
    """So many of each stem with what one costs; `bought` says how many of them are bought in.

    Whoever buys by the bunch pays for what is left over too: more bought than counted stays more.
    Raises ValueError when a stem that is bought in has no `bought` price.
    """
    bought = bought or {}
    lines = []
    for known_as in dict.fromkeys([*counts, *bought]):
        grown = max(counts.get(known_as, 0) - bought.get(known_as, 0), 0)
        if grown:
            lines.append(StemsOf(known_as, grown, stems[known_as].grown))
        if bought.get(known_as):
            lines.append(StemsOf(known_as, bought[known_as], _bought(stems[known_as]), bought=True))
    return tuple(lines)


def needs_of(
    piece: Piece,
    recipes: Mapping[str, Recipe],
    stems: Mapping[str, Stem],
    bought: Collection[str] = (),
    minutes: Decimal | int | None = None,
) -> Needs:
    """All that goes into one piece. `bought` names the stems that are bought in.

    Raises ValueError when one of them has no `bought` price.
    """
    counts = piece.counts
    buying = {known_as: count for known_as, count in counts.items() if known_as in bought}
    sundries = (SundryOf(s.name, s.cost, bool(s.unit)) for s in piece.recipe.sundries)
    if minutes is None:
        minutes = Decimal(0) if piece.in_buckets else minutes_of(piece, recipes)
    return Needs(
        stems_of(counts, stems, buying),
        tuple(sundry.in_size(piece.scale) for sundry in sundries),
        Decimal(minutes),
    )


def minutes_of(piece: Piece, recipes: Mapping[str, Recipe]) -> Decimal:
    """How long one takes to make up, in its size."""
    time, _ = written(stages_of(piece.recipe, piece.look.variant, recipes), "time")
    return Decimal(time.minutes) * piece.scale


def price_of_piece(
    piece: Piece,
    recipes: Mapping[str, Recipe],
    stems: Mapping[str, Stem],
    money: Money,
    bought: Collection[str] = (),
    minutes: Decimal | int | None = None,
) -> Price:
    """What one piece works out at. Raises ValueError as `needs_of` does."""
    needs = needs_of(piece, recipes, stems, bought, minutes)
    return price_of(costs_of(needs, rates_of(money)), price_rule_of(money))


def _bought(stem: Stem) -> Decimal:
    if stem.bought is None:
        raise ValueError(
            f"{in_quotes(stem.id)} has no `bought` price: write under `bought` what a bought stem "
            "costs you, or leave it out of what is bought in."
        )
    return stem.bought
