"""How long is what a style's sizes are compared with, `a half-litre jug, 16 cm high`?

A drawing of the sizes has a line of that length. It gives none where the words name no length, or
one that is so long beside the pieces that they would be drawn small for it.
"""

from __future__ import annotations

import re

from corymb.studio.models import Recipe
from corymb.studio.values.length import parse_length
from corymb.trade.sizes import piece_size

LENGTH = re.compile(r"\d+(?:[.,]\d+)?\s*(?:mm|cm|m|inches|inch|in|feet|foot|ft)\b")

AT_MOST = 1.25
"""So many times the largest piece's longer side: our own choice, no source."""


def known_line_cm(known_object: str, recipe: Recipe) -> float | None:
    """The length to draw beside a recipe's sizes; the first one that the words name."""
    cm = _named_cm(known_object)
    sizes = [piece_size(recipe, scale) for scale in (None, *recipe.sizes.values())]
    longest = max(max(size.across_cm, size.high_cm) for size in sizes)
    return cm if 0 < cm <= AT_MOST * longest else None


def _named_cm(words: str) -> float:
    """The first length of a sentence; 0 where there is none."""
    found = LENGTH.search(words)
    try:
        return parse_length(found[0].replace(",", ".")).cm if found else 0.0
    except ValueError:  # longer than anything in a studio
        return 0.0
