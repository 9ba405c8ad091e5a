"""Which look and which size does a line of an order, or of a style link, ask for?

In the short form (`6 hedgerow-jar, small`) a single word may be a variant or a size; the recipe
decides, and its variants come first.
"""

from __future__ import annotations

from corymb.studio.models import Recipe

REGULAR = "regular"


def variant_and_size(recipe: Recipe, variant: str | None, size: str | None) -> tuple[str, str]:
    """The variant ('' for the recipe itself) and the size (`regular` unless told)."""
    is_size = variant not in recipe.variants and variant in sizes_of(recipe)
    if variant is not None and size is None and is_size:
        return "", variant
    return variant or "", size or REGULAR


def sizes_of(recipe: Recipe) -> tuple[str, ...]:
    """The names of a recipe's sizes; `regular` is always one."""
    return (REGULAR, *(name for name in recipe.sizes if name != REGULAR))
