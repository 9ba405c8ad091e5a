"""Which photos do a studio's files name, and where?"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from pathlib import Path

from corymb.studio.models import Photo
from corymb.studio.studio import Source, Step, Studio


def photo_path(folder: Path, written: str) -> Path:
    """Where a photo lies that is written so in a file.

    Some machines write a letter and its accent as two characters, most as one. To whoever reads
    them the names are the same, and so they are here (Unicode's forms NFD and NFC).
    """
    path = folder / written
    try:
        if path.exists() or not path.parent.is_dir():
            return path
        alike = [each for each in path.parent.iterdir() if _as_one(each.name) == _as_one(path.name)]
    except (OSError, ValueError):  # no name at all, or a folder that can't be read: told elsewhere
        return path
    return min(alike, default=path)


def _as_one(name: str) -> str:
    return unicodedata.normalize("NFC", name)


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
