"""Where is a standing order's year thin, and what would help?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date

from corymb.language import gettext as _
from corymb.language import noted
from corymb.language.locales import date_words
from corymb.trade.looks import Look
from corymb.trade.orders.due import Due
from corymb.trade.orders.thin_spells import ThinSpell, thin_spells
from corymb.views.compose import addresses
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.mending import lack_view
from corymb.views.compose.orders.when import day_span
from corymb.views.orders import ThinView
from corymb.views.pieces import Link

WHY = {
    "nothing": noted("Nothing of the rotation can be made."),
    "one": noted("Only {look} can be made, so it may come twice running."),
    "touch and go": noted("{look} is touch and go."),
}


def thin_views(catalogue: Catalogue, standing_id: str, dues: Iterable[Due]) -> Iterator[ThinView]:
    """The thin visits among those of a rotation, in spells."""
    order = catalogue.studio.standing_orders[standing_id]
    laid = [due.laid for due in dues if due.laid]
    for spell in thin_spells(catalogue.studio, catalogue.makeable, order, laid):
        yield _thin(catalogue, spell)


def _thin(catalogue: Catalogue, spell: ThinSpell) -> ThinView:
    look = look_name(catalogue, spell.laid[0].best.look)
    nearest = spell.nearest
    return ThinView(
        when=_when(spell.laid[0].visit.day, spell.laid[-1].visit.day),
        why=_(WHY[spell.why]).format(look=look),
        surer=_links(catalogue, spell.surer),
        helps=_links(catalogue, spell.helps),
        nearest=_link(catalogue, nearest.look) if nearest else None,
        lacks=tuple(lack_view(catalogue, lack, len(nearest.weeks)) for lack in nearest.lacks)
        if nearest
        else (),
    )


def _when(first: date, last: date) -> str:
    """`22 September 2026`, or `from 3 to 24 November 2026`."""
    if first == last:
        return date_words(first)
    span = day_span(first, last)
    return span[0].upper() + span[1:]


def _links(catalogue: Catalogue, looks: Iterable[Look]) -> tuple[Link, ...]:
    return tuple(_link(catalogue, look) for look in looks)


def _link(catalogue: Catalogue, look: Look) -> Link:
    return Link(look_name(catalogue, look), addresses.of_look(look))
