"""A recipe's sizes: how many stems each has, how large it is, and all of them in one picture."""

from __future__ import annotations

from decimal import Decimal

from corymb.language import gettext as _
from corymb.studio.models import Recipe, StudioFile
from corymb.trade.known_object import known_line_cm
from corymb.trade.looks import Look, sized
from corymb.trade.order_lines import REGULAR
from corymb.trade.sizes import piece_size
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.lengths import length_words
from corymb.views.compose.trade_words import size_words
from corymb.views.pieces import SizesPicture
from corymb.views.recipe import SizeView

WHOLE_FROM_CM = 10  # what is smaller is told in halves


def in_order(recipe: Recipe, look: Look) -> list[str]:
    """The sizes of a recipe, the regular one with them, from few stems to many.

    Of two with as many stems the smaller one comes first.
    """
    return sorted(
        (REGULAR, *recipe.sizes),
        key=lambda size: (sum(_counts(recipe, look, size)), _factor(recipe, size)),
    )


def size_views(recipe: Recipe, look: Look, house: StudioFile) -> tuple[SizeView, ...]:
    """Each size of a look, from few stems to many."""
    return tuple(_size_view(recipe, look, size, house) for size in in_order(recipe, look))


def sizes_picture(catalogue: Catalogue, recipe: Recipe, look: Look) -> SizesPicture | None:
    """A recipe's sizes side by side; none for a variant, or where there is the one size alone."""
    drawing = None if look.variant else catalogue.sizes.get(recipe.id)
    if drawing is None:
        return None
    known = catalogue.style_of(recipe).known_object
    return SizesPicture(
        drawing.href,
        side_by_side_words(recipe),
        drawing.width,
        drawing.height,
        small=drawing.small,
        line=known if known_line_cm(known, recipe) else "",
    )


def side_by_side_words(recipe: Recipe) -> str:
    """What the picture of a recipe's sizes shows."""
    told = _("Drawing of {name} in each of its sizes, side by side and at one scale.")
    return told.format(name=recipe.name)


def _size_view(recipe: Recipe, look: Look, size: str, house: StudioFile) -> SizeView:
    counts = _counts(recipe, look, size)
    large = piece_size(recipe, recipe.sizes.get(size))
    return SizeView(
        name=size_words(size),
        total=sum(counts),
        counts=tuple(counts),
        across=length_words(told_cm(large.across_cm, size), house),
        high=length_words(told_cm(large.high_cm, size), house),
    )


def told_cm(cm: float, size: str) -> float:
    """A length of a piece: as written for the regular size, and for others about so much."""
    if size == REGULAR:
        return cm
    return round(cm) if cm >= WHOLE_FROM_CM else round(2 * cm) / 2


def _counts(recipe: Recipe, look: Look, size: str) -> list[int]:
    return sized(look, recipe.sizes.get(size))


def _factor(recipe: Recipe, size: str) -> Decimal:
    scale = recipe.sizes.get(size)
    return scale.factor if scale else Decimal(1)
