"""An arrangement's views: its card in a list, and its page for clients and for staff."""

from __future__ import annotations

from corymb.language import gettext as _
from corymb.language import ngettext
from corymb.ledger import kept
from corymb.studio.models import Recipe, Stem, StudioFile
from corymb.trade.colour.areas import line_shares
from corymb.trade.differences import Difference, differences
from corymb.trade.looks import Look, guide_of
from corymb.views.compose import addresses
from corymb.views.compose.asking import asking
from corymb.views.compose.bands import band_of, words_of
from corymb.views.compose.bench import bench_view
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.colour_told import colour_view
from corymb.views.compose.durations import time_words
from corymb.views.compose.hazards import take_home
from corymb.views.compose.images import images_of, photos_of_look
from corymb.views.compose.kin import kin_of
from corymb.views.compose.lengths import length_words
from corymb.views.compose.light_switch import light_switch
from corymb.views.compose.look_words import Words
from corymb.views.compose.seasons import season_of_look, weeks_words
from corymb.views.compose.sizes import size_views, sizes_picture
from corymb.views.compose.spells import spells_of
from corymb.views.compose.wording import price_guide
from corymb.views.pieces import Fact, Link
from corymb.views.recipe import (
    ChangeView,
    ClientRecipe,
    LineView,
    RecipeCard,
    StaffLine,
    StaffRecipe,
    VariantView,
)

NARROW_CM, WIDE_CM = 22, 38  # what parts narrow, middling and wide: our own choice, no source


def card_of(catalogue: Catalogue, recipe: Recipe, variant: str = "") -> RecipeCard:
    """A recipe in a list, or one of its variants by the recipe's name."""
    return _card(catalogue, recipe.id, variant)


@kept
def _card(catalogue: Catalogue, recipe_id: str, variant: str) -> RecipeCard:
    recipe = catalogue.studio.recipes[recipe_id]
    look = catalogue.looks[recipe_id][variant]
    style = catalogue.style_of(recipe)
    price = guide_of(recipe, variant)
    return RecipeCard(
        id=look.id,
        name=recipe.name,
        href=addresses.of_look(look),
        style=recipe.style,
        style_name=style.name,
        summary=recipe.summary,
        image=images_of(catalogue, look),
        band=band_of(catalogue, look),
        stems_total=look.stems_total,
        across=length_words(recipe.across, catalogue.studio.house),
        width=_width(recipe.across.cm),
        price=price_guide(price, catalogue.studio.house),
        price_amount=f"{price.amount:f}" if price else "",
        season=season_of_look(catalogue, look),
        colour_words=words_of(catalogue, look),
        draft=recipe.draft,
    )


def _width(across_cm: float) -> str:
    if across_cm < NARROW_CM:
        return "narrow"
    return "middling" if across_cm < WIDE_CM else "wide"


def recipe_view(catalogue: Catalogue, look: Look, on_the_web: str = "") -> ClientRecipe:
    """The page of a look: with the bench part for staff, without any of it for clients.

    `on_the_web` is the page's whole address, where that is known.
    """
    client = client_view(catalogue, look, on_the_web)
    if not catalogue.staff:
        return client
    lines = _staff_lines(client.lines, look)
    style = catalogue.studio.recipes[look.recipe].style
    return StaffRecipe(
        **{**vars(client), "lines": lines},
        bench=bench_view(catalogue, look),
        colour=colour_view(catalogue, look),
        care_card=Link(_("Care card"), addresses.of_style_cards(style, look)),
    )


def client_view(catalogue: Catalogue, look: Look, on_the_web: str = "") -> ClientRecipe:
    """What everyone may see of a look, whoever the catalogue is for."""
    recipe = catalogue.studio.recipes[look.recipe]
    variant = recipe.variants.get(look.variant)
    style = catalogue.style_of(recipe)
    own = catalogue.looks[recipe.id][""]
    source = _source(catalogue, recipe, look)
    words = Words.of(catalogue.studio, look)
    price = price_guide(guide_of(recipe, look.variant), catalogue.studio.house)
    return ClientRecipe(
        id=look.id,
        name=recipe.name,
        variant_name=variant.name if variant else "",
        style=Link(style.name, addresses.of_style(recipe.style)),
        parent=Link(recipe.name, addresses.of_look(own)) if variant else None,
        summary=variant.about if variant else recipe.summary,
        image=images_of(catalogue, look),
        photos=photos_of_look(catalogue, look),
        facts=(
            *_facts(recipe, look, catalogue.studio.house),
            Fact(time_words(words.told("time").minutes), _("to make")),
            *([Fact(price, _("price guide"))] if price else []),
        ),
        vessel=_vessel(recipe, catalogue.studio.house),
        band=band_of(catalogue, look),
        light=light_switch(catalogue, look),
        lines=_lines(catalogue, look),
        stems_total=look.stems_total,
        sizes=size_views(recipe, look, catalogue.studio.house),
        side_by_side=sizes_picture(catalogue, recipe, look),
        changed_from=source,
        changes=_changes(catalogue, look) if source else (),
        variants=_variants(catalogue, recipe, look),
        season=season_of_look(catalogue, look),
        spells=spells_of(catalogue, catalogue.bests(look), look),
        goes_with=kin_of(catalogue, look),
        price=price,
        care=str(words.told("care")),
        cautions=take_home(_stems(catalogue, look)),
        known_object=style.known_object,
        ask_href=asking(catalogue.studio.house, recipe, variant, on_the_web),
        made=_made(catalogue, look),
    )


def _facts(recipe: Recipe, look: Look, house: StudioFile) -> tuple[Fact, ...]:
    # L10N: a label behind a number of stems.
    stems = ngettext("stem", "stems", look.stems_total)
    return (
        Fact(str(look.stems_total), stems),
        Fact(length_words(recipe.across, house), _("across")),
        Fact(length_words(recipe.high, house), _("high")),
    )


def _vessel(recipe: Recipe, house: StudioFile) -> str:
    """`pint jar, 9 cm across, 12 cm high`."""
    said = [recipe.vessel.name]
    for told, length in (
        (_("{length} across"), recipe.vessel.across),
        (_("{length} high"), recipe.vessel.high),
    ):
        if length is not None:
            said.append(told.format(length=length_words(length, house)))
    return ", ".join(said)


def _stems(catalogue: Catalogue, look: Look) -> list[Stem]:
    return [catalogue.stem(line.stem) for line in look.lines]


def _lines(catalogue: Catalogue, look: Look) -> tuple[LineView, ...]:
    shares = line_shares(look.lines, catalogue.studio.stems)
    views = []
    for line, share in zip(look.lines, shares, strict=True):
        stem = catalogue.stem(line.stem)
        views.append(
            LineView(
                count=line.count,
                name=stem.name,
                botanical=stem.botanical,
                href=addresses.of_stem(line.stem),
                hex=stem.main_colour.hex,
                role=line.role,
                use=line.use or stem.use,
                essential=line.essential,
                season=weeks_words(catalogue.beds.season(stem.id)),
                percent=round(100 * share, 1),
            )
        )
    return tuple(views)


def _staff_lines(lines: tuple[LineView, ...], look: Look) -> tuple[StaffLine, ...]:
    return tuple(
        StaffLine(**vars(view), note=line.note)
        for view, line in zip(lines, look.lines, strict=True)
    )


def _source(catalogue: Catalogue, recipe: Recipe, look: Look) -> Link | None:
    """What a look is told to differ from: its recipe, or the one its recipe is based on.

    Nothing where this audience may not see that one, for a draft's name and stems are its own.
    """
    source_id = recipe.id if look.variant else recipe.based_on
    if source_id is None or source_id not in catalogue.looks:
        return None
    name = catalogue.studio.recipes[source_id].name
    return Link(name, addresses.of_look(catalogue.looks[source_id][""]))


def _changes(catalogue: Catalogue, look: Look) -> tuple[ChangeView, ...]:
    """From the recipe itself, even where a variant builds on another; what comes in goes first."""
    own = catalogue.looks[look.recipe][""]
    found = differences(own.lines if look.variant else look.parent_lines, look.lines)
    views = (_change(catalogue, change) for change in found)
    return tuple(sorted(views, key=lambda change: change.kind == "dropped"))


def _change(catalogue: Catalogue, change: Difference) -> ChangeView:
    name = catalogue.stem(change.stem).name
    told = {
        "added": _("With {number} {stem}"),
        "dropped": _("Without {stem}"),
    }.get(change.kind, _("{stem}: {number}, not {before}"))
    words = told.format(number=change.after, stem=name, before=change.before)
    return ChangeView(change.kind, name, change.role, words, change.before, change.after)


def _variants(catalogue: Catalogue, recipe: Recipe, current: Look) -> tuple[VariantView, ...]:
    views = []
    for variant_id, look in catalogue.looks[recipe.id].items():
        if not variant_id:
            continue
        variant = recipe.variants[variant_id]
        views.append(
            VariantView(
                name=variant.name,
                href=addresses.of_look(look),
                about=variant.about,
                image=images_of(catalogue, look),
                changes=_changes(catalogue, look),
                season=season_of_look(catalogue, look),
                stems_total=look.stems_total,
                price=price_guide(guide_of(recipe, variant_id), catalogue.studio.house),
                current=look.variant == current.variant,
            )
        )
    return tuple(views)


def _made(catalogue: Catalogue, look: Look) -> tuple[Link, ...]:
    return tuple(
        Link(piece.title, addresses.of_made(piece.id))
        for piece in catalogue.made()
        if piece.recipe == look.recipe and (piece.variant or "") == look.variant
    )
