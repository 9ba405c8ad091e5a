"""What the price list shows, to be handed to clients."""

from __future__ import annotations

from dataclasses import dataclass

from corymb.views.pieces import Link


@dataclass(frozen=True)
class PricedSize:
    """An arrangement in one size, and what is asked for it."""

    name: str
    across: str  # '16 cm'
    high: str
    stems: int
    price: str  # 'from €28', or '' where clients read none


@dataclass(frozen=True)
class PricedRecipe:
    """An arrangement, when it can be made, and its sizes from small to large."""

    look: Link
    summary: str
    season: str
    sizes: tuple[PricedSize, ...]


@dataclass(frozen=True)
class PricedStyle:
    """A style and its arrangements."""

    name: str
    about: str
    recipes: tuple[PricedRecipe, ...]


@dataclass(frozen=True)
class PriceListView:
    """All that clients may see of what is made, with its prices."""

    as_of: str  # '16 September 2026'
    styles: tuple[PricedStyle, ...]
    tax: str  # 'Tax is in the prices (13.5 %).'
