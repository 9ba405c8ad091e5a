"""All arrangements, each style, and each recipe with its variants."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from corymb.language import gettext as _
from corymb.ledger import kept
from corymb.site import structured_data
from corymb.site.pages.page import Making, Page, Planned, Share
from corymb.trade.looks import Look
from corymb.views.compose import addresses, lists
from corymb.views.compose.bands import words_of
from corymb.views.compose.recipes import recipe_view
from corymb.views.compose.tint import tint_of
from corymb.views.compose.trade_words import trade_word
from corymb.views.pieces import Link
from corymb.views.recipe import ClientRecipe, RecipeCard

SECTION = "arrangements"


def pages(making: Making) -> Iterator[Planned]:
    """The list, the styles, and every look this audience may see."""
    yield Planned.of(_all)
    for style in lists.styles_shown(making.catalogue):
        yield Planned.of(_style, style.id)
    for recipe_id, looks in making.catalogue.looks.items():
        for variant_id in looks:
            yield Planned.of(_look, recipe_id, variant_id)


@kept
def _all(making: Making) -> Page:
    above = _list()
    about = _("What {studio} makes, by style, season and colour.").format(studio=making.site.name)
    view = lists.arrangements_view(making.catalogue)
    share = _share_of([card for style in view.styles for card in style.recipes])
    frame = making.frame(above.href, "arrangements.html", SECTION, above.label, about, share=share)
    return Page(frame, view, _("Page"))


@kept
def _style(making: Making, style_id: str) -> Page:
    style = lists.style_view(making.catalogue, making.catalogue.studio.styles[style_id])
    frame = making.frame(
        style.href,
        "style.html",
        SECTION,
        style.plural,
        style.about,
        crumbs=[_list()],
        share=_share_of(style.recipes),
    )
    return Page(frame, style, _("Style"))


def _share_of(cards: Sequence[RecipeCard]) -> Share:
    """What a list shows in a message: a photo of one of its arrangements, or its first picture."""
    first = next((card for card in cards if card.image.photo), cards[0] if cards else None)
    return Share.of_image(first.image) if first else Share()


def _list() -> Link:
    return Link(_("Arrangements"), addresses.ARRANGEMENTS)


@kept
def _look(making: Making, recipe_id: str, variant_id: str) -> Page:
    look = making.catalogue.looks[recipe_id][variant_id]
    path = addresses.of_look(look)
    on_the_web = "" if making.catalogue.staff else making.absolute(path)
    view = recipe_view(making.catalogue, look, on_the_web)
    share = Share.of_image(view.image)
    frame = making.frame(
        path,
        "recipe.html",
        SECTION,
        f"{view.name}: {view.variant_name}" if view.variant_name else view.name,
        view.summary,
        crumbs=[_list(), view.style, *([view.parent] if view.parent else [])],
        data=[
            structured_data.arrangement(view, making.absolute(share.href), making.absolute(path))
        ],
        share=share,
        tint=tint_of(view.band),
    )
    return Page(frame, view, view.style.label, _words(making, look, view))


def _words(making: Making, look: Look, view: ClientRecipe) -> str:
    """What else it is looked for by: its colours, its stems, and what is said of its style."""
    style = making.catalogue.style_of(making.catalogue.studio.recipes[look.recipe])
    colours = " ".join(trade_word("colour", word) for word in words_of(making.catalogue, look))
    stems = " ".join(f"{line.name} {line.botanical}" for line in view.lines)
    return f"{style.name} {colours} {style.about} {stems}"
