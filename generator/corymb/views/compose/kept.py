"""What can a client keep, and how does it stand in their list?"""

from __future__ import annotations

from corymb.trade.looks import Look, guide_of
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import images_of
from corymb.views.compose.lengths import length_words
from corymb.views.compose.seasons import season_of_look
from corymb.views.compose.wording import price_guide
from corymb.views.kept import KeptLook, KeptView


def kept_view(catalogue: Catalogue) -> KeptView:
    """Every look this audience may see; which of them were kept is known to the phone alone."""
    return KeptView(
        tuple(
            _look(catalogue, look) for looks in catalogue.looks.values() for look in looks.values()
        )
    )


def _look(catalogue: Catalogue, look: Look) -> KeptLook:
    house, recipe = catalogue.studio.house, catalogue.studio.recipes[look.recipe]
    variant = recipe.variants.get(look.variant)
    return KeptLook(
        id=look.id,
        words=f"{recipe.name}, {variant.name}" if variant else recipe.name,
        href=addresses.of_look(look),
        image=images_of(catalogue, look),
        across=length_words(recipe.across, house),
        price=price_guide(guide_of(recipe, look.variant), house),
        season=season_of_look(catalogue, look).sentence,
    )
