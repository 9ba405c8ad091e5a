"""The price list: what is made, in which sizes, from how much on, and when; safe to hand over.

It is made of what clients may see, whoever prints it. The regular size has the guide price that
clients read; another is in proportion to it, as a style link has it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from corymb.language import gettext as _
from corymb.language.locales import date_words
from corymb.ledger import kept
from corymb.studio.models import Recipe, StudioFile
from corymb.trade.looks import Look
from corymb.trade.orders.pieces import Piece
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.link_look import price_words
from corymb.views.compose.seasons import season_of_look
from corymb.views.compose.sizes import in_order, size_views
from corymb.views.compose.wording import percent
from corymb.views.pieces import Link
from corymb.views.prices import PricedRecipe, PricedSize, PricedStyle, PriceListView


def price_list_view(catalogue: Catalogue) -> PriceListView:
    """Every arrangement that clients may see, by style."""
    clients = replace(catalogue, audience="clients")
    by_style: dict[str, list[PricedRecipe]] = {}
    for recipe in clients.recipes():
        by_style.setdefault(recipe.style, []).append(_recipe(clients, recipe.id))
    house = catalogue.studio.house
    return PriceListView(
        as_of=date_words(catalogue.today),
        styles=tuple(
            PricedStyle(house.styles[each].plural, house.styles[each].about, tuple(found))
            for each, found in by_style.items()
        ),
        tax=tax_words(house, percent(house.money.tax.fraction, house)),
    )


def tax_words(house: StudioFile, rate: str = "") -> str:
    """Whether tax is in the prices or on top of them; with its rate where that is told."""
    if house.money.tax_in_prices:
        told = _("Tax is in the prices ({rate}).") if rate else _("Tax is in the prices.")
    else:
        told = _("Tax ({rate}) comes on top.") if rate else _("Tax comes on top.")
    return told.format(rate=rate)


@kept
def _recipe(clients: Catalogue, recipe_id: str) -> PricedRecipe:
    recipe, look = clients.studio.recipes[recipe_id], clients.looks[recipe_id][""]
    season = season_of_look(clients, look)
    said = (season.sentence, season.variant_sentence, season.swaps_sentence)
    return PricedRecipe(
        look=Link(recipe.name, addresses.of_look(look)),
        summary=recipe.summary,
        season=" ".join(filter(None, said)),
        sizes=tuple(_sizes(clients, recipe, look)),
    )


def _sizes(clients: Catalogue, recipe: Recipe, look: Look) -> Iterator[PricedSize]:
    views = size_views(recipe, look, clients.studio.house)
    for size, view in zip(in_order(recipe, look), views, strict=True):
        price = price_words(clients, Piece(recipe, look, size))
        yield PricedSize(view.name, view.across, view.high, view.total, price)
