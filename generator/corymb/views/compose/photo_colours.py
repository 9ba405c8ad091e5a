"""What does a photo show of its look's colours, in words and beside the look's own band?"""

from __future__ import annotations

from collections.abc import Iterable
from math import inf

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import and_list
from corymb.photos import PhotoColour, PreparedPhoto
from corymb.studio.models import MadeWork
from corymb.studio.studio import Studio
from corymb.trade.colour.areas import colour_areas
from corymb.trade.colour.likeness import Palette
from corymb.trade.colour.shown import FAR, LITTLE, Missing, PhotoColours, Shown, shown
from corymb.trade.colour.words import colour_word
from corymb.trade.looks import Look
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.trade_words import trade_word
from corymb.views.pages import PhotoBeside, PhotoColourView
from corymb.views.pieces import Patch

INDICATIVE = noted(
    "Indicative: wall, cloth and table are left out by their place in the photo, vessel and leaves "
    "are not, and every photo has light and shade."
)

HOW_FAR = (
    (9.0, noted("Close to the recipe's colours ({distance}, where 1 is just seen).")),
    (14.0, noted("Not far from the recipe's colours ({distance}, where 1 is just seen).")),
    (FAR, noted("Some way from the recipe's colours ({distance}, where 1 is just seen).")),
    (inf, noted("Far from the recipe's colours ({distance}, where 1 is just seen).")),
)
"""Up to which distance (CIEDE2000) which words hold. House values: the demo's photos of their own
recipes come out at 4 to 17, 12 in the middle."""

NAMED = 3
"""No more than so many parts are named, the largest first. House value, no source."""


def photos_beside(catalogue: Catalogue, made: MadeWork, look: Look) -> tuple[PhotoBeside, ...]:
    """Each photo of made work that this audience may see, beside its look."""
    beside = []
    for photo in catalogue.shown(made.photos):
        prepared = catalogue.photos[photo.file]
        found = shown_of(catalogue.studio, look, prepared)
        if found is not None:
            beside.append(
                PhotoBeside(
                    alt=photo.alt,
                    colours=_colours(prepared.flowers),
                    how_far=how_far(found),
                    lacking=lacking(catalogue.studio, found.missing),
                )
            )
    return tuple(beside)


def shown_of(studio: Studio, look: Look, photo: PreparedPhoto) -> Shown | None:
    """What a finished photo shows of a look; None where either has no colours."""
    areas = colour_areas(look.lines, studio.stems)
    if not photo.flowers or not areas:
        return None
    return shown(PhotoColours(_plain(photo.flowers), _plain(photo.palette)), areas)


def how_far(found: Shown) -> str:
    """`Not far from the recipe's colours (14; 1 is just seen).`"""
    words = next(words for end, words in HOW_FAR if found.apart <= end)
    return _(words).format(distance=round(found.apart))


def lacking(studio: Studio, missing: Iterable[Missing]) -> str:
    """`no plum (‘Smoke bush’ and ‘Scabious’) where the recipe has 30 %`; empty for none."""
    return and_list(
        _lacking(studio, part) for part in list(missing)[:NAMED] if part.share >= LITTLE
    )


def _lacking(studio: Studio, part: Missing) -> str:
    return _("no {colour} ({stems}) where the recipe has {share} %").format(
        colour=trade_word("colour", part.word),
        stems=and_list(_("‘{name}’").format(name=studio.stems[stem].name) for stem in part.stems),
        share=round(100 * part.share),
    )


def _plain(colours: Iterable[PhotoColour]) -> Palette:
    return tuple((each.hex, each.share) for each in colours)


def _colours(colours: Iterable[PhotoColour]) -> tuple[PhotoColourView, ...]:
    """Shades of one word together, with their sum."""
    parts = tuple(colours)
    whole = sum(each.share for each in parts)
    shades: dict[str, list[Patch]] = {}
    for each in parts:
        word = trade_word("colour", colour_word(each.hex))
        patch = Patch(word, each.hex, round(100 * each.share / whole, 2))
        shades.setdefault(word, []).append(patch)
    found = (
        PhotoColourView(word, round(sum(each.percent for each in patches), 2), tuple(patches))
        for word, patches in shades.items()
    )
    return tuple(sorted(found, key=lambda each: -each.percent))
