"""Does every photo show the look that it is said to be of?

Only a build asks this, where every photo is opened anyhow and its colours are kept with it:
`corymb check` reads no more of a photo than its first few bytes, and stays quick.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from corymb.photos import PreparedPhoto
from corymb.studio.models import Photo
from corymb.studio.problems import Problem
from corymb.studio.studio import Source, Step, Studio
from corymb.trade.colour.shown import FAR, Shown
from corymb.trade.looks import Look, looks_of, name_of
from corymb.views.compose.photo_colours import lacking, shown_of

Pictured = tuple[str, str, Photo, Source, tuple[Step, ...]]
"""The recipe and the variant that a photo is of, the photo, and where it is named."""


def unlike_their_looks(studio: Studio, photos: Mapping[str, PreparedPhoto]) -> list[Problem]:
    """Advice on every photo that lacks much of what its recipe or variant says, or is far from it.

    `photos` are the finished ones, by what is written in the studio's files. The studio must be
    free of errors.
    """
    most = float(studio.house.colour.photo_lacks_above.fraction)
    problems = []
    for recipe_id, variant_id, photo, source, path in _pictured(studio):
        if photo.file not in photos:
            continue
        look = looks_of(studio.recipes[recipe_id], studio.recipes)[variant_id]
        found = shown_of(studio, look, photos[photo.file])
        if found is None or (found.missing_share <= most and found.apart <= FAR):
            continue
        lacks = lacking(studio, found.missing) if found.missing_share > most else ""
        message = _in_words(studio, look, found, lacks)
        problems.append(source.problem(message, *path, "file", advice=True))
    return sorted(problems)


def _in_words(studio: Studio, look: Look, found: Shown, lacks: str) -> str:
    name = name_of(studio.recipes[look.recipe], look.variant)
    far = f"its colours are far from the recipe's ({found.apart:.0f}, where 1 is just seen)"
    return (
        f"This photo doesn't show much of what ‘{name}’ says: {lacks or far}. If it shows another "
        "recipe or variant, name that one. (By its colours alone, which is a guess.)"
    )


def _pictured(studio: Studio) -> Iterator[Pictured]:
    for recipe in studio.recipes.values():
        source = studio.sources["recipe", recipe.id]
        for i, photo in enumerate(recipe.photos):
            yield recipe.id, "", photo, source, ("photos", i)
        for variant_id, variant in recipe.variants.items():
            for i, photo in enumerate(variant.photos):
                yield recipe.id, variant_id, photo, source, ("variants", variant_id, "photos", i)
    for made in studio.made.values():
        for i, photo in enumerate(made.photos):
            source = studio.sources["made", made.id]
            yield made.recipe, made.variant or "", photo, source, ("photos", i)
