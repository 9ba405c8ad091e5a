"""Which photos do a studio's files name, and where?"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from pathlib import Path

from corymb.ledger import kept
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
    for kind, known_as in files_with_photos(studio):
        for photo, path in photos_in(studio, kind, known_as):
            yield photo, studio.sources[kind, known_as], path


def files_with_photos(studio: Studio) -> Iterator[tuple[str, str]]:
    """The kind and the id of every file that may name photos."""
    yield from (("recipe", recipe_id) for recipe_id in studio.recipes)
    yield from (("made", made_id) for made_id in studio.made)


@kept
def photos_in(
    studio: Studio, kind: str, known_as: str
) -> tuple[tuple[Photo, tuple[Step, ...]], ...]:
    """The photos that one file names, and where in it."""
    if kind == "made":
        return tuple((p, ("photos", i)) for i, p in enumerate(studio.made[known_as].photos))
    recipe = studio.recipes[known_as]
    return (
        *((photo, ("photos", i)) for i, photo in enumerate(recipe.photos)),
        *(
            (photo, ("variants", variant_id, "photos", i))
            for variant_id, variant in recipe.variants.items()
            for i, photo in enumerate(variant.photos)
        ),
    )
