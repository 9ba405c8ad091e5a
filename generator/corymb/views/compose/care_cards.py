"""The cards that go with flowers: what is in a piece, how it is kept, how long, what to mind.

Whoever has the flowers reads them: no cost, no note. What nothing is written of is not known, and
never called safe.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from corymb.language import gettext as _
from corymb.language.locales import and_list
from corymb.ledger import kept
from corymb.studio.models import Stem, Style
from corymb.trade.looks import Look
from corymb.trade.orders.as_cut import as_cut, stems_of
from corymb.trade.orders.due import Due, DueLine
from corymb.views.care import CareCard, CareCardsView, CareSheet
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.durations import days_words
from corymb.views.compose.hazards import not_known, plant_of, take_home
from corymb.views.compose.images import picture_view
from corymb.views.compose.link_look import IN_NO_WATER
from corymb.views.compose.look_words import Words
from corymb.views.compose.orders.cuts import cut_for
from corymb.views.compose.orders.packing import head_of, order_link
from corymb.views.compose.orders.sheet_stems import words_as_made
from corymb.views.compose.orders.when import day_in_full

ON_A_SHEET = 4
"""Cards of a quarter of A4, which is A6."""


def order_cards(catalogue: Catalogue, due: Due) -> CareCardsView:
    """A card for every piece of an order, of what is really in it."""
    cards = [
        card for line in due.lines for card in line.quantity * [_of_line(catalogue, due, line)]
    ]
    return CareCardsView(
        head=head_of(due),
        order=order_link(due),
        about=_("A card for each piece that leaves, four to a sheet of A4."),
        sheets=tuple(
            CareSheet("", due.name, tuple(cards[start : start + ON_A_SHEET]))
            for start in range(0, len(cards), ON_A_SHEET)
        ),
    )


def style_cards(catalogue: Catalogue, style: Style) -> CareCardsView:
    """A sheet of cards for each look of a style, as it is written."""
    looks = [
        look
        for recipe in catalogue.recipes()
        if recipe.style == style.id
        for look in catalogue.looks[recipe.id].values()
    ]
    return CareCardsView(
        head=None,
        order=None,
        about=_("A sheet for each of them, four cards to A4; print the pages you need."),
        sheets=tuple(_of_look(catalogue, look.recipe, look.variant) for look in looks),
    )


@kept
def _of_look(catalogue: Catalogue, recipe_id: str, variant_id: str) -> CareSheet:
    look = catalogue.looks[recipe_id][variant_id]
    stems = [catalogue.stem(line.stem) for line in look.lines]
    card = _card(catalogue, look, stems, Words.of(catalogue.studio, look).care(), "")
    return CareSheet(look.id, card.name, ON_A_SHEET * (card,))


def _of_line(catalogue: Catalogue, due: Due, line: DueLine) -> CareCard:
    mets = as_cut(due, line, cut_for(catalogue, due))
    stems = [catalogue.stem(each) for each in stems_of(mets, spare=line.piece.in_buckets)]
    care = words_as_made(catalogue, line, mets).care()
    return _card(catalogue, line.piece.look, stems, care, day_in_full(due.day))


def _card(
    catalogue: Catalogue, look: Look, stems: Sequence[Stem], care: str, when: str
) -> CareCard:
    style = catalogue.style_of(catalogue.studio.recipes[look.recipe])
    cautions = take_home(stems)
    return CareCard(
        name=look_name(catalogue, look),
        when=when,
        picture=picture_view(catalogue, look),
        holds=and_list(dict.fromkeys(map(plant_of, stems))),
        care=care,
        lasts=" ".join(_lasts(style, stems)),
        cautions=cautions,
        not_known=not_known(bool(cautions)),
    )


def _lasts(style: Style, stems: Iterable[Stem]) -> Iterator[str]:
    """How long until the first of it fades; of what is worn or carried nothing is promised."""
    lives = [stem.vase_life for stem in stems]
    if lives and style.place not in IN_NO_WATER:
        shortest = min(lives, key=lambda life: (life.fewest, life.most))
        told = _("The first of it fades after {days}; take that out, and the rest goes on.")
        yield told.format(days=days_words(shortest))
