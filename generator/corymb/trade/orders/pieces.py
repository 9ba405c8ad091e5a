"""What does one line of an order ask for: which look, in which size, and how does it leave?"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from decimal import Decimal

from corymb.language import gettext as _
from corymb.studio.models import Recipe
from corymb.studio.models.order import OrderLine
from corymb.studio.values.money import PriceGuide
from corymb.trade.looks import Look, guide_of, looks_of, sized
from corymb.trade.order_lines import REGULAR, variant_and_size


@dataclass(frozen=True)
class Piece:
    """A look in a size, and how it leaves the studio."""

    recipe: Recipe
    look: Look
    size: str = REGULAR
    in_buckets: bool = False
    from_the_mix: bool = False

    @property
    def scale(self) -> Decimal:
        """How many times the regular size."""
        scale = self.recipe.sizes.get(self.size)
        return scale.factor if scale else Decimal(1)

    @property
    def counts(self) -> dict[str, int]:
        """Whole stems that are cut for one of it, by stem."""
        counts: dict[str, int] = {}
        if not self.from_the_mix:
            scaled = sized(self.look, self.recipe.sizes.get(self.size))
            for line, count in zip(self.look.lines, scaled, strict=True):
                counts[line.stem] = counts.get(line.stem, 0) + count
        return counts

    @property
    def regular(self) -> Piece:
        """The same look as its guide price is for: in the regular size, made up."""
        return Piece(self.recipe, self.look)

    @property
    def guide(self) -> PriceGuide | None:
        """The guide price of the look that clients read, for its regular piece."""
        return guide_of(self.recipe, self.look.variant)


Several = tuple[int, Piece]
"""So many of one piece."""


class Pieces:
    """The pieces of a studio's order lines; the looks of a recipe are worked out once."""

    def __init__(self, recipes: Mapping[str, Recipe]) -> None:
        self._recipes = recipes
        self._looks: dict[str, dict[str, Look]] = {}

    def of(self, line: OrderLine) -> Piece:
        """What one line of an order asks for. Raises KeyError when there is no such look."""
        recipe = self._recipes[line.recipe]
        if recipe.id not in self._looks:
            self._looks[recipe.id] = looks_of(recipe, self._recipes)
        variant, size = variant_and_size(recipe, line.variant, line.size)
        look = self._looks[recipe.id][variant]
        return Piece(recipe, look, size, line.in_buckets, line.from_the_mix)


def piece_of(line: OrderLine, recipes: Mapping[str, Recipe]) -> Piece:
    """The piece of one line, where no other is asked for. Raises KeyError as `Pieces`."""
    return Pieces(recipes).of(line)


def words_of(piece: Piece) -> str:
    """A piece in a quote's words: `Hedgerow jar, Later in the year, small, in buckets`."""
    variant = piece.recipe.variants.get(piece.look.variant)
    words = [
        piece.recipe.name,
        variant.name if variant else "",
        piece.size if piece.size != REGULAR else "",
        _("in buckets") if piece.in_buckets else "",
        _("from the mix") if piece.from_the_mix else "",
    ]
    return ", ".join(word for word in words if word)


def counts_of(several: Iterable[Several]) -> dict[str, int]:
    """Whole stems that all of them ask for, by stem, without spare."""
    counts: dict[str, int] = {}
    for quantity, piece in several:
        for known_as, count in piece.counts.items():
            counts[known_as] = counts.get(known_as, 0) + count * quantity
    return counts
