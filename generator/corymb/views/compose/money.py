"""What pages show of an order's money: the quote for the client, and all of it for staff."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from corymb.language import gettext as _
from corymb.studio.models import StudioFile
from corymb.trade.money.costs import Costs
from corymb.trade.money.margin import Standing
from corymb.trade.money.quote import Quote
from corymb.trade.orders.due import Due
from corymb.trade.orders.gathered import gathered
from corymb.trade.orders.paid import Gathered, Paid, PaidLine, paid
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.price import beside_words, labour_words, margin_words
from corymb.views.compose.wording import money, percent, to_the_cent
from corymb.views.money import (
    MoneyLine,
    MoneyRow,
    MoneyView,
    QuoteLineView,
    QuoteView,
    StageView,
)


def money_view(catalogue: Catalogue, due: Due, cut: Gathered | None = None) -> MoneyView:
    """An order's costs, price and margin; where its cut is planned, what swaps and spare did."""
    house = catalogue.studio.house
    reckoned = paid(due, catalogue.studio, cut or _planned(catalogue, due))
    standing = reckoned.standing
    return MoneyView(
        quote=_quote(reckoned.quote, house),
        lines=tuple(_line(line, house) for line in reckoned.lines),
        costs=cost_rows(reckoned.costs, reckoned.minutes, house),
        cost=to_the_cent(standing.cost, house),
        net=to_the_cent(standing.net, house),
        left=to_the_cent(standing.left, house),
        margin=margin_words(standing, house),
        stages=tuple(_stages(reckoned, house)),
        told=tuple(_told(reckoned, house)),
    )


def _planned(catalogue: Catalogue, due: Due) -> Gathered | None:
    """What the planned cut brings for an order that is still to come."""
    if due.day < catalogue.today:
        return None
    days = (day for day in catalogue.cut_days if any(each.id == due.id for each in day.dues))
    return next((gathered(day, due) for day in days), None)


def cost_rows(costs: Costs, minutes: Decimal, house: StudioFile) -> tuple[MoneyRow, ...]:
    """What it costs head by head, each with how it is worked out; nothing where there is none."""
    waste = percent(house.money.waste.fraction, house)
    overhead = percent(house.money.overhead.fraction, house)
    rows = (
        (_("Stems of our own"), "", costs.grown),
        (_("Stems bought in"), "", costs.bought),
        (
            _("Waste"),
            _("{percent} of the stems cut").format(percent=waste),
            costs.waste_grown + costs.waste_bought,
        ),
        (_("Sundries"), "", costs.sundries),
        (_("Labour"), labour_words(minutes, house), costs.labour),
        (_("Overhead"), _("{percent} of all above").format(percent=overhead), costs.overhead),
    )
    return tuple(
        MoneyRow(words, how, to_the_cent(amount, house)) for words, how, amount in rows if amount
    )


def _quote(quote: Quote, house: StudioFile) -> QuoteView:
    lines = (
        QuoteLineView(
            line.quantity, line.words, money(line.each, house), to_the_cent(line.total, house)
        )
        for line in quote.lines
    )
    tax = _("tax in it, {percent}") if quote.tax_in_prices else _("tax on top, {percent}")
    return QuoteView(
        tuple(lines),
        to_the_cent(quote.taxed.net, house),
        to_the_cent(quote.taxed.tax, house),
        tax.format(percent=percent(house.money.tax.fraction, house)),
        to_the_cent(quote.to_pay, house),
    )


def _line(line: PaidLine, house: StudioFile) -> MoneyLine:
    return MoneyLine(
        line.quoted.quantity,
        line.quoted.words,
        to_the_cent(line.price.cost, house),
        money(line.price.shown, house),
        money(line.quoted.each, house),
        beside_words(line.guide, house),
    )


def _stages(reckoned: Paid, house: StudioFile) -> Iterator[StageView]:
    stages: dict[str, Standing | None] = {_("As written"): reckoned.written}
    if reckoned.change:
        stages |= {
            _("With swaps"): reckoned.change.swapped,
            _("As cut"): reckoned.change.after,
        }
    stages[_("As made")] = reckoned.made
    for words, standing in stages.items():
        if standing:
            cost, left = to_the_cent(standing.cost, house), to_the_cent(standing.left, house)
            yield StageView(words, cost, left, margin_words(standing, house))


def _told(reckoned: Paid, house: StudioFile) -> Iterator[str]:
    if reckoned.change:
        yield _by_swaps(reckoned.change.by_swaps).format(
            amount=to_the_cent(abs(reckoned.change.by_swaps), house)
        )
        yield _by_spare(reckoned.change.by_spare).format(
            amount=to_the_cent(abs(reckoned.change.by_spare), house)
        )
    if reckoned.made:
        yield _took(reckoned.written.left - reckoned.made.left, house)


def _took(more: Decimal, house: StudioFile) -> str:
    if not more:
        return _("It took just what was written.")
    amount = to_the_cent(abs(more), house)
    if more > 0:
        return _("It took {amount} more than was written.").format(amount=amount)
    return _("It took {amount} less than was written.").format(amount=amount)


def _by_swaps(left: Decimal) -> str:
    if not left:
        return _("The swaps changed nothing.")
    return _("The swaps left {amount} more.") if left > 0 else _("The swaps cost {amount}.")


def _by_spare(left: Decimal) -> str:
    if not left:
        return _("Spare and round bunches changed nothing.")
    if left > 0:
        return _("Spare and round bunches left {amount} more.")
    return _("Spare and round bunches cost {amount}.")
