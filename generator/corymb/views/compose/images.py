"""What shows a look: a photo that this audience may see, and its drawn picture."""

from __future__ import annotations

from corymb.language import ngettext
from corymb.language.locales import and_list
from corymb.ledger import kept
from corymb.photos import PhotoFile, PreparedPhoto
from corymb.studio.models import Photo
from corymb.trade.looks import Look
from corymb.views.compose import addresses
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.hazards import plant_of
from corymb.views.pieces import ImagePair, PhotoSource, PhotoView, PictureView


def photo_view(photo: Photo, prepared: PreparedPhoto) -> PhotoView:
    """A published photo; its sources from small to large."""
    return PhotoView(
        alt=photo.alt,
        credit=photo.credit,
        width_px=prepared.width,
        height_px=prepared.height,
        placeholder=prepared.placeholder,
        sources=tuple(_source(file) for file in reversed(prepared.files)),
        share_card=addresses.of_photo(prepared.share_card.name),
    )


def _source(file: PhotoFile) -> PhotoSource:
    return PhotoSource(addresses.of_photo(file.name), file.width, f"image/{file.format}")


def photos_of_look(catalogue: Catalogue, look: Look) -> tuple[PhotoView, ...]:
    """The look's photos, then those of made work that followed it; each once."""
    recipe = catalogue.studio.recipes[look.recipe]
    variant = recipe.variants.get(look.variant)
    own = catalogue.shown(variant.photos if variant else recipe.photos)
    made = [
        photo
        for piece in catalogue.made()
        if piece.recipe == look.recipe and (piece.variant or "") == look.variant
        for photo in catalogue.shown(piece.photos)
    ]
    each = {photo.file: photo for photo in reversed([*own, *made])}
    return tuple(
        photo_view(photo, catalogue.photos[photo.file])
        for photo in reversed(each.values())
        if photo.file in catalogue.photos
    )


def picture_view(catalogue: Catalogue, look: Look) -> PictureView:
    """The drawn picture of a look, described from its data."""
    drawing = catalogue.drawings[look.id]
    words = describe(catalogue, look)
    return PictureView(
        href=drawing.href,
        alt=words,
        width=drawing.width,
        height=drawing.height,
        share_card=drawing.card,
        small=drawing.small,
        small_wide=drawing.small_wide,
    )


def describe(catalogue: Catalogue, look: Look) -> str:
    """What a picture shows, for someone who can't see it."""
    recipe = catalogue.studio.recipes[look.recipe]
    by_size = sorted(look.lines, key=lambda line: -line.count)
    plants = dict.fromkeys(plant_of(catalogue.stem(line.stem)) for line in by_size)
    return ngettext(
        "Drawing of {name}: {number} stem, most of it {stems}.",
        "Drawing of {name}: {number} stems, most of it {stems}.",
        look.stems_total,
    ).format(name=recipe.name, number=look.stems_total, stems=and_list(list(plants)[:4]))


@kept
def images_of(catalogue: Catalogue, look: Look) -> ImagePair:
    """A look's first photo, if there is one, and its picture."""
    photos = photos_of_look(catalogue, look)
    return ImagePair(picture_view(catalogue, look), photos[0] if photos else None)
