"""Which photos do a studio's files name, and where?"""

from __future__ import annotations

from collections.abc import Iterator

from corymb.studio.models import Photo
from corymb.studio.studio import Source, Step, Studio


def photos_of(studio: Studio) -> Iterator[tuple[Photo, Source, tuple[Step, ...]]]:
    """Every photo that a recipe, a variant or a piece of made work names, and where."""
    for recipe_id, recipe in studio.recipes.items():
        source = studio.sources["recipe", recipe_id]
        for i, photo in enumerate(recipe.photos):
            yield photo, source, ("photos", i)
        for variant_id, variant in recipe.variants.items():
            for i, photo in enumerate(variant.photos):
                yield photo, source, ("variants", variant_id, "photos", i)
    for made_id, made in studio.made.items():
        for i, photo in enumerate(made.photos):
            yield photo, studio.sources["made", made_id], ("photos", i)
