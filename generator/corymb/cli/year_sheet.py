"""What does a standing order's year come to? The lines that `corymb repeat --year` tells."""

from __future__ import annotations

from collections.abc import Iterator

from corymb.cli.days import long_day, short_day
from corymb.cli.wrapping import wrapped
from corymb.studio.models import StandingOrder
from corymb.studio.saying import counted
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.orders.laid_out import LaidOut
from corymb.trade.orders.next_year import NextYear
from corymb.trade.orders.thin_spells import ThinSpell, thin_spells
from corymb.trade.season.makeable import Makeable
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.mending import mend
from corymb.views.compose.plants import names_of
from corymb.views.compose.states import STATE_WORDS

HOW = {**STATE_WORDS, "variant": STATE_WORDS["pictured"]}
"""A visit names its look, variant and all."""

WHY = {
    "nothing": "nothing of the rotation can be made",
    "one": "only {look} can be made",
    "touch and go": "{look} is touch and go",
}


def year_sheet(
    studio: Studio, makeable: Makeable, old: StandingOrder, told: NextYear
) -> Iterator[str]:
    """The lines to print."""
    catalogue = Catalogue(studio, "staff", told.order.from_)
    until = told.order.until or told.laid[-1].visit.day
    visits = counted(len(told.laid), "visit", "visits")
    yield f"{old.name}: {visits}, {long_day(told.order.from_)} to {long_day(until)}"
    if told.still_comes:
        yield from wrapped(
            f"The old order still comes round then, from {long_day(told.still_comes)} on: "
            "give it an `until` before that, or all comes twice."
        )
    yield ""
    width = max(len(look_name(catalogue, each.best.look)) for each in told.laid)
    yield f"{'Week':<6}{'Day':<8}{'Look':<{width}}  {'How':<11}  {'How sure':<12}  Choices"
    for each in told.laid:
        yield _visit(catalogue, each, width)
    yield from _thin(catalogue, makeable, told)
    if old.learnt:
        yield from ("", "Learnt so far")
        yield from wrapped(old.learnt, "  ", "  ")


def _visit(catalogue: Catalogue, laid: LaidOut, width: int) -> str:
    best, day = laid.best, laid.visit.day
    how, sure = HOW[best.state], best.sure if best.state != "none" else ""
    name = look_name(catalogue, best.look)
    again = "  again" if laid.since == 1 else ""
    week = f"W{IsoWeek.of(day).week:02d}"
    line = f"{week:<6}{short_day(day):<8}{name:<{width}}  {how:<11}  {sure:<12}  {laid.choices}"
    return f"{line}{again}".rstrip()


def _thin(catalogue: Catalogue, makeable: Makeable, told: NextYear) -> Iterator[str]:
    spells = thin_spells(catalogue.studio, makeable, told.order, told.laid)
    yield ""
    if not spells:
        yield "No week is thin: something that is likely can be made in each, and something else."
        return
    visits = sum(len(spell.laid) for spell in spells)
    yield f"Thin: {visits} of {counted(len(told.laid), 'visit', 'visits')}"
    for spell in spells:
        yield from wrapped(f"{_when(spell)}: {_why(catalogue, spell)}.", "  ", "    ")
        for help_ in _help(catalogue, spell):
            yield from wrapped(help_, "    ", "      ")


def _when(spell: ThinSpell) -> str:
    first, last = spell.laid[0].visit.day, spell.laid[-1].visit.day
    weeks = [f"W{IsoWeek.of(day).week:02d}" for day in (first, last)]
    if first == last:
        return f"{weeks[0]}, {short_day(first).strip()}"
    return f"{weeks[0]} to {weeks[1]}, {short_day(first).strip()} to {short_day(last).strip()}"


def _why(catalogue: Catalogue, spell: ThinSpell) -> str:
    return WHY[spell.why].format(look=look_name(catalogue, spell.laid[0].best.look))


def _help(catalogue: Catalogue, spell: ThinSpell) -> Iterator[str]:
    """What would help, the nearest to hand first."""
    if spell.surer:
        names = "; ".join(look_name(catalogue, look) for look in spell.surer)
        yield f"Surer, though with swaps or sent lately: {names}."
    if spell.helps:
        names = "; ".join(look_name(catalogue, look) for look in spell.helps)
        yield f"Of the same style stands then: {names}. Put it into the rotation."
    if spell.nearest is None:
        return
    near, weeks = spell.nearest, len(spell.nearest.weeks)
    lacking = names_of(catalogue, [lack.stem for lack in near.lacks])
    yield f"The nearest besides is {look_name(catalogue, near.look)}, which lacks {lacking}."
    for lack in near.lacks[:1]:
        yield mend(catalogue, lack, weeks)
