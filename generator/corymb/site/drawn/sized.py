"""How large is a look in another size than the regular one, and what stands in it?"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from corymb.picture import Arrangement
from corymb.site.drawn.pictured import arrangement_of
from corymb.studio.models import Recipe, Stem
from corymb.trade.looks import Look, sized
from corymb.trade.order_lines import REGULAR
from corymb.trade.sizes import piece_size
from corymb.views.compose.sizes import in_order


def arrangement_in_size(
    recipe: Recipe, look: Look, size: str, stems: Mapping[str, Stem], lengths_in: str = "cm"
) -> Arrangement:
    """A look ready to be drawn with the lines it has, as large as it is in one of its sizes."""
    large = piece_size(recipe, recipe.sizes.get(size))
    regular = arrangement_of(recipe, look, stems, lengths_in)
    return replace(
        regular,
        across_cm=large.across_cm,
        high_cm=large.high_cm,
        vessel=replace(regular.vessel, across_cm=large.vessel_across_cm),
    )


def arrangements_by_size(
    recipe: Recipe, look: Look, stems: Mapping[str, Stem]
) -> tuple[Arrangement, ...]:
    """A look in each of its recipe's sizes, from few stems to many; each with an id of its own."""
    found = []
    for size in in_order(recipe, look):
        counts = sized(look, recipe.sizes.get(size))
        lines = [replace(line, count=count) for line, count in zip(look.lines, counts, strict=True)]
        inside = replace(look, lines=tuple(line for line in lines if line.count))
        drawn = arrangement_in_size(recipe, inside, size, stems)
        found.append(drawn if size == REGULAR else replace(drawn, id=f"{drawn.id}-{size}"))
    return tuple(found)
