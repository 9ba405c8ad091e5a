"""What does each recipe, variant and size cost and sell for? A table for spreadsheets, for staff.

Amounts are in the studio's money, a piece each. `asked` is what a quote asks for it; `left` is
what stays of that without tax and costs, and the margin its part.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from corymb.language import gettext as _
from corymb.language import noted
from corymb.ledger import kept
from corymb.studio.models import Variant
from corymb.studio.studio import Studio
from corymb.trade.money.coins import places_of
from corymb.trade.money.from_recipe import minutes_of
from corymb.trade.money.rounding import half_up
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.price import Reckoned, can_be_bought, in_sizes, reckoned
from corymb.views.compose.trade_words import size_words
from corymb.views.table import Cell, Table


@dataclass(frozen=True)
class _Row:
    """A piece, and the same with every stem bought in that can be."""

    studio: Studio
    of: Reckoned
    bought: Reckoned

    @property
    def variant(self) -> Variant | None:
        """The variant it is, where it is one."""
        return self.of.piece.recipe.variants.get(self.of.piece.look.variant)


WORDS: dict[str, Callable[[_Row], Cell]] = {
    noted("style"): lambda row: row.studio.house.styles[row.of.piece.recipe.style].name,
    noted("recipe"): lambda row: row.of.piece.recipe.name,
    noted("variant"): lambda row: row.variant.name if row.variant else "",
    noted("size"): lambda row: size_words(row.of.piece.size),
    noted("draft"): lambda row: _("draft") if _is_draft(row) else "",
    noted("stems"): lambda row: sum(row.of.piece.counts.values()),
    noted("minutes"): lambda row: _tenth(minutes_of(row.of.piece, row.studio.recipes)),
}
AMOUNTS: dict[str, Callable[[_Row], Decimal | None]] = {
    noted("stems grown"): lambda row: row.of.costs.grown,
    noted("waste"): lambda row: row.of.costs.waste_grown,
    noted("sundries"): lambda row: row.of.costs.sundries,
    noted("labour"): lambda row: row.of.costs.labour,
    noted("overhead"): lambda row: row.of.costs.overhead,
    noted("cost"): lambda row: row.of.costs.total,
    noted("works out at"): lambda row: row.of.price.shown,
    noted("guide price"): lambda row: row.of.beside.guide.amount if row.of.beside else None,
    noted("over guide price"): lambda row: row.of.beside.difference if row.of.beside else None,
    noted("asked"): lambda row: row.of.asked_shown,
    noted("asked without tax"): lambda row: row.of.asked.net,
    noted("left"): lambda row: row.of.asked.left,
    noted("cost if bought in"): lambda row: row.bought.costs.total,
    noted("works out at if bought in"): lambda row: row.bought.price.shown,
}


def costs_table(catalogue: Catalogue) -> Table:
    """Every look in every size, by style and name as in the menus."""
    currency = catalogue.studio.house.money.currency
    return Table(
        (*map(_, WORDS), *(f"{_(name)} ({currency})" for name in AMOUNTS), _("margin (%)")),
        tuple(cells for recipe in catalogue.recipes() for cells in _cells(catalogue, recipe.id)),
    )


@kept
def _cells(catalogue: Catalogue, recipe_id: str) -> tuple[tuple[Cell, ...], ...]:
    places = places_of(catalogue.studio.house.money.currency)
    return tuple(
        (
            *(word(row) for word in WORDS.values()),
            *(_amount(amount(row), places) for amount in AMOUNTS.values()),
            _margin(row),
        )
        for row in _rows(catalogue, recipe_id)
    )


def _rows(catalogue: Catalogue, recipe_id: str) -> Iterator[_Row]:
    studio = catalogue.studio
    for look in catalogue.looks[recipe_id].values():
        for of in in_sizes(studio, look):
            bought = reckoned(studio, of.piece, can_be_bought(of.piece, studio))
            yield _Row(studio, of, bought)


def _is_draft(row: _Row) -> bool:
    return row.of.piece.recipe.draft or bool(row.variant and row.variant.draft)


def _amount(amount: Decimal | None, places: int) -> Cell:
    return None if amount is None else half_up(amount, places)


def _margin(row: _Row) -> Cell:
    return None if row.of.asked.margin is None else _tenth(row.of.asked.margin * 100)


def _tenth(number: Decimal) -> Decimal:
    return half_up(number, 1)
