"""How does a look become what the picture is drawn from? Plain values, nothing else."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from corymb.picture import Arrangement, PictureStem, Vessel
from corymb.studio.models import Recipe, Stem
from corymb.trade.apportion import apportion
from corymb.trade.colour.areas import visible_area
from corymb.trade.looks import Look, name_of

PLAIN_WALL = "#f4efe6"

MOST_DRAWN = 200
"""Stems in a picture. More can't be told apart in it, and each is pushed aside by every other."""

MOST_HEADS_DRAWN = 30
"""Heads on one stem of a picture: more of them are a haze."""


def arrangement_of(
    recipe: Recipe, look: Look, stems: Mapping[str, Stem], lengths_in: str = "cm"
) -> Arrangement:
    """A look ready to be drawn, in the recipe's own size."""
    vessel = recipe.vessel
    variant = recipe.variants.get(look.variant)
    return Arrangement(
        id=look.id,
        style=recipe.style,
        vessel=Vessel(
            vessel.kind,
            vessel.name,
            vessel.across.cm if vessel.across else None,
            vessel.high.cm if vessel.high else None,
        ),
        across_cm=recipe.across.cm,
        high_cm=recipe.high.cm,
        stems=tuple(
            replace(
                picture_stem(line.stem, stems[line.stem], count, line.use, line.role),
                shows_cm2=visible_area(stems[line.stem], line.room),
            )
            for line, count in zip(look.lines, drawn_counts(look), strict=True)
        ),
        background=recipe.against.hex if recipe.against else PLAIN_WALL,
        name=name_of(recipe, look.variant),
        description=variant.about if variant else recipe.summary,
        lengths_in=lengths_in,
    )


def drawn_counts(look: Look) -> list[int]:
    """How many of each line are drawn: all of them, up to what a picture can hold.

    Of more, as many as that, shared out as in the piece; nothing is left out altogether.
    """
    counts = [line.count for line in look.lines]
    if sum(counts) <= MOST_DRAWN:
        return counts
    return [max(1, count) for count in apportion(MOST_DRAWN, counts)]


def picture_stem(
    stem_id: str, stem: Stem, count: int = 1, use: str | None = None, role: str = "light"
) -> PictureStem:
    """So many stems of one material, with what shows of them."""
    return PictureStem(
        id=stem_id,
        count=count,
        form=stem.form,
        use=use or stem.use,
        role=role,
        colours=tuple((part.hex, float(part.share or 0)) for part in stem.colours),
        green=stem.green,
        head_cm=stem.head.cm,
        head_length_cm=stem.head_length.cm if stem.head_length else None,
        heads_per_stem=min(stem.heads_per_stem, MOST_HEADS_DRAWN),
        length_cm=(stem.length.shortest_cm + stem.length.longest_cm) / 2,
        name=stem.name,
    )
