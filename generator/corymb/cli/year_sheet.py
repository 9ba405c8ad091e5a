"""What does a standing order's year come to? The lines that `corymb repeat --year` tells."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from corymb.cli.days import short_day
from corymb.cli.wrapping import wrapped
from corymb.language import gettext as _
from corymb.language import ngettext, noted, pgettext
from corymb.studio.models import StandingOrder
from corymb.studio.studio import Studio
from corymb.studio.values.dates import IsoWeek
from corymb.trade.orders.laid_out import LaidOut
from corymb.trade.orders.next_year import NextYear
from corymb.trade.orders.thin_spells import ThinSpell, thin_spells
from corymb.trade.season.makeable import Makeable
from corymb.views.compose.answers import look_name
from corymb.views.compose.catalogue import Catalogue
from corymb.views.compose.mending import mend
from corymb.views.compose.orders.when import day_in_full
from corymb.views.compose.plants import names_of
from corymb.views.compose.states import words_of_states
from corymb.views.compose.trade_words import trade_word

WHY = {
    "nothing": noted("nothing of the rotation can be made"),
    "one": noted("only {look} can be made"),
    "touch and go": noted("{look} is touch and go"),
}


def year_sheet(
    studio: Studio, makeable: Makeable, old: StandingOrder, told: NextYear
) -> Iterator[str]:
    """The lines to print."""
    catalogue = Catalogue(studio, "staff", told.order.from_)
    until = told.order.until or told.laid[-1].visit.day
    head = ngettext(
        "{order}: {number} visit, {first} to {last}",
        "{order}: {number} visits, {first} to {last}",
        len(told.laid),
    )
    yield head.format(
        order=old.name,
        number=len(told.laid),
        first=day_in_full(told.order.from_),
        last=day_in_full(until),
    )
    if told.still_comes:
        again = _(
            "The old order still comes round then, from {day} on: give it an `until` before that, "
            "or all comes twice."
        )
        yield from wrapped(again.format(day=day_in_full(told.still_comes)))
    yield ""
    yield from _table(catalogue, told.laid)
    yield from _thin(catalogue, makeable, told)
    if old.learnt:
        yield from ("", _("Learnt so far"))
        yield from wrapped(old.learnt, "  ", "  ")


def _table(catalogue: Catalogue, laid: Sequence[LaidOut]) -> Iterator[str]:
    """A line a visit, each column as wide as what stands in it."""
    head = (
        pgettext("column", "Week"),
        pgettext("column", "Day"),
        pgettext("column", "Look"),
        pgettext("column", "How"),
        pgettext("column", "How sure"),
        pgettext("column", "Choices"),
    )
    looks = max(len(look_name(catalogue, each.best.look)) for each in laid)
    least = (4, 6, looks, 11, 12, 0)
    rows = [head, *(_visit(catalogue, each) for each in laid)]
    cells = zip(*rows, strict=True)
    widths = [max(wide, *map(len, column)) for wide, column in zip(least, cells, strict=True)]
    for row in rows:
        yield "  ".join(f"{cell:<{wide}}" for cell, wide in zip(row, widths, strict=True)).rstrip()


def _visit(catalogue: Catalogue, laid: LaidOut) -> tuple[str, ...]:
    best, day = laid.best, laid.visit.day
    state = "pictured" if best.state == "variant" else best.state  # the look names its variant
    choices = str(laid.choices)
    if laid.since == 1:
        choices = _("{choices}  again").format(choices=choices)
    return (
        _week(day),
        short_day(day),
        look_name(catalogue, best.look),
        words_of_states()[state],
        trade_word("sureness", best.sure) if best.state != "none" else "",
        choices,
    )


def _week(day: date) -> str:
    # L10N: a week by its number: W05.
    return pgettext("season", "W{week}").format(week=f"{IsoWeek.of(day).week:02d}")


def _thin(catalogue: Catalogue, makeable: Makeable, told: NextYear) -> Iterator[str]:
    spells = thin_spells(catalogue.studio, makeable, told.order, told.laid)
    yield ""
    if not spells:
        yield _(
            "No week is thin: something that is likely can be made in each, and something else."
        )
        return
    visits, every = sum(len(spell.laid) for spell in spells), len(told.laid)
    head = ngettext("Thin: {number} of {all} visit", "Thin: {number} of {all} visits", every)
    yield head.format(number=visits, all=every)
    for spell in spells:
        yield from wrapped(f"{_when(spell)}: {_why(catalogue, spell)}.", "  ", "    ")
        for help_ in _help(catalogue, spell):
            yield from wrapped(help_, "    ", "      ")


def _when(spell: ThinSpell) -> str:
    first, last = spell.laid[0].visit.day, spell.laid[-1].visit.day
    days = [short_day(day).strip() for day in (first, last)]
    if first == last:
        return f"{_week(first)}, {days[0]}"
    # L10N: weeks and days of them: W38 to W40, 14 Sep to 28 Sep.
    told = _("{first_week} to {last_week}, {first_day} to {last_day}")
    return told.format(
        first_week=_week(first), last_week=_week(last), first_day=days[0], last_day=days[1]
    )


def _why(catalogue: Catalogue, spell: ThinSpell) -> str:
    return _(WHY[spell.why]).format(look=look_name(catalogue, spell.laid[0].best.look))


def _help(catalogue: Catalogue, spell: ThinSpell) -> Iterator[str]:
    """What would help, the nearest to hand first."""
    if spell.surer:
        names = "; ".join(look_name(catalogue, look) for look in spell.surer)
        yield _("Surer, though with swaps or sent lately: {looks}.").format(looks=names)
    if spell.helps:
        names = "; ".join(look_name(catalogue, look) for look in spell.helps)
        told = _("Of the same style stands then: {looks}. Put it into the rotation.")
        yield told.format(looks=names)
    if spell.nearest is None:
        return
    near, weeks = spell.nearest, len(spell.nearest.weeks)
    lacking = names_of(catalogue, [lack.stem for lack in near.lacks])
    told = _("The nearest besides is {look}, which lacks {stems}.")
    yield told.format(look=look_name(catalogue, near.look), stems=lacking)
    for lack in near.lacks[:1]:
        yield mend(catalogue, lack, weeks)
