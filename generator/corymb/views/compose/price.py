"""How is a look's price put together, in each size, and how far is it from its guide price?"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from decimal import Decimal

from corymb.language import gettext as _
from corymb.language.locales import and_list
from corymb.ledger import kept
from corymb.studio.models import StudioFile
from corymb.studio.studio import Studio
from corymb.trade.looks import Look
from corymb.trade.money.costs import Costs, costs_of
from corymb.trade.money.from_order import asked_for
from corymb.trade.money.from_recipe import (
    minutes_of,
    needs_of,
    price_rule_of,
    rates_of,
    tax_rule_of,
)
from corymb.trade.money.guide import BesideGuide, beside_guide
from corymb.trade.money.margin import Standing
from corymb.trade.money.prices import Price, price_of
from corymb.trade.money.tax import taxed
from corymb.trade.order_lines import REGULAR, sizes_of
from corymb.trade.orders.pieces import Piece
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import size_words
from corymb.views.compose.wording import money, number, percent, price_guide, to_the_cent
from corymb.views.money import PriceStep, PriceView, SizePrice


@dataclass(frozen=True)
class Reckoned:
    """A piece's costs and its price, and what is asked for it."""

    piece: Piece
    costs: Costs
    price: Price
    asked: Standing
    """What is asked for it without tax, beside what it costs."""
    asked_shown: Decimal

    @property
    def beside(self) -> BesideGuide | None:
        """Beside its guide price, where it has one of its own."""
        is_regular = self.piece == self.piece.regular
        return beside_guide(self.piece.guide, self.price.shown) if is_regular else None


def reckoned(studio: Studio, piece: Piece, bought: Collection[str] = ()) -> Reckoned:
    """A piece's money; `bought` names stems that are bought in, with no change to what is asked."""
    house = studio.house.money
    needs = needs_of(piece, studio.recipes, studio.stems, bought)
    costs = costs_of(needs, rates_of(house))
    asked = asked_for(piece, studio.recipes, studio.stems, house)
    net = taxed(asked, tax_rule_of(house)).net
    price = price_of(costs, price_rule_of(house))
    return Reckoned(piece, costs, price, Standing(net, costs.total), asked)


@kept
def in_sizes(studio: Studio, look: Look) -> tuple[Reckoned, ...]:
    """A look in each of its recipe's sizes, the smallest first."""
    recipe = studio.recipes[look.recipe]
    pieces = [Piece(recipe, look, size) for size in sizes_of(recipe)]
    return tuple(reckoned(studio, piece) for piece in sorted(pieces, key=lambda p: p.scale))


def can_be_bought(piece: Piece, studio: Studio) -> frozenset[str]:
    """The stems of a piece that have a price to buy them at."""
    return frozenset(
        known_as for known_as in piece.counts if studio.stems[known_as].bought is not None
    )


def price_view(catalogue: Catalogue, look: Look) -> PriceView:
    """What staff see of a look's price."""
    studio, house = catalogue.studio, catalogue.studio.house
    sizes = in_sizes(studio, look)
    regular = next(each for each in sizes if each.piece.size == REGULAR)
    can = can_be_bought(regular.piece, studio)
    cannot = [studio.stems[each].name for each in regular.piece.counts if each not in can]
    not_bought = _("{stems} can’t be bought in.").format(stems=and_list(cannot))
    dearer = reckoned(studio, regular.piece, can) if can else None
    return PriceView(
        sizes=tuple(_size(each, size_words(each.piece.size), house) for each in sizes),
        bought=_size(dearer, _("regular, bought in"), house) if dearer else None,
        not_bought=not_bought if can and cannot else "",
        guide=price_guide(regular.piece.guide, house),
        beside=", ".join(
            filter(None, (money(regular.price.shown, house), beside_words(regular.beside, house)))
        ),
        steps=_steps(regular, minutes_of(regular.piece, studio.recipes), house),
    )


def beside_words(beside: BesideGuide | None, house: StudioFile) -> str:
    """How far a worked-out price is from its guide price: `€4 over the guide price`."""
    if beside is None:
        return ""
    if not beside.difference:
        return _("as the guide price")
    over = beside.difference > 0
    told = _("{amount} over the guide price") if over else _("{amount} under the guide price")
    return told.format(amount=money(abs(beside.difference), house))


def margin_words(standing: Standing, house: StudioFile) -> str:
    """What part of a price stays: `58 %`; empty where nothing is asked."""
    return "" if standing.margin is None else percent(standing.margin, house)


def labour_words(minutes: Decimal, house: StudioFile) -> str:
    """How labour is worked out: `20 min at €19 an hour`."""
    rate = money(house.money.hourly_rate, house)
    told = _("{minutes} min at {rate} an hour")
    return told.format(minutes=number(round(minutes), house), rate=rate)


def _size(of: Reckoned, name: str, house: StudioFile) -> SizePrice:
    return SizePrice(
        name,
        to_the_cent(of.costs.total, house),
        money(of.price.shown, house),
        money(of.asked_shown, house),
        to_the_cent(of.asked.left, house),
        margin_words(of.asked, house),
    )


def _steps(of: Reckoned, minutes: Decimal, house: StudioFile) -> tuple[PriceStep, ...]:
    """From the costs of a piece to its price, step by step; none where there is nothing."""
    costs, price, rates = of.costs, of.price, house.money
    ups = rates.mark_up
    waste = _("with {percent} waste").format(percent=percent(rates.waste.fraction, house))
    heads = (
        (_("Stems of our own"), waste, costs.grown + costs.waste_grown, ups.grown, price.grown),
        (_("Sundries"), "", costs.sundries, ups.sundries, price.sundries),
        (_("Labour"), labour_words(minutes, house), costs.labour, None, price.labour),
        (
            _("Overhead"),
            _("{percent} of all above").format(percent=percent(rates.overhead.fraction, house)),
            costs.overhead,
            None,
            price.overhead,
        ),
    )
    steps = [
        PriceStep(
            words,
            how,
            to_the_cent(cost, house),
            f"× {number(times, house)}" if times is not None else "",
            to_the_cent(amount, house),
            sum=False,
        )
        for words, how, cost, times, amount in heads
        if cost or amount
    ]
    return (*steps, *_to_the_price(of, house))


def _to_the_price(of: Reckoned, house: StudioFile) -> tuple[PriceStep, ...]:
    """From the sum of the heads to the price that is shown."""
    price, rates = of.price, house.money
    steps = [_plain(_("Together"), "", price.without_tax, house, to_the_cent(price.cost, house))]
    if rates.tax_in_prices:
        tax = price.unrounded - price.without_tax
        steps.append(_plain(_("Tax"), percent(rates.tax.fraction, house), tax, house))
    if price.rounding:
        next_ = money(rates.round_prices_to, house)
        how = _("to the next whole {amount}").format(amount=next_)
        steps.append(_plain(_("Rounded up"), how, price.rounding, house))
    on_top = _("and {percent} tax on top").format(percent=percent(rates.tax.fraction, house))
    how = "" if rates.tax_in_prices else on_top
    return (*steps, _plain(_("Works out at"), how, price.shown, house, sums=True))


def _plain(
    words: str,
    how: str,
    amount: Decimal,
    house: StudioFile,
    cost: str = "",
    *,
    sums: bool = False,
) -> PriceStep:
    return PriceStep(words, how, cost, "", to_the_cent(amount, house), sum=sums or bool(cost))
