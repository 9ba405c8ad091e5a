"""Which looks have a share card and small pictures of their own, and where is the card?"""

from __future__ import annotations

import hashlib

from corymb.site import raster
from corymb.studio.models import Photo
from corymb.studio.studio import Studio
from corymb.trade.looks import Look
from corymb.views.compose import addresses

PICTURE_DIGITS = 8
"""Of a picture's digest in its card's address: messengers keep a card for as long as it is called
the same."""


def card_address(look: Look, svg: str) -> str:
    """Where a look's card is published, by the drawing that it is made from."""
    made_of = f"{raster.made_by()} {svg}".encode()
    return addresses.of_card(look, hashlib.sha256(made_of).hexdigest()[:PICTURE_DIGITS])


def needs_card(studio: Studio, look: Look) -> bool:
    """Whether clients may see the look and no photo of it."""
    recipe = studio.recipes[look.recipe]
    variant = recipe.variants.get(look.variant)
    if recipe.draft or (variant and variant.draft):
        return False
    photos: list[Photo] = [*(variant.photos if variant else recipe.photos)]
    for made in studio.made.values():
        if (made.recipe, made.variant or "") == (look.recipe, look.variant):
            photos += made.photos
    return not any(photo.may_be_shown_to == "clients" for photo in photos)
