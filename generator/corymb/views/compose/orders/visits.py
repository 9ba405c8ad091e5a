"""How is a visit of a standing order told: its look, how it can be made, and why that one?"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from itertools import groupby, islice

from corymb.language import gettext as _
from corymb.language import ngettext, noted
from corymb.language.locales import month_of_year
from corymb.studio.models import Order
from corymb.trade.looks import Look, look_by_id
from corymb.trade.orders.due import Due
from corymb.trade.orders.laid_out import LaidOut
from corymb.trade.orders.timed import line_then
from corymb.trade.season.best import Best
from corymb.views.compose import addresses
from corymb.views.compose.answers import answer_view, look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.orders.lines import best_then
from corymb.views.compose.orders.shown import shown_dues
from corymb.views.compose.orders.when import day_in_full, weekday_and_day
from corymb.views.compose.trade_words import trade_word
from corymb.views.orders import SentView, VisitMonth, VisitView
from corymb.views.pieces import Link

THIN = {
    "": "",
    "nothing": noted("nothing of the rotation stands"),
    "one": noted("no other to choose from"),
    "touch and go": noted("touch and go"),
}

LATEST = 10
"""So many past visits are told on a standing order's page. House value, no source."""


def months_of(catalogue: Catalogue, dues: Iterable[Due]) -> Iterator[VisitMonth]:
    """The visits month by month."""
    for first, visits in groupby(dues, key=lambda due: due.day.replace(day=1)):
        views = tuple(visit_view(catalogue, due) for due in visits)
        yield VisitMonth(month_of_year(first), views)


def visit_view(catalogue: Catalogue, due: Due) -> VisitView:
    """A visit with the look it gets."""
    best = best_of_visit(catalogue, due)
    answer = answer_view(catalogue, best, best.look)
    return VisitView(
        when=weekday_and_day(due.day),
        order=Link(due.name, addresses.of_due(due.id)),
        look=Link(look_name(catalogue, best.look), addresses.of_look(best.look)),
        how=answer,
        sure=trade_word("sureness", best.sure),
        choice=_choice(due.laid) if due.laid else "",
        thin=_(THIN[due.laid.thin]) if due.laid else "",
    )


def best_of_visit(catalogue: Catalogue, due: Due) -> Best:
    """The answer of the look that a rotation chose, or of the first line of any other visit."""
    if due.laid is not None:
        return due.laid.best
    return best_then(line_then(due.lines[0], due.day, catalogue.makeable))


def sent_views(catalogue: Catalogue, standing_id: str) -> Iterator[SentView]:
    """What was sent on the latest visits that are past, the last first."""
    past = catalogue.dues.history(standing_id, catalogue.today)
    shown = {due.day: due for due in shown_dues(catalogue) if due.standing == standing_id}
    for day, look_id in islice(reversed(past.items()), LATEST):
        look = look_by_id(look_id, catalogue.studio.recipes)
        yield _sent(catalogue, day, look, shown.get(day))


def _sent(catalogue: Catalogue, day: date, look: Look, due: Due | None) -> SentView:
    made = [
        Link(made.title, addresses.of_made(made.id))
        for made in catalogue.made()
        if made.date == day and made.recipe == look.recipe
    ]
    return SentView(
        when=day_in_full(day),
        look=Link(look_name(catalogue, look), addresses.of_look(look)),
        order=Link(due.name, addresses.of_due(due.id)) if due else None,
        made=tuple(made),
        learnt=due.order.learnt if due and isinstance(due.order, Order) else "",
    )


def _choice(laid: LaidOut) -> str:
    """`Sent 5 visits ago; 3 looks can be made that week.`"""
    can = _("no look can be made that week")
    if laid.choices:
        told = ngettext(
            "{number} look can be made that week",
            "{number} looks can be made that week",
            laid.choices,
        )
        can = told.format(number=laid.choices)
    return f"{_sent_before(laid.since)}; {can}."


def _sent_before(visits: int | None) -> str:
    if visits is None:
        return _("Not sent before")
    if visits == 1:
        return _("Sent last time, too")
    told = ngettext("Sent {number} visit ago", "Sent {number} visits ago", visits)
    return told.format(number=visits)
