"""Made work's views: the portfolio, and a page for each piece."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.studio.models import MadeWork
from corymb.views.compose import addresses
from corymb.views.compose.bands import band_of
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.images import photo_view
from corymb.views.compose.photo_colours import INDICATIVE, photos_beside
from corymb.views.compose.recipes import card_of
from corymb.views.compose.wording import month_and_year
from corymb.views.pages import MadeCard, MadeListView, MadeView, StaffMade
from corymb.views.pieces import PhotoView


def made_list_view(catalogue: Catalogue) -> MadeListView:
    """The portfolio, newest first."""
    return MadeListView(made_cards(catalogue))


def made_cards(catalogue: Catalogue) -> tuple[MadeCard, ...]:
    """Every piece of made work this audience may see, newest first."""
    return tuple(
        MadeCard(
            title=made.title,
            href=addresses.of_made(made.id),
            when=month_and_year(made.date),
            photo=_photos(catalogue, made)[0],
            recipe_name=catalogue.studio.recipes[made.recipe].name,
        )
        for made in catalogue.made()
    )


def made_view(catalogue: Catalogue, made: MadeWork) -> MadeView:
    """The page of a piece of made work."""
    recipe = catalogue.studio.recipes[made.recipe]
    client = MadeView(
        title=made.title,
        when=month_and_year(made.date),
        about=made.about,
        photos=_photos(catalogue, made),
        recipe=card_of(catalogue, recipe, made.variant or ""),
        variant_name=recipe.variants[made.variant].name if made.variant else "",
    )
    if not catalogue.staff:
        return client
    look = catalogue.looks[made.recipe][made.variant or ""]
    return StaffMade(
        **vars(client),
        client=made.client,
        notes=made.notes,
        band=band_of(catalogue, look),
        beside=photos_beside(catalogue, made, look),
        indicative=_(INDICATIVE),
    )


def _photos(catalogue: Catalogue, made: MadeWork) -> tuple[PhotoView, ...]:
    return tuple(
        photo_view(photo, catalogue.photos[photo.file]) for photo in catalogue.shown(made.photos)
    )
